import { type ClearSpotAnswer, clearSpotSteps } from '../clearance/clearSpot.ts';
import { motionOf } from '../clearance/micClearance.ts';
import { changeMount } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import { createRigBuilder } from '../rig/buildRig.ts';
import type { LeftMic } from '../session/clearing.ts';
import type { ClearAnswer, ClearedMic, ClearQuestion } from './clearQuestion.ts';

/** Answers a question step by step: its progress now and then, what was found last. Each mic is looked for among those that moved before it. */
export function* clearInTurn({ token, layout, mics }: ClearQuestion): Generator<ClearAnswer, void> {
  const motion = motionOf(layout.player, layout.pieces);
  const rigOf = createRigBuilder();
  const moved: ClearedMic[] = [];
  const left: LeftMic[] = [];
  let now = layout;
  for (const [done, mic] of mics.entries()) {
    const steps = clearSpotSteps({ motion, layout: now, rig: rigOf(now) }, mic);
    let step = steps.next();
    while (!step.done) {
      const { cost, spent } = step.value;
      yield { token, kind: 'progress', done, beyond: cost, spent };
      step = steps.next();
    }
    const answer = step.value;
    if (answer.kind === 'spot') {
      const { mount } = answer.mic;
      moved.push({ mic, mount, proven: answer.proven });
      now = changeMount(now, mic, () => mount);
    } else left.push(...leftMic(mic, answer));
    const soFar = { moved: [...moved], left: [...left] };
    yield { token, kind: 'progress', done: done + 1, beyond: 0, spent: 0, soFar };
  }
  yield { token, kind: 'found', moved, left };
}

/** A mic that is clear, or is not there, is not left in anybody's way. */
function leftMic(
  mic: Id,
  { reason, most }: Extract<ClearSpotAnswer, { kind: 'none' }>,
): readonly LeftMic[] {
  if (reason === 'clear' || reason === 'unknown') return [];
  return [{ mic, why: reason, ...(most !== undefined && { most }) }];
}
