import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { cancelGesture, keptLayout, openLayout, session, takeOver } from '../session/session.ts';
import { newLayoutId } from '../storage/ids.ts';
import { type LoadOutcome, NOTHING_STORED, type Refusal } from '../storage/port.ts';
import type { ShelteredStorage } from '../storage/sheltered.ts';
import { type Autosave, isCleared, type Unstored } from './autosave.ts';
import { copyName } from './copyName.ts';

type Loaded = Extract<LoadOutcome, { ok: true }>;

/** What is open and what is listed, between storage and session. What can't be done is an Error that says why. */
export class Workbench {
  readonly #storage: ShelteredStorage;
  readonly #autosave: Autosave;

  constructor(storage: ShelteredStorage, autosave: Autosave) {
    this.#storage = storage;
    this.#autosave = autosave;
  }

  /** What is open, without what is only offered or still under way. */
  openNow(): Layout | null {
    return keptLayout(session.getState());
  }

  /** Lists what is stored, again. While nothing is open, a storage that refuses is shown as well. */
  async refresh(): Promise<void> {
    const { rows, refusal } = await this.#storage.list();
    const saving = this.openNow() === null && { saving: refusal && failed(refusal) };
    session.setState({ library: rows, unsaved: this.#storage.held(), ...saving });
  }

  async load(id: Id): Promise<Loaded> {
    return needed(await this.#storage.load(id));
  }

  async loadRevision(id: Id, revision: number): Promise<Loaded> {
    return needed(await this.#storage.loadRevision(id, revision));
  }

  async open(id: Id): Promise<void> {
    if (this.openNow()?.id === id) return;
    await this.leave();
    this.#show(await this.load(id));
  }

  /** Stores a layout under its own, new id. A storage that refuses keeps it in memory, and its refusal is shown. */
  async storeNew(layout: Layout): Promise<void> {
    const outcome = await this.#storage.save(layout, NOTHING_STORED);
    await this.refresh();
    if (outcome.ok || (await this.#storage.load(layout.id)).ok) return;
    throw new Error(outcome.kind === 'refused' ? outcome.detail : 'its id is taken already.');
  }

  /**
   * Saves what is open, so that it can be closed. A gesture that is under way is taken back: it can't go on.
   *
   * @throws {Error} When it is neither stored nor held in memory, or a conflict is not resolved.
   */
  async leave(): Promise<void> {
    cancelGesture();
    const layout = this.openNow();
    if (layout === null || (await this.#autosave.flush())) return;
    if (session.getState().saving?.kind === 'conflict') {
      throw new Error('another tab changed this layout too. Choose first which one to keep.');
    }
    if (!(await this.#storage.load(layout.id)).ok) {
      throw new Error('this layout could not be saved. Export it first.');
    }
  }

  async close(): Promise<void> {
    await this.leave();
    await this.#closeAsItIs();
  }

  /** Removes a layout; the open one is closed first. */
  async remove(id: Id): Promise<void> {
    if (this.openNow()?.id === id) await this.close();
    marked(await this.#storage.remove(id));
    await this.refresh();
  }

  async restore(id: Id): Promise<void> {
    marked(await this.#storage.restore(id));
    await this.refresh();
  }

  async rename(id: Id, name: string): Promise<void> {
    const { layout, revision } = await this.load(id);
    const outcome = await this.#storage.save({ ...layout, name }, revision);
    await this.refresh();
    if (outcome.ok) return;
    const isConflict = outcome.kind === 'conflict';
    throw new Error(isConflict ? 'another tab changed it just now. Try again.' : outcome.detail);
  }

  /**
   * Stores what an earlier page could not; as a copy where the stored layout went on without it.
   *
   * @returns Whether it is stored now.
   */
  async takeUp({ layout, revision }: Unstored): Promise<boolean> {
    const outcome = await this.#storage.save(layout, revision);
    if (outcome.ok || outcome.kind === 'refused') return outcome.ok;
    const copy = { ...layout, id: newLayoutId(), name: copyName(layout.name) };
    return (await this.#storage.save(copy, NOTHING_STORED)).ok;
  }

  async keepMineAsCopy(): Promise<void> {
    const mine = this.openNow();
    if (mine === null) return;
    const copy = { ...mine, id: newLayoutId(), name: copyName(mine.name) };
    await this.storeNew(copy);
    this.#show(await this.load(copy.id));
  }

  async takeTheirs(): Promise<void> {
    const id = this.openNow()?.id;
    if (id === undefined) return;
    const theirs = await this.#storage.load(id);
    if (!theirs.ok && theirs.kind === 'missing') await this.#closeAsItIs();
    else this.#takeOver(needed(theirs));
  }

  /** Takes over what another tab stored of the open layout, or shows that there is a conflict. */
  async lookForOthersChange(): Promise<void> {
    const before = this.#autosave.tracked();
    if (!before || !(await this.#autosave.flush())) return;
    const there = await this.#storage.load(before.id);
    const now = this.#autosave.tracked();
    if (now?.id !== before.id) return;
    // Revisions only grow: a lower one was read before this tab's own save.
    if (there.ok ? there.revision <= now.revision : there.kind !== 'missing') return;
    if (there.ok && (await this.#autosave.flush())) this.#takeOver(there);
    else if (!there.ok && (await isCleared(this.#storage, now.id)))
      await this.#autosave.storeAgain();
    else this.#autosave.markConflict();
  }

  #show({ layout, revision, at }: Loaded): void {
    this.#autosave.untrack();
    openLayout(layout);
    this.#autosave.track(layout, revision, at);
  }

  /** The same layout as another tab stored it. What was done here before can still be undone. */
  #takeOver({ layout, revision, at }: Loaded): void {
    this.#autosave.untrack();
    takeOver('Change in another tab', layout);
    this.#autosave.track(layout, revision, at);
  }

  async #closeAsItIs(): Promise<void> {
    this.#autosave.untrack();
    openLayout(null);
    await this.#storage.offerAgain();
    await this.refresh();
  }
}

const failed = ({ reason, detail }: Refusal) => ({ kind: 'failed', reason, detail }) as const;

function marked(outcome: Awaited<ReturnType<ShelteredStorage['remove']>>): void {
  if (outcome.ok) return;
  throw new Error(outcome.kind === 'missing' ? missing : outcome.detail);
}

const missing = 'it is not here any more. Another tab may have deleted it.';

function needed(outcome: LoadOutcome): Loaded {
  if (outcome.ok) return outcome;
  if (outcome.kind === 'missing') throw new Error(missing);
  if (outcome.kind === 'refused') throw new Error(outcome.detail);
  const [first] = outcome.problems;
  const fault = first
    ? ` (${first.path === '' ? '' : `${first.path}: `}expected ${first.expected}, found ${first.actual})`
    : '';
  throw new Error(
    `the stored data of “${outcome.name}” can't be read${fault}. They are kept as they are, and Export hands them out.`,
  );
}
