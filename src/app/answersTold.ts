import type { Answers } from '../session/besideAnswers.ts';

/** What comes from the worker that answers drags: the answers, or what went wrong. */
export type AnswersTold =
  | { readonly answers: Answers; readonly fault: null }
  | { readonly answers: null; readonly fault: string };
