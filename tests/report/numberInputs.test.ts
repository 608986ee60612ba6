import { expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { setInput } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { numberInputs } from '../../src/report/numberInputs.ts';
import { patchReport } from '../../src/report/patch.ts';

const inOrder = (layout: Layout): string[] =>
  layout.mics.toSorted((a, b) => (a.input ?? 0) - (b.input ?? 0)).map(({ id }) => id);
const listed = (layout: Layout): readonly string[] =>
  patchReport(layout, createAnalyst()(layout)).rows.map(({ mic }) => mic);

// Kick, snare, hi-hat, toms, cymbals, overheads: festival order, common practice, no source.
test('mics are numbered in festival order, toms from small to large', () => {
  const kit = fivePieceTwoRacks('kit');
  const shuffled = { ...kit, mics: kit.mics.toReversed() };
  const numbered = numberInputs(shuffled);
  expect(inOrder(numbered).slice(2, 7)).toEqual([
    'mic-snare',
    'mic-hi-hat',
    'mic-rack-1',
    'mic-rack-2',
    'mic-floor-tom',
  ]);
  expect(inOrder(numbered)).toEqual(listed(numbered));
});

test('an order set by hand is the order of the inputs', () => {
  const kit = largeKit('kit');
  const order = kit.mics.map(({ id }) => id).toReversed();
  expect(inOrder(numberInputs({ ...kit, patch: { ...kit.patch, order } }))).toEqual(order);
});

test('every mic gets an input, from 1, each once', () => {
  const kit = largeKit('kit');
  const unplugged = kit.mics.reduce((layout, { id }) => setInput(layout, id, null), kit);
  const inputs = numberInputs(unplugged).mics.map(({ input }) => input ?? 0);
  expect(inputs.toSorted((a, b) => a - b)).toEqual(kit.mics.map((_, index) => index + 1));
});

test('numbered twice it is the same layout', () => {
  const once = numberInputs(largeKit('kit'));
  expect(numberInputs(once)).toBe(once);
});
