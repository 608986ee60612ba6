import { changed, changeFrom } from '../geometry/changedParts.ts';
import type { Layout } from '../layout/layout.ts';
import { createAnalyst } from '../report/analyse.ts';
import type { Answers } from '../session/besideAnswers.ts';
import type { AnswersAsked, AnswersTold } from './answersTold.ts';
import { messageOf } from './messageOf.ts';

const analyse = createAnalyst();
let layout: Layout | null = null;
let told: Answers | null = null;

/** Answers layouts beside the page while something is dragged, one at a time. */
self.addEventListener('message', ({ data }: MessageEvent<AnswersAsked>) => {
  const told = answersTo(data);
  self.postMessage(told, { transfer: told.answers ? [told.answers.numbers.buffer] : [] });
});

function answersTo(asked: AnswersAsked): AnswersTold {
  try {
    layout = changed(layout, asked.layout) as Layout;
    const { rig: _, ...answers } = analyse(layout, true);
    const change = changeFrom(told, answers);
    told = answers;
    return { answers: change, fault: null };
  } catch (fault) {
    return { answers: null, fault: messageOf(fault) };
  }
}
