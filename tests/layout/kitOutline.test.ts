import { expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { kitOutline, outlineIn, outlineText } from '../../src/layout/kitOutline.ts';

it('an outline comes back from its text, to the mm and degree', () => {
  for (const { make } of STARTING_KITS) {
    const { pieces } = make('kit');
    const outline = kitOutline(pieces);
    expect(outline).toHaveLength(pieces.length);
    const back = outlineIn(outlineText(outline));
    expect(back.map(({ look }) => look)).toEqual(outline.map(({ look }) => look));
    for (const [index, one] of back.entries()) {
      const was = outline[index];
      for (const key of ['x', 'y', 'width', 'length', 'turn'] as const) {
        expect(Math.abs(one[key] - (was?.[key] ?? Number.NaN))).toBeLessThanOrEqual(0.5);
      }
    }
  }
});

it('cymbals lie above drums, and those above the kick', () => {
  const kit = STARTING_KITS.map(({ make }) => kitOutline(make('kit').pieces));
  for (const outline of kit) {
    const order = outline.map(({ look }) => ['other', 'kick', 'drum', 'cymbal'].indexOf(look));
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  }
});

it('a text that is no outline shows nothing, and throws nothing', () => {
  expect(outlineIn('')).toEqual([]);
  expect(outlineIn('9 1 1 1 1 1;2 x 0 0 0 0;2 1 2 3')).toEqual([]);
});
