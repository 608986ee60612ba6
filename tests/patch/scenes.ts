import { demo } from '../../src/layout/catalogue/kits/demo.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { onMicStand } from '../../src/layout/catalogue/kits/startingKit.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { DEFAULT_PATCH, type PatchSettings } from '../../src/layout/patch.ts';
import { type InputRow, inputList } from '../../src/patch/inputList.ts';
import { buildRig } from '../../src/rig/buildRig.ts';

/** A mic with its tip at a point, looking up or down. */
export const micAt = (
  id: string,
  hears: readonly string[],
  [x, y, z]: readonly [number, number, number],
  pitch: number,
): Mic => ({
  id,
  name: id,
  micClass: 'short-dynamic',
  hears: [...hears],
  mount: onMicStand('tripodMedium', [x + 500, y, 90], [x, y, z], [180, pitch]),
  input: null,
});

/** Under the middle of the snare of the starting kits, looking up at its lower head. */
export const snareBottom = micAt('mic-snare-bottom', ['snare'], [-70, 440, 450], 90);
/** At the beater's side of the kick of the starting kits, looking at the batter head. */
export const kickBeater: Mic = {
  ...micAt('mic-kick-beater', ['kick'], [150, 790, 380], 0),
  mount: onMicStand('tripodLow', [600, 790, 90], [150, 790, 380], [90, 0]),
};

const withMics = (layout: Layout, ...mics: readonly Mic[]): Layout => ({
  ...layout,
  mics: [...layout.mics, ...mics],
});

/** The demo's kit with a cowbell mic and one under the snare: 11 mics, the last two not plugged. */
export const demoWithMore: Layout = withMics(
  demo('demo'),
  micAt('mic-cowbell', ['cowbell'], [150, 1000, 1080], -60),
  snareBottom,
);

/** The large kit with one mic under the snare and one at the beater. */
export const largeWithMore: Layout = withMics(largeKit('large'), snareBottom, kickBeater);

export const patchWith = (change: Partial<PatchSettings>): PatchSettings => ({
  ...DEFAULT_PATCH,
  ...change,
});

export const rowsOf = (layout: Layout, patch: PatchSettings = DEFAULT_PATCH): readonly InputRow[] =>
  inputList(buildRig(layout), patch);

/** The row of a channel that a test needs, or a clear failure. */
export function rowOf(rows: readonly InputRow[], id: string): InputRow {
  const row = rows.find((each) => each.id === id);
  if (!row) throw new RangeError(`No row ${id}`);
  return row;
}
