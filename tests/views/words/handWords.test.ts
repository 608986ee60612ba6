import { expect, test } from 'vitest';
import { playerFacts } from '../../../src/report/playerFacts.ts';
import { acrossWords, handsWords, playedByWords } from '../../../src/views/words/handWords.ts';
import { sample } from './sampleLayout.ts';

const rows = (player: Partial<typeof sample.player>) => {
  const layout = { ...sample, player: { ...sample.player, ...player } };
  return playedByWords(playerFacts(layout).playedBy, layout).map(
    ({ hands, pieces }) => `${hands}: ${pieces}`,
  );
};

test('says which hand the lead hand is', () => {
  expect(handsWords('lead', { leadHand: 'left' })).toBe('Lead hand (left)');
  expect(handsWords('both', { leadHand: 'left' })).toBe('Both hands');
});

test('a row for each that plays anything, by name', () => {
  expect(rows({})).toEqual([
    'Both hands: Snare, Rack tom 1, Rack tom 2, Floor tom, Hi-hat, Crash 1 and Crash 2',
    'Right hand alone: Ride',
  ]);
});

test('says what another lead hand and another way with the hi-hat change', () => {
  expect(rows({ leadHand: 'left', hiHat: 'open' })).toEqual([
    'Both hands: Snare, Rack tom 1, Rack tom 2, Floor tom, Crash 1 and Crash 2',
    'Left hand alone: Hi-hat and Ride',
  ]);
});

test('a hand that plays alone on the other side is told, one on its own side is not', () => {
  const across = (player: Partial<typeof sample.player>) => {
    const layout = { ...sample, player: { ...sample.player, ...player } };
    return acrossWords(playerFacts(layout).playedBy, layout);
  };
  expect(across({})).toBe('');
  expect(across({ hiHat: 'open' })).toBe('');
  expect(across({ hiHat: 'crossed' })).toBe('The right hand to Hi-hat');
  expect(across({ leadHand: 'left', hiHat: 'open' })).toBe('The left hand to Ride');
});

test('a piece that no hand plays is named', () => {
  const playedBy = [{ piece: 'snare', hands: [] }];
  expect(playedByWords(playedBy, sample)).toEqual([{ hands: 'No hand', pieces: 'Snare' }]);
});
