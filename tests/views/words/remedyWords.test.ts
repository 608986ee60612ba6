import { expect, test } from 'vitest';
import { nextLines, noRemedyWords, remedyWords } from '../../../src/views/words/remedyWords.ts';
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

test('no turn of feet is advised where none is known to free them, nor before that is known', () => {
  const turn = 'Turn one tripod so that a leg goes between the others, or move one base.';
  const none = noRemedyWords['feet-overlap'] ?? '';
  expect(nextLines('feet-overlap', turn, null)).toEqual([none]);
  expect(nextLines('feet-overlap', turn, undefined)).toEqual([]);
  const remedy = { kind: 'turn', feet: { id: 'mic-snare', by: 3, turn: 0 } } as const;
  expect(nextLines('feet-overlap', turn, remedy)).toEqual([turn]);
  const move = 'Move the two kicks apart.';
  for (const found of [null, undefined])
    expect(nextLines('feet-overlap', move, found)).toEqual([move]);
  // What else is to do stays beside what one tap cannot.
  const near = 'Bring the base nearer.';
  expect(nextLines('mic-beyond-stand', near, null)).toEqual([
    near,
    noRemedyWords['mic-beyond-stand'],
  ]);
  expect(nextLines('mic-in-shell', near, null)).toEqual([near]);
});
