import type { Layout } from '../../layout/layout.ts';
import { counted } from './nameOf.ts';

/** What a change took off the set-up list: `3 set-up ticks came off`; empty where nothing did. */
export function tickNews(before: Layout, after: Layout): string {
  const { done } = after.setUp;
  const off = before.setUp.done.filter((key) => !done.includes(key)).length;
  return off === 0 ? '' : `${counted(off, 'set-up tick')} came off`;
}
