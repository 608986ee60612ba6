import { type Change, changed } from '../geometry/changedParts.ts';
import { sharedParts } from '../geometry/sharedParts.ts';
import type { Layout } from '../layout/layout.ts';
import type { Report } from '../report/report.ts';

/** What is said about a layout; where everything is, the page works out itself. */
export type Answers = Omit<Report, 'rig'>;

/** Answers layouts beside the page, one at a time, as in a hurry. */
export interface Answerer {
  /**
   * @param hear Is told once: what changed from the answers that this answerer told before (null before the first), or null when there
   * will be none any more.
   */
  ask(layout: Layout, hear: (change: Change | null) => void): void;
}

/** A layout with where everything is in it. */
export interface Placed {
  readonly layout: Layout;
  readonly rig: Report['rig'];
}

/** A layout with all that is known of it. */
export interface Answered {
  readonly layout: Layout;
  readonly report: Report;
}

/**
 * The answers to what a gesture shows, worked out beside the page; quoted by the tests:
 *
 * V1 One question at a time, about what is shown newest; what equals the layout asked last is not asked again.
 * V2 Answers to a gesture that is over, or to one before it, are dropped.
 * V3 What is equal to the answers before is the very same object. Only what changed is told.
 * V4 Who can't answer any more is not asked any more.
 * V5 The drawing takes newer answers over at every second look only: the panel takes them over in between, so that no frame holds both.
 *
 * So the drawing's answers are one frame old when they come to be seen and two at most, where answering takes less than a frame.
 */
export class BesideAnswers {
  #answerer: Answerer | null = null;
  #isOpen = false;
  #asked: Layout | null = null;
  #last: Answers | null = null;
  /** What the answerer told so far: its next answers are told as a change of these. */
  #heard: Answers | null = null;
  #newest: Answered | null = null;
  #drawn: Answered | null = null;
  #isTurn = true;
  /** Who shows the gesture under way. */
  #told: (() => void) | null = null;
  /** Counts gestures: an answer knows of which it is. */
  #gesture = 0;

  /** Whether there is someone to ask. */
  get isThere(): boolean {
    return this.#answerer !== null;
  }

  /** The newest answers of the gesture under way; null until the first come. */
  get newest(): Answered | null {
    return this.#newest;
  }

  /** The answers to draw in the next frame; null until the first come. */
  forDrawing(): Answered | null {
    if (this.#isTurn) this.#drawn = this.#newest;
    this.#isTurn = !this.#isTurn;
    return this.#drawn;
  }

  answerBy(answerer: Answerer | null): void {
    this.#answerer = answerer;
    this.#isOpen = false;
    this.#heard = null;
    this.forget();
  }

  /** Has a layout answered for nobody: the next ones differ little from it and are answered sooner. */
  warm(layout: Layout): void {
    this.#put(layout, () => undefined);
  }

  /** A gesture begins, on what is known already. */
  begin({ report }: Answered): void {
    this.forget();
    const { rig: _, ...answers } = report;
    this.#last = answers;
  }

  /** Drops what a gesture was told, and what it would be. */
  forget(): void {
    this.#gesture += 1;
    this.#told = null;
    this.#newest = null;
    this.#drawn = null;
    this.#isTurn = true;
    this.#last = null;
    this.#asked = null;
  }

  /** @param told Is called when there are newer answers, or there is room for another question. */
  ask({ layout, rig }: Placed, told: () => void): void {
    const asked = sharedParts(this.#asked, layout);
    if (asked === this.#asked) return;
    this.#told = told;
    if (this.#isOpen) return;
    this.#asked = asked;
    const gesture = this.#gesture;
    this.#put(layout, (answers) => {
      if (gesture !== this.#gesture) return;
      this.#last = answers;
      this.#newest = { layout, report: { ...answers, rig } };
    });
  }

  #put(layout: Layout, hear: (answers: Answers) => void): void {
    const answerer = this.#answerer;
    if (this.#isOpen || answerer === null) return;
    this.#isOpen = true;
    answerer.ask(layout, (change) => {
      if (answerer !== this.#answerer) return;
      this.#isOpen = false;
      if (change === null) this.#answerer = null;
      else {
        const goesOn = this.#heard !== null && this.#heard === this.#last;
        const answers = changed(this.#heard, change) as Answers;
        // Only a gesture's first answers are compared: later ones are told as a change of those that it holds already.
        this.#heard = goesOn ? answers : sharedParts(this.#last, answers);
        hear(this.#heard);
      }
      this.#told?.();
    });
  }
}
