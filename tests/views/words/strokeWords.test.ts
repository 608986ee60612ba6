import { expect, test } from 'vitest';
import { playerSchema } from '../../../src/layout/player.ts';
import { toInches } from '../../../src/units/inch.ts';
import { STROKES } from '../../../src/views/words/strokeWords.ts';

test('taps, half and full strokes are 3, 6 and 12 inches to the nearest (common teaching, from memory)', () => {
  expect(STROKES.map(({ name, height }) => [name, Math.round(toInches(height))])).toEqual([
    ['Tap', 3],
    ['Half', 6],
    ['Full', 12],
  ]);
  for (const { height } of STROKES) {
    expect(playerSchema.shape.strokeHeight.safeParse(height).success).toBe(true);
  }
});
