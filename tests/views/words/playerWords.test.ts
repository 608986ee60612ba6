import { expect, test } from 'vitest';
import { playerFactsWords } from '../../../src/views/words/playerWords.ts';
import { sample } from './sampleLayout.ts';

const { player } = sample;

test('says what tells one player from another', () => {
  expect(playerFactsWords(player, 'mm')).toBe(
    '1750 mm tall, seat 500 mm, leads right, stick 406 mm, strokes to 305 mm',
  );
  expect(
    playerFactsWords({ ...player, hiHat: 'open', body: { biacromialBreadth: 410 } }, 'mm'),
  ).toContain('leads right, hi-hat open, stick 406 mm, strokes to 305 mm, 1 length measured');
  expect(playerFactsWords(player, 'in')).toContain('68.9 in tall');
});
