import type { Layout } from '../layout.ts';
import { withPart } from './change.ts';

/** Edits of the ticks of the set-up list: pure, and the same layout when they have no effect. */

/** Ticks a step, or takes its tick off. */
export function tickStep(layout: Layout, key: string, isDone: boolean): Layout {
  const { done } = layout.setUp;
  if (done.includes(key) === isDone) return layout;
  const next = isDone ? [...done, key] : done.filter((each) => each !== key);
  return withPart(layout, 'setUp', { done: next });
}

/** Takes every tick off, for the next set-up. */
export const clearSetUp = (layout: Layout): Layout =>
  layout.setUp.done.length === 0 ? layout : withPart(layout, 'setUp', { done: [] });
