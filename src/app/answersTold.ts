import type { Change } from '../geometry/changedParts.ts';

/** What is asked of the worker that answers drags: a layout, as a change of the one asked before; null before the first. */
export interface AnswersAsked {
  readonly layout: Change;
}

/** What comes from it: the answers, as a change of those told before (null before the first), or what went wrong. */
export type AnswersTold =
  | { readonly answers: Change; readonly fault: null }
  | { readonly answers: null; readonly fault: string };
