import { findBoxSpots } from '../report/boxSpots.ts';
import type { BoxAnswer, BoxQuestion } from './boxQuestion.ts';
import { messageOf } from './messageOf.ts';

/** How often progress is told, ms: oftener nobody can read it. */
const TOLD = 100;

/** Looks for box spots beside the page, one question at a time. */
self.addEventListener('message', ({ data }: MessageEvent<BoxQuestion>) => {
  const answer = (given: BoxAnswer): void => self.postMessage(given);
  try {
    look(data, answer);
  } catch (fault) {
    const reason = messageOf(fault);
    answer({ token: data.token, kind: 'failed', reason });
  }
});

function look({ token, layout }: BoxQuestion, answer: (given: BoxAnswer) => void): void {
  const search = findBoxSpots(layout);
  let told = 0;
  for (;;) {
    const step = search.next();
    if (step.done) {
      answer({ token, kind: 'found', spots: step.value });
      return;
    }
    const now = performance.now();
    if (now - told < TOLD) continue;
    told = now;
    answer({ token, kind: 'progress', ...step.value });
  }
}
