import { createClearances } from '../clearance/clearances.ts';
import { changeClip, changeMount } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mount } from '../layout/mics/mount.ts';
import { createRigBuilder } from '../rig/buildRig.ts';
import type { LeftMic } from '../session/clearing.ts';
import type { ClearAnswer, ClearedMic, ClearQuestion } from './clearQuestion.ts';

const clearancesOf = createClearances();
const rigOf = createRigBuilder();

/** The nearest place round the rim, in whole degrees, where a clip is clear. */
function spotOf(layout: Layout, mic: Id): Mount | undefined {
  const mount = layout.mics.find(({ id }) => id === mic)?.mount;
  if (mount?.kind !== 'clip') return undefined;
  for (let by = 1; by <= 180; by++) {
    for (const angle of [mount.angle + by, mount.angle - by]) {
      const tried = changeClip(layout, mic, { angle });
      const row = clearancesOf(tried, rigOf(tried).mics).find((each) => each.mic === mic);
      if (row?.verdict === 'clear') return tried.mics.find(({ id }) => id === mic)?.mount;
    }
  }
  return undefined;
}

/** Looks for clear spots beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<ClearQuestion>) => {
  const { token, mics } = data;
  const say = (answer: ClearAnswer): void => self.postMessage(answer);
  let { layout } = data;
  const moved: ClearedMic[] = [];
  const left: LeftMic[] = [];
  for (const [done, mic] of mics.entries()) {
    say({ token, kind: 'progress', done, beyond: 0 });
    const mount = spotOf(layout, mic);
    if (mount === undefined) left.push({ mic, why: 'none-within-reach' });
    else {
      moved.push({ mic, mount });
      layout = changeMount(layout, mic, () => mount);
    }
  }
  say({ token, kind: 'found', moved, left });
});
