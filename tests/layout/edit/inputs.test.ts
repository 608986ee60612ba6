import { expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { numberInputs } from '../../../src/layout/edit/inputs.ts';
import { setInput } from '../../../src/layout/edit/mics.ts';

const inOrder = (layout: ReturnType<typeof numberInputs>): string[] =>
  layout.mics.toSorted((a, b) => (a.input ?? 0) - (b.input ?? 0)).map(({ id }) => id);

// Kick, snare, hi-hat, toms, cymbals, overheads: festival order, common practice, no source.
test('mics are numbered in festival order, toms from small to large', () => {
  const kit = fivePieceTwoRacks('kit');
  const shuffled = { ...kit, mics: kit.mics.toReversed() };
  expect(inOrder(numberInputs(shuffled))).toEqual([
    'mic-kick-plate',
    'mic-kick-in',
    'mic-snare',
    'mic-hi-hat',
    'mic-rack-1',
    'mic-rack-2',
    'mic-floor-tom',
    'mic-overhead-floor-tom-side',
    'mic-overhead-hi-hat-side',
  ]);
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
