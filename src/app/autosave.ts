import { sharedParts } from '../geometry/sharedParts.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { SaveState } from '../session/library.ts';
import { keptLayout, ownLayout, type SessionState, session } from '../session/session.ts';
import { NOTHING_STORED, type Refusal, type StoragePort } from '../storage/port.ts';

/**
 * Rules, quoted by the tests:
 *
 * A1 A change is saved after 300 ms of rest, or 2 s after the first unsaved change when there is no rest.
 * A2 Nothing is saved by the clock while a gesture is under way; its start and its end save at once. What it shows is no step yet: a page
 *    that is put away in the middle of it keeps the layout before it.
 * A3 One save at a time; what is asked meanwhile is saved after it.
 * A4 'saved' is shown only when the storage has answered and nothing changed since.
 * A5 A refusal is shown until a save succeeds; each change tries again.
 * A6 A conflict stands until it is resolved; until then nothing is written.
 * A7 Where the storage was cleared while the layout was open, it is stored again, and said: what is seen is never lost unsaid.
 */
const REST = 300;
const AT_MOST = 2000;

/** The open layout's place in the storage. */
interface Place {
  readonly id: Id;
  revision: number;
  /** The layout as it is stored; null when it isn't. */
  stored: Layout | null;
  /** When it was stored, ms since 1970. */
  at: number | null;
  refusal: Refusal | null;
  conflict: boolean;
}

/** Work that is not in the storage, and the stored revision it continues. */
export interface Unstored {
  readonly layout: Layout;
  readonly revision: number;
}

/** How the autosave talks to the rest of the app. */
export interface AutosaveSurroundings {
  readonly storage: StoragePort;
  /** Why nothing here may be called saved; null where the browser can be relied on. */
  readonly unreliable: string | null;
  /** Called after each save that was taken. */
  onSaved(): void;
  /** Called when the storage turns out to have been cleared under the open layout, which is stored again. */
  onCleared(): void;
}

/** Saves what is open in the session as it changes, and shows there whether it is saved. */
export class Autosave {
  readonly #surroundings: AutosaveSurroundings;
  #place: Place | null = null;
  #running: Promise<void> | null = null;
  #again = false;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #most: ReturnType<typeof setTimeout> | undefined;

  constructor(surroundings: AutosaveSurroundings) {
    this.#surroundings = surroundings;
    session.subscribe((now, before) => this.#hear(now, before));
  }

  /** Keeps the layout that is open now. `revision` and `at` (ms since 1970) are of what is stored; `at` null: it isn't yet. */
  track(layout: Layout, revision: number, at: number | null): void {
    const stored = at === null ? null : layout;
    this.#place = { id: layout.id, revision, stored, at, refusal: null, conflict: false };
    this.#show();
    if (at === null) void this.flush();
  }

  /** What is open is about to be closed or replaced. */
  untrack(): void {
    this.#stopTimers();
    this.#place = null;
    session.setState({ saving: null });
  }

  /** Which stored revision the open layout continues; null when nothing is open. */
  tracked(): { readonly id: Id; readonly revision: number } | null {
    return this.#place;
  }

  /** Saves now. True when all that is open is stored. */
  async flush(): Promise<boolean> {
    this.#stopTimers();
    if (this.#running !== null) this.#again = true;
    else if (this.#unsaved() !== null) this.#running = this.#run();
    await this.#running;
    return this.#place === null || (this.#unsaved() === null && !this.#place.conflict);
  }

  /** Another tab changed what is open. */
  markConflict(): void {
    if (!this.#place) return;
    this.#stopTimers();
    this.#place.conflict = true;
    this.#show();
  }

  /** Nothing of the open layout is in the storage any more, though nobody removed it: it is stored again (rule A7). */
  async storeAgain(): Promise<void> {
    if (!this.#place) return;
    this.#beginAgain(this.#place);
    await this.flush();
  }

  /** Whether closing the page now would lose work that the storage has refused. */
  wouldLose(): boolean {
    if (!this.#place) return false;
    return this.#place.conflict || (this.#place.refusal !== null && this.#unsaved() !== null);
  }

  /** What is open and not stored; null when all is. */
  unstored(): Unstored | null {
    const layout = keptLayout(session.getState());
    if (!this.#place || layout?.id !== this.#place.id || layout === this.#place.stored) return null;
    return { layout, revision: this.#place.revision };
  }

  #unsaved(): Layout | null {
    return this.#place?.conflict === false ? (this.unstored()?.layout ?? null) : null;
  }

  #hear(now: SessionState, before: SessionState): void {
    if (now.open === before.open && now.gesture === before.gesture) return;
    if (this.#unsaved() === null) this.#stopTimers();
    else if (now.gesture !== before.gesture) void this.flush();
    else if (now.gesture === null) this.#startTimers();
    if (now.open !== before.open && this.#running === null) this.#show();
  }

  async #run(): Promise<void> {
    try {
      do {
        this.#again = false;
        const layout = this.#unsaved();
        if (!layout || !(await this.#saveOnce(layout))) return;
      } while (this.#again);
    } finally {
      this.#running = null;
    }
  }

  async #saveOnce(layout: Layout): Promise<boolean> {
    const place = this.#place;
    if (!place) return false;
    const outcome = await this.#surroundings.storage.save(layout, place.revision);
    if (outcome.ok) {
      place.revision = outcome.revision;
      place.at = outcome.at;
      place.stored = layout;
      place.refusal = null;
      this.#surroundings.onSaved();
    } else if (outcome.kind === 'conflict') {
      if (
        place.revision !== NOTHING_STORED &&
        (await isCleared(this.#surroundings.storage, place.id))
      ) {
        this.#beginAgain(place);
        return this.#saveOnce(layout);
      }
      place.conflict = true;
    } else place.refusal = outcome;
    this.#show();
    return outcome.ok;
  }

  #beginAgain(place: Place): void {
    place.revision = NOTHING_STORED;
    place.stored = null;
    place.at = null;
    this.#surroundings.onCleared();
  }

  #show(): void {
    if (!this.#place) return;
    const { unreliable } = this.#surroundings;
    const { id, stored } = this.#place;
    const shown = ownLayout(session.getState());
    const isUnsaved = shown?.id === id && shown !== stored;
    const before = session.getState().saving;
    const saving = sharedParts(before, stateOf(this.#place, isUnsaved, unreliable));
    // In a drag this is looked at in every frame: nobody is told what they know.
    if (saving !== before) session.setState({ saving });
  }

  #startTimers(): void {
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => void this.flush(), REST);
    this.#most ??= setTimeout(() => void this.flush(), AT_MOST);
  }

  #stopTimers(): void {
    clearTimeout(this.#rest);
    clearTimeout(this.#most);
    this.#most = undefined;
  }
}

/** Whether nothing of a layout is left, not even that it was removed. */
export async function isCleared(storage: StoragePort, id: Id): Promise<boolean> {
  const left = await storage.revisions(id);
  return !('ok' in left) && left.length === 0;
}

function stateOf(place: Place, isUnsaved: boolean, unreliable: string | null): SaveState {
  if (place.conflict) return { kind: 'conflict' };
  if (place.refusal && isUnsaved) {
    return { kind: 'failed', reason: place.refusal.reason, detail: place.refusal.detail };
  }
  if (unreliable !== null) return { kind: 'failed', reason: 'insecure', detail: unreliable };
  return isUnsaved || place.at === null ? { kind: 'saving' } : { kind: 'saved', at: place.at };
}
