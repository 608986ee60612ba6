import { clearInTurn } from './clearInTurn.ts';
import type { ClearAnswer, ClearQuestion } from './clearQuestion.ts';
import { messageOf } from './messageOf.ts';

/** How often progress is told, ms: oftener nobody can read it. */
const TOLD = 150;

/** Looks for clear spots beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<ClearQuestion>) => {
  try {
    answer(data);
  } catch (fault) {
    const reason = messageOf(fault);
    const failed: ClearAnswer = { token: data.token, kind: 'failed', reason };
    self.postMessage(failed);
  }
});

function answer(question: ClearQuestion): void {
  let told = 0;
  for (const step of clearInTurn(question)) {
    const now = performance.now();
    const isFleeting = step.kind === 'progress' && step.soFar === undefined;
    if (isFleeting && now - told < TOLD) continue;
    told = now;
    self.postMessage(step);
  }
}
