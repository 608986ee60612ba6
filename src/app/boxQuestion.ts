import type { Layout } from '../layout/layout.ts';
import type { FoundSpots } from '../report/boxSpots.ts';

/** What the page asks of the worker that looks for box spots. */
export interface BoxQuestion {
  readonly token: number;
  readonly layout: Layout;
}

/** `token`: of the question that it answers. `done` spots of about `of` are looked at. */
export type BoxAnswer = { readonly token: number } & (
  | { readonly kind: 'progress'; readonly done: number; readonly of: number }
  | { readonly kind: 'found'; readonly spots: FoundSpots }
  | { readonly kind: 'failed'; readonly reason: string }
);
