import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import { needIn } from './needQuestion.ts';

/** Tells what is to solve in one layout after the other, beside the page. */
self.addEventListener('message', ({ data }: MessageEvent<Layout>) => {
  self.postMessage(answerTo(data));
});

function answerTo(layout: Layout) {
  try {
    return needIn(layout, createAnalyst()(layout));
  } catch {
    // Its row tells nothing then; whoever opens it is told what is wrong.
    return null;
  }
}
