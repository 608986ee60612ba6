import { type Change, changeFrom } from '../geometry/changedParts.ts';
import type { Layout } from '../layout/layout.ts';
import type { Answerer } from '../session/besideAnswers.ts';
import type { AnswersAsked, AnswersTold } from './answersTold.ts';
import address from './answerWorker.ts?worker&url';
import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';

/** Answers what a drag shows in a worker, which starts with the first question. */
export function startAnswerWorker(): Answerer {
  let worker: Worker | null = null;
  let asked: Layout | null = null;
  let hear: ((answers: Change | null) => void) | null = null;
  const tell = (answers: Change | null): void => {
    const told = hear;
    hear = null;
    told?.(answers);
  };
  const fail = (reason: string): void => {
    sayTrouble('Answers can’t be worked out beside the page; drags may stutter', new Error(reason));
    worker?.terminate();
    tell(null);
  };
  const start = (): Worker => {
    const started = new Worker(trustedScript(address), { type: 'module', name: 'answers' });
    started.addEventListener('message', ({ data }: MessageEvent<AnswersTold>) => {
      if (data.answers === null) fail(data.fault);
      else tell(data.answers);
    });
    started.addEventListener('error', (event) =>
      fail(event.message || 'its file could not be read'),
    );
    return started;
  };
  return {
    ask(layout, told) {
      hear = told;
      worker ??= start();
      const question: AnswersAsked = { layout: changeFrom(asked, layout) };
      asked = layout;
      worker.postMessage(question);
    },
  };
}
