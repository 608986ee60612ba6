import { clearSpotSteps } from '../clearance/clearSpot.ts';
import { motionOf } from '../clearance/micClearance.ts';
import { changeMount } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { createRigBuilder } from '../rig/buildRig.ts';
import type { LeftMic } from '../session/clearing.ts';
import type { ClearAnswer, ClearedMic, ClearQuestion, Found, Progress } from './clearQuestion.ts';

/**
 * Rules, quoted by the tests:
 *
 * T1 Each mic is looked for among those that moved before it.
 * T2 When all have been looked for, one that is left is looked for again where another has moved since that stood in its way: so all of them, looked for
 *    once more right after, move no more.
 * T3 A mic moves once at most, and no mic is looked for again without another having moved: so there is an end.
 */

/** Answers a question step by step: its progress now and then, what was found last. */
export function* clearInTurn({ token, layout, mics }: ClearQuestion): Generator<ClearAnswer, void> {
  const run = new Run(layout);
  let waiting = mics;
  for (let isAgain = false; waiting.length > 0; isAgain = true) {
    const before = mics.length - waiting.length;
    for (const [index, mic] of waiting.entries()) {
      const done = before + index;
      for (const step of run.lookFor(mic)) {
        yield { token, kind: 'progress', done, ...step, ...(isAgain && { again: mic }) };
      }
      yield { token, kind: 'progress', done: done + 1, beyond: 0, spent: 0, soFar: run.soFar() };
    }
    waiting = mics.filter((mic) => run.mayBeFreer(mic));
  }
  yield { token, kind: 'found', ...run.soFar() };
}

/** A mic that is left, what stood in its way, and how many mics had moved when it was looked for. */
interface Left {
  readonly told: LeftMic;
  readonly hinderedBy: readonly Id[];
  readonly after: number;
}

/** What has moved and what is left, one mic after the other. */
class Run {
  private readonly rigOf = createRigBuilder();
  private readonly motion: ReturnType<typeof motionOf>;
  private readonly moved: ClearedMic[] = [];
  private readonly left = new Map<Id, Left>();
  private now: Layout;

  constructor(layout: Layout) {
    this.now = layout;
    this.motion = motionOf(layout.player, layout.pieces);
  }

  *lookFor(mic: Id): Generator<Pick<Progress, 'beyond' | 'spent'>, void> {
    const { motion, now: layout } = this;
    const steps = clearSpotSteps({ motion, layout, rig: this.rigOf(layout) }, mic);
    let step = steps.next();
    while (!step.done) {
      const { cost, spent } = step.value;
      yield { beyond: cost, spent };
      step = steps.next();
    }
    const answer = step.value;
    this.left.delete(mic);
    if (answer.kind === 'spot') {
      const { mount } = answer.mic;
      this.moved.push({ mic, mount, proven: answer.proven });
      this.now = changeMount(layout, mic, () => mount);
      return;
    }
    const { reason, most, hinderedBy = [] } = answer;
    // A mic that is clear, or is not there, is not left in anybody's way.
    if (reason === 'clear' || reason === 'unknown') return;
    const told = { mic, why: reason, ...(most !== undefined && { most }) };
    this.left.set(mic, { told, hinderedBy, after: this.moved.length });
  }

  /** Whether a mic is left that another made room for since. */
  mayBeFreer(mic: Id): boolean {
    const left = this.left.get(mic);
    if (!left) return false;
    return this.moved.slice(left.after).some((one) => left.hinderedBy.includes(one.mic));
  }

  /** What would be found if the search ended here. */
  soFar(): Pick<Found, 'moved' | 'left'> {
    const left = [...this.left.values()].map(({ told }): LeftMic => {
      const { mic } = told;
      return this.mayBeFreer(mic) ? { mic, why: 'not-again' } : told;
    });
    return { moved: [...this.moved], left };
  }
}
