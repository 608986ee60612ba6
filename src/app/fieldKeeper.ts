import { answeredOf, type SessionState, session } from '../session/session.ts';
import type { FieldAnswer, FieldKind, FieldQuestion, Fields, Wanted } from './fieldQuestion.ts';
import type { FieldRule } from './fieldRules.ts';

/**
 * Rules of everything that is computed beside the page and drawn on the plan; quoted by the tests:
 *
 * K1 The field that is drawn is of what is selected, or there is none; while a new one is computed, the last one of the same
 *    thing stays.
 * K2 During a gesture a field is asked for only after 80 ms of rest; otherwise at once.
 * K3 One question at a time: a new one ends the work on the last, which can take long.
 * K4 An answer to anything but what is wanted now is dropped.
 * K5 What can't change the field asks nothing.
 * K6 A live field is asked for at once, in a gesture too. While a question is open nothing is asked or ended; its answer is
 *    shown when it is of the same thing, and then the newest question follows. So it is at most one answer behind.
 * K7 A live field that comes in a gesture is shown in the frame in which the drawing takes answers over, and in the second change after it came
 *    at the latest, so that labels, which keep clear of it, find their places once for both; while the finger rests, 34 ms later.
 * K8 A field that waits for a rest is marked as that of before from the change that outdates it until the new one is there.
 */
const REST = 80;
const TOGETHER = 34;

/** Computes fields beside the page; it answers at the place that it was started with. */
export interface FieldComputer {
  ask(question: FieldQuestion): void;
  /** Ends whatever it is working on, and itself. */
  end(): void;
}

type Start<Kind extends FieldKind> = (hear: (answer: FieldAnswer<Kind>) => void) => FieldComputer;

/** Keeps one kind of field of the session that of what is selected. */
export class FieldKeeper<Kind extends FieldKind> {
  readonly #rule: FieldRule<Kind>;
  readonly #start: Start<Kind>;
  #computer: FieldComputer | null = null;
  #wanted: Wanted | null = null;
  /** The answer to what is wanted; undefined until it comes. */
  #answer: Fields[Kind] | null | undefined;
  /** The question that is not answered yet. */
  #open: { readonly token: number; readonly wanted: Wanted } | null = null;
  #lastToken = 0;
  #rest: ReturnType<typeof setTimeout> | undefined;
  /** What waits for its turn to be shown, and whether it, or what it replaced, let a change go by. */
  #late: Fields[Kind] | null = null;
  #hasWaited = false;
  #together: ReturnType<typeof setTimeout> | undefined;

  /** @param start Called when a question comes and no computer is there, with the place for answers. */
  constructor(rule: FieldRule<Kind>, start: Start<Kind>) {
    this.#rule = rule;
    this.#start = start;
    session.subscribe((now, before) => this.#look(now, before));
  }

  #look(now: SessionState, before: SessionState): void {
    const rule = this.#rule;
    const wanted = rule.wanted(now);
    if (this.#late !== null && wanted !== null && rule.isAbout(this.#late, wanted))
      this.#lookAtLate(this.#late, now, before);
    else this.#takeLate();
    const shown = rule.shown(now);
    if (this.#isSame(wanted)) {
      if (this.#answer && shown !== this.#answer && this.#late === null) rule.show(this.#answer);
      return;
    }
    this.#wanted = wanted;
    this.#answer = undefined;
    clearTimeout(this.#rest);
    if (shown !== null && !(wanted && rule.isAbout(shown, wanted))) rule.show(null);
    else if (shown !== null) rule.outdate?.();
    if (wanted === null) return;
    if (rule.live) {
      if (this.#open === null) this.#send();
    } else if (now.gesture === null) this.#send();
    else this.#rest = setTimeout(() => this.#send(), REST);
  }

  #lookAtLate(late: Fields[Kind], now: SessionState, before: SessionState): void {
    const isPlaced = now.open !== before.open;
    if (now.gesture === null || isTakenOver(now, before) || (isPlaced && this.#hasWaited)) {
      this.#takeLate();
      this.#rule.show(late);
    } else if (isPlaced) {
      this.#wait(late);
      this.#hasWaited = true;
    }
  }

  #isSame(wanted: Wanted | null): boolean {
    if (wanted === null || this.#wanted === null) return wanted === this.#wanted;
    return this.#rule.same(wanted, this.#wanted);
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
    this.#computer.ask({ kind: this.#rule.kind, token: this.#lastToken, ...this.#wanted });
  }

  #hear({ token, field }: FieldAnswer<Kind>): void {
    if (token !== this.#open?.token) return;
    const isWanted = this.#open.wanted === this.#wanted;
    this.#open = null;
    if (isWanted) {
      this.#answer = field;
      this.#show(field);
    } else if (this.#rule.live && this.#wanted !== null) {
      if (field !== null && this.#rule.isAbout(field, this.#wanted)) this.#show(field);
      this.#send();
    }
  }

  #show(field: Fields[Kind] | null): void {
    if (field !== null && this.#rule.live && session.getState().gesture !== null) {
      this.#wait(field);
      return;
    }
    this.#takeLate();
    this.#rule.show(field);
  }

  #wait(late: Fields[Kind]): void {
    clearTimeout(this.#together);
    this.#late = late;
    this.#together = setTimeout(() => {
      this.#takeLate();
      this.#rule.show(late);
    }, TOGETHER);
  }

  #takeLate(): void {
    if (this.#late === null) return;
    this.#late = null;
    this.#hasWaited = false;
    clearTimeout(this.#together);
  }
}

/** Whether the drawing took newer answers over. */
const isTakenOver = ({ open }: SessionState, { open: before }: SessionState): boolean =>
  (open && answeredOf(open)) !== (before && answeredOf(before));
