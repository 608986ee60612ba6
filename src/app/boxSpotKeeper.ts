import type { Layout } from '../layout/layout.ts';
import { type BoxSpotFinder, boxSearch } from '../session/boxSearch.ts';
import { ownLayout, type SessionState, session } from '../session/session.ts';
import type { BoxAnswer, BoxQuestion } from './boxQuestion.ts';

/**
 * Rules, quoted by the tests:
 *
 * E1 One search at a time: a new one ends the work on the last.
 * E2 A search and what it found end with any change that they depend on: pieces, mics, deck, how cables are laid, the number of
 *    inputs. Where the box stands is none of it: after one spot is taken, the others can still be.
 * E3 An answer to another question is dropped.
 */

/** Looks for box spots beside the page; it answers at the place that it was started with. */
export interface BoxComputer {
  ask(question: BoxQuestion): void;
  /** Ends whatever it is working on, and itself. */
  end(): void;
}

export class BoxSpotKeeper implements BoxSpotFinder {
  readonly #start: (hear: (answer: BoxAnswer) => void) => BoxComputer;
  #computer: BoxComputer | null = null;
  /** What it last looked for, as long as that counts; and whether it still does. */
  #asked: Layout | null = null;
  #isWorking = false;
  #lastToken = 0;

  /** @param start Called when a search begins and no computer is there, with the place for answers. */
  constructor(start: (hear: (answer: BoxAnswer) => void) => BoxComputer) {
    this.#start = start;
    session.subscribe((now) => this.#look(now));
  }

  find(): void {
    this.stop();
    const layout = ownLayout(session.getState());
    if (layout === null) return;
    this.#computer ??= this.#start((answer) => this.#hear(answer));
    this.#lastToken += 1;
    this.#asked = layout;
    this.#isWorking = true;
    boxSearch.setState({ current: { kind: 'working', layout, done: 0, of: 1 } });
    this.#computer.ask({ token: this.#lastToken, layout });
  }

  stop(): void {
    if (this.#asked === null) return;
    if (this.#isWorking) {
      this.#computer?.end();
      this.#computer = null;
    }
    this.#asked = null;
    this.#isWorking = false;
    boxSearch.setState({ current: null });
  }

  #look(now: SessionState): void {
    if (this.#asked === null) return;
    const layout = ownLayout(now);
    if (layout === null || !isSameQuestion(this.#asked, layout)) this.stop();
  }

  #hear(answer: BoxAnswer): void {
    const layout = this.#asked;
    if (answer.token !== this.#lastToken || layout === null || !this.#isWorking) return;
    if (answer.kind !== 'progress') this.#isWorking = false;
    switch (answer.kind) {
      case 'progress':
        boxSearch.setState({
          current: { kind: 'working', layout, done: answer.done, of: answer.of },
        });
        return;
      case 'found':
        boxSearch.setState({ current: { kind: 'found', layout, spots: answer.spots } });
        return;
      case 'failed':
        boxSearch.setState({ current: { kind: 'failed', layout, reason: answer.reason } });
    }
  }
}

/** E2: edits share what they don't change. */
const isSameQuestion = (p: Layout, q: Layout): boolean =>
  p.id === q.id &&
  p.pieces === q.pieces &&
  p.mics === q.mics &&
  p.deck === q.deck &&
  p.cabling === q.cabling &&
  p.box.inputs === q.box.inputs;
