import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { ForbiddenZone } from '../report/zone.ts';
import { type SessionState, session } from '../session/session.ts';
import type { ZoneAnswer, ZoneQuestion } from './zoneQuestion.ts';

/**
 * Rules, quoted by the tests:
 *
 * Z1 The zone that is drawn is of the selected mic, or there is none; while a new one is computed, that mic's last one stays.
 * Z2 During a gesture it is asked for only after 80 ms of rest; otherwise at once.
 * Z3 One question at a time: a new one ends the work on the last, which can take seconds.
 * Z4 An answer to anything but what is wanted now is dropped.
 * Z5 What can't change the zone (the box, a name, the deck, another mic) asks nothing.
 */
const REST = 80;

/** Computes zones beside the page; it answers at the place that it was started with. */
export interface ZoneComputer {
  ask(question: ZoneQuestion): void;
  /** Ends whatever it is working on, and itself. */
  end(): void;
}

interface Wanted {
  readonly layout: Layout;
  readonly mic: Id;
}

/** Keeps the session's zone that of the selected mic. */
export class ZoneKeeper {
  readonly #start: (hear: (answer: ZoneAnswer) => void) => ZoneComputer;
  #computer: ZoneComputer | null = null;
  #wanted: Wanted | null = null;
  /** The answer to what is wanted; undefined until it comes. */
  #answer: ForbiddenZone | null | undefined;
  /** The question that is not answered yet. */
  #open: { readonly token: number; readonly wanted: Wanted } | null = null;
  #lastToken = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;

  /** @param start Called when a question comes and no computer is there, with the place for answers. */
  constructor(start: (hear: (answer: ZoneAnswer) => void) => ZoneComputer) {
    this.#start = start;
    session.subscribe((now) => this.#look(now));
  }

  #look(now: SessionState): void {
    const wanted = wantedIn(now);
    if (sameZone(wanted, this.#wanted)) {
      if (this.#answer && now.zone !== this.#answer) session.setState({ zone: this.#answer });
      return;
    }
    this.#wanted = wanted;
    this.#answer = undefined;
    clearTimeout(this.#rest);
    if (now.zone !== null && now.zone.mic !== wanted?.mic) session.setState({ zone: null });
    if (wanted === null) return;
    if (now.gesture === null) this.#send();
    else this.#rest = setTimeout(() => this.#send(), REST);
  }

  #send(): void {
    if (this.#wanted === null || this.#answer !== undefined) return;
    if (this.#open !== null) {
      this.#computer?.end();
      this.#computer = null;
    }
    this.#computer ??= this.#start((answer) => this.#hear(answer));
    this.#lastToken += 1;
    this.#open = { token: this.#lastToken, wanted: this.#wanted };
    this.#computer.ask({ token: this.#lastToken, ...this.#wanted });
  }

  #hear({ token, zone }: ZoneAnswer): void {
    if (token !== this.#open?.token) return;
    const isWanted = this.#open.wanted === this.#wanted;
    this.#open = null;
    if (!isWanted) return;
    this.#answer = zone;
    session.setState({ zone });
  }
}

function wantedIn({ open, selection, preferences }: SessionState): Wanted | null {
  if (!open || !preferences.showZone || selection?.kind !== 'mic') return null;
  const isThere = open.layout.mics.some(({ id }) => id === selection.id);
  return isThere ? { layout: open.layout, mic: selection.id } : null;
}

/** Whether two zones are the same by what they are computed from (rule Z5). Edits share what they don't change. */
function sameZone(a: Wanted | null, b: Wanted | null): boolean {
  if (a === null || b === null) return a === b;
  const micIn = ({ layout, mic }: Wanted) => layout.mics.find(({ id }) => id === mic);
  return (
    micIn(a) === micIn(b) &&
    a.layout.player === b.layout.player &&
    a.layout.pieces === b.layout.pieces &&
    a.layout.ownClasses === b.layout.ownClasses
  );
}
