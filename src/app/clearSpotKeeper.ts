import { changeMount } from '../layout/edit/mics.ts';
import type { Layout } from '../layout/layout.ts';
import { micsToLead } from '../report/needsSpot.ts';
import { type ClearRequest, type ClearSpots, clearing } from '../session/clearing.ts';
import {
  beginOffer,
  leaveOffer,
  ownLayout,
  type SessionState,
  session,
} from '../session/session.ts';
import type { ClearAnswer, ClearQuestion, Found } from './clearQuestion.ts';

/**
 * Rules, quoted by the tests:
 *
 * P1 One search at a time: a new one ends the work on the last.
 * P2 A search is about the layout it was asked for: any change ends it, and an answer that comes all the same is dropped.
 * P3 What was found is offered, never done: it is shown until it is taken or left, and nothing is changed before. A new search leaves what is
 *    on offer: its answer is about the layout without it.
 * P4 That nothing was found is said until anything changes.
 * P5 A search of many mics can be ended early: what was found until then is offered, and mics that were not dealt with are said to be so.
 * P6 Of two mics that met, the one that would move makes room for the other: that may stay, and is not said to be left, whether it was looked for or not.
 */

type Answered = Pick<Found, 'moved' | 'left'>;

/** Looks for clear spots beside the page; it answers at the place that it was started with. */
export interface ClearComputer {
  ask(question: ClearQuestion): void;
  /** Ends whatever it is working on, and itself. */
  end(): void;
}

export class ClearSpotKeeper implements ClearSpots {
  readonly #start: (hear: (answer: ClearAnswer) => void) => ClearComputer;
  #computer: ClearComputer | null = null;
  /** The search that is not answered yet. */
  #open: {
    readonly token: number;
    readonly request: ClearRequest;
    readonly layout: Layout;
    readonly soFar: Answered;
  } | null = null;
  #lastToken = 0;

  /** @param start Called when a search begins and no computer is there, with the place for answers. */
  constructor(start: (hear: (answer: ClearAnswer) => void) => ClearComputer) {
    this.#start = start;
    session.subscribe((now) => this.#look(now));
  }

  find(request: ClearRequest): void {
    this.stop();
    leaveOffer();
    const layout = ownLayout(session.getState());
    if (layout === null) return;
    this.#computer ??= this.#start((answer) => this.#hear(answer));
    this.#lastToken += 1;
    this.#open = { token: this.#lastToken, request, layout, soFar: { moved: [], left: [] } };
    clearing.setState({
      current: { kind: 'working', request, done: 0, beyond: 0, spent: 0, found: 0 },
    });
    this.#computer.ask({ token: this.#lastToken, layout, mics: request.mics });
  }

  stop(): void {
    if (this.#open !== null) {
      this.#computer?.end();
      this.#computer = null;
      this.#open = null;
    }
    const { current } = clearing.getState();
    if (current !== null && current.kind !== 'offered') clearing.setState({ current: null });
  }

  endEarly(): void {
    if (this.#open === null) return;
    const { request, layout, soFar } = this.#open;
    const { moved, left } = soFar;
    const dealtWith = new Set([...moved, ...left].map(({ mic }) => mic));
    const rest = request.mics.filter((mic) => !dealtWith.has(mic));
    this.#computer?.end();
    this.#computer = null;
    this.#open = null;
    const notLooked = rest.map((mic) => ({ mic, why: 'not-looked' as const }));
    this.#show(request, layout, { moved, left: [...left, ...notLooked] });
  }

  #look(now: SessionState): void {
    const { current } = clearing.getState();
    if (current === null) return;
    const isOver =
      current.kind === 'offered'
        ? now.gesture?.before !== current.before.layout || !now.gesture.isOffer
        : current.kind === 'none'
          ? ownLayout(now) !== current.layout
          : this.#open !== null && ownLayout(now) !== this.#open.layout;
    if (!isOver) return;
    clearing.setState({ current: null });
    this.stop();
  }

  #hear(answer: ClearAnswer): void {
    if (answer.token !== this.#open?.token) return;
    const { request, layout } = this.#open;
    if (answer.kind === 'progress') {
      const { done, beyond, spent, again } = answer;
      const soFar = answer.soFar ?? this.#open.soFar;
      this.#open = { ...this.#open, soFar };
      const found = soFar.moved.length;
      clearing.setState({
        current: {
          kind: 'working',
          request,
          done,
          beyond,
          spent,
          found,
          ...(again !== undefined && { again }),
        },
      });
      return;
    }
    this.#open = null;
    if (answer.kind === 'found') this.#show(request, layout, answer);
    else clearing.setState({ current: { kind: 'failed', request, reason: answer.reason } });
  }

  /** What was found is offered where the layout is still the one that was asked about. */
  #show(request: ClearRequest, layout: Layout, { moved, left }: Answered): void {
    clearing.setState({ current: null });
    const before = session.getState().open;
    if (before === null || before.layout !== layout) return;
    if (moved.length === 0) {
      clearing.setState({ current: { kind: 'none', request, layout, left } });
    } else {
      beginOffer(request.label, (from) =>
        moved.reduce((to, { mic, mount }) => changeMount(to, mic, () => mount), from),
      );
      const mics = moved.map(({ mic }) => mic);
      const offered = session.getState().open;
      const toLead = new Set(offered === null ? [] : micsToLead(offered.report));
      const unproven = moved.flatMap(({ mic, proven }) => (proven ? [] : [mic]));
      clearing.setState({
        current: {
          kind: 'offered',
          request,
          before,
          moved: mics,
          unproven,
          left: left.filter(({ mic }) => toLead.has(mic)),
        },
      });
    }
  }
}
