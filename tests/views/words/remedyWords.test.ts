import { expect, test } from 'vitest';
import { noRemedyWords, remedyWords } from '../../../src/views/words/remedyWords.ts';
import { sample } from './sampleLayout.ts';

test('a turn says whose feet, how far and which way', () => {
  const turn = (by: number) =>
    remedyWords({ kind: 'turn', feet: { id: 'mic-snare', by, turn: 0 } }, sample);
  expect(turn(14)).toBe('Turn the feet of Snare mic by 14° anticlockwise, seen from above');
  expect(turn(-3)).toBe('Turn the feet of Snare mic by 3° clockwise, seen from above');
});

test('a stand is named, and one that stays is let follow', () => {
  const stand = sample.mics.find(({ id }) => id === 'mic-snare')?.mount;
  if (stand?.kind !== 'stand') throw new Error('the snare mic of the sample is on a stand');
  const words = (name: 'tripodTall' | typeof stand.stand) =>
    remedyWords({ kind: 'stand', mic: 'mic-snare', stand: name, follows: true }, sample);
  expect(words('tripodTall')).toBe('Take another stand: tall tripod boom');
  expect(words(stand.stand)).toBe('Let the mast follow to where the stand reaches');
});

test('a base goes in as far as it must, rounded up, and the mic stays', () => {
  const remedy = { kind: 'base', mic: 'mic-snare', to: { x: 0, y: 0 }, by: 41.2 } as const;
  expect(remedyWords(remedy, sample)).toBe('Move the base in by 42 mm; the mic stays');
});

test('where nothing of one tap helps, it is said', () => {
  for (const words of Object.values(noRemedyWords)) expect(words).toMatch(/^No .*\.$/);
});
