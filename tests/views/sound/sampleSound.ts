import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { createSoundReporter, type Sound } from '../../../src/report/sound.ts';

/** The large starting kit and what its mics hear. */
export const kit: Layout = largeKit('kit');
export const soundOf = (layout: Layout): Sound =>
  createSoundReporter().of(layout, createAnalyst()(layout));
export const sound: Sound = soundOf(kit);

/** The first of a list that a test can't do without. */
export function first<T>(list: readonly T[]): T {
  const [one] = list;
  if (one === undefined) throw new Error('expected at least one entry');
  return one;
}
