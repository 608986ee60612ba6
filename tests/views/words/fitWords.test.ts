import { expect, test } from 'vitest';
import { fitPlaceWords, noFitWords } from '../../../src/views/words/fitWords.ts';

const from = { x: 0, y: 0 };
const place = (x: number, y: number, turn: number) => ({
  kit: { x, y, turn },
  shift: Math.hypot(x, y),
  turn,
});

test('a shift says how far and which way, a turn by how much and which way round', () => {
  expect(fitPlaceWords(place(0, -29, 0), from, 'mm')).toBe('Shift the kit 29 mm back');
  expect(fitPlaceWords(place(40, 30, 0), from, 'mm')).toBe(
    "Shift the kit 40 mm to the player's right and 30 mm toward the audience",
  );
  expect(fitPlaceWords(place(0, 0, -7.365), from, 'mm')).toBe(
    'Turn the kit in place by 7.4° clockwise, seen from above',
  );
  expect(fitPlaceWords(place(-5, 0, 12), from, 'mm')).toBe(
    "Turn the kit by 12° anticlockwise, seen from above, and shift it 5 mm to the player's left",
  );
});

test('where nothing does it, how much the kit is too large', () => {
  const fit = {
    beyond: 128,
    shifted: null,
    turned: null,
    both: null,
    tooWide: 0,
    tooDeep: 116.002,
  };
  expect(noFitWords(fit, 'mm')).toContain('117 mm too deep for this deck');
});
