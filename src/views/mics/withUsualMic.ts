import { offeredMics } from '../../layout/catalogue/offered/offeredMics.ts';
import { addMic } from '../../layout/edit/mics.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { firstClear } from './firstClear.ts';

/** A layout with one more mic for some pieces, of a class or of the usual one, at the first usual place that is clear. */
export function withUsualMic(layout: Layout, hears: readonly Id[], micClass?: Id): Layout {
  const mic = firstClear(layout, offeredMics(layout, hears, micClass));
  return mic ? addMic(layout, mic) : layout;
}
