import { sharedParts } from '../geometry/sharedParts.ts';
import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import type { AnswersTold } from './answersTold.ts';
import { messageOf } from './messageOf.ts';

const analyse = createAnalyst();
let last: Layout | null = null;

/** Answers layouts beside the page while something is dragged, one at a time. */
self.addEventListener('message', ({ data }: MessageEvent<Layout>) => {
  self.postMessage(answersTo(data));
});

function answersTo(layout: Layout): AnswersTold {
  try {
    last = sharedParts(last, layout);
    const { rig: _, ...answers } = analyse(last, true);
    return { answers, fault: null };
  } catch (fault) {
    return { answers: null, fault: messageOf(fault) };
  }
}
