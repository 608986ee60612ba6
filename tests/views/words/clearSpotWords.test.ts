import { expect, test } from 'vitest';
import type { Finding } from '../../../src/report/report.ts';
import {
  BEST_FOUND,
  bestFoundWords,
  enoughWords,
  inTurnWords,
  nextForLeft,
  roomWords,
  searchingWords,
  spareSentence,
  spareWords,
  stayWords,
  whatToTry,
  whyNotWords,
} from '../../../src/views/words/clearSpotWords.ts';
import { nameOf } from '../../../src/views/words/nameOf.ts';
import { beyondStand, inDrum, nearPlayer, sample, snareRow } from './sampleLayout.ts';

const tries = (id: string) => {
  const mic = sample.mics.find((each) => each.id === id);
  if (!mic) throw new Error(`no mic ${id}`);
  return whatToTry(sample, mic);
};

test('a clip that has nowhere to go is pointed to stands, and a stand to a clip', () => {
  expect(tries('mic-rack-1')[0]).toMatch(/^Another mount: .*tripod boom/);
  expect(tries('mic-snare')[0]).toMatch(/^Another mount: .*rim clip/);
});

test('names classes that are smaller and can be held as the mic is', () => {
  const smaller = tries('mic-rack-1').find((text) => text.startsWith('A smaller class'));
  expect(smaller).toMatch(/clip/);
  expect(tries('mic-snare').join(' ')).not.toContain('oundary plate');
});

test('that smaller changes may exist is said once, for all of those that it holds for', () => {
  const [first = '', second = '', third = ''] = sample.mics.map(({ id }) => id);
  const words = (...unproven: readonly string[]) =>
    bestFoundWords([first, second, third], unproven, sample);
  expect(words()).toBe('');
  expect(words(first, second, third)).toBe('The smallest changes found; smaller ones may exist.');
  expect(bestFoundWords([first], [first], sample)).toBe(BEST_FOUND);
  const names = [second, third].map((mic) => nameOf(sample, mic));
  expect(words(third, second, 'mic-that-stays')).toBe(
    `${names.join(' and ')}: the smallest changes found; smaller ones may exist.`,
  );
  expect(words(third)).toBe(`${names[1]}: the smallest change found; a smaller one may exist.`);
});

test('what stays is said by what it is, and what was cleared by the others is not said', () => {
  const verdicts = { a: 'struck', b: 'tight', c: 'tight', d: 'clear' } as const;
  const rows = Object.entries(verdicts).map(([mic, verdict]) => ({
    ...snareRow(10, verdict),
    mic,
    verdict,
  }));
  const report = { clearances: rows, findings: [] };
  expect(stayWords(['a', 'b', 'c', 'd'], report)).toBe('1 mic stays struck, 2 mics stay tight');
  expect(stayWords(['b', 'c'], report)).toBe('2 mics stay tight');
  expect(stayWords(['d'], report)).toBe('');
  expect(stayWords(['c', 'd'], { ...report, findings: [inDrum('d')] })).toBe(
    '1 mic stays in the way, 1 mic stays tight',
  );
  expect(stayWords(['c', 'd'], { ...report, findings: [nearPlayer('d', 20)] })).toBe(
    '1 mic stays tight, 1 mic stays near the player',
  );
  expect(stayWords(['b', 'c'], { ...report, findings: [beyondStand('b')] })).toBe(
    "1 mic still won't hold, 1 mic stays tight",
  );
});

test('always says what else makes room', () => {
  for (const { id } of sample.mics) {
    expect(tries(id).slice(-2)).toEqual([
      'Move, raise or turn the piece that is in the way.',
      'Agree with the player on a lower stroke or a smaller margin.',
    ]);
  }
});

test('a mic near the player is not told to lower strokes, and one on a stand to take its base round', () => {
  const ways = (id: string) => {
    const mic = sample.mics.find((each) => each.id === id);
    if (!mic) throw new Error(`no mic ${id}`);
    return whatToTry(sample, mic, 'near-player');
  };
  for (const id of ['mic-snare', 'mic-rack-1']) {
    expect(ways(id).at(-1)).toBe('Agree with the player on a smaller margin.');
  }
  expect(ways('mic-snare').join(' ')).toContain('Its base on the other side');
  expect(ways('mic-rack-1').join(' ')).not.toContain('Its base');
});

test('how far the search has come, and why there is none', () => {
  const inches = { ...sample, units: 'in' } as const;
  const told = (beyond: number, layout = sample) => searchingWords('Snare mic', beyond, layout);
  expect(told(41.6)).toBe('Searching for a clear spot for Snare mic: nothing within 41 mm…');
  expect(told(9999, inches)).toBe(
    'Searching for a clear spot for Snare mic: nothing within 19.7 in…',
  );
  for (const beyond of [0, 0.4, 4.9]) {
    expect(told(beyond)).toBe('Searching for a clear spot for Snare mic…');
    expect(told(beyond, inches)).toBe(told(beyond));
  }
  for (const [title, reason] of Object.values(whyNotWords)) {
    expect(`${title}. ${reason}`).toMatch(/^N.*\.$/);
  }
});

test('what a clear spot leaves over the margin, and that little is just clear', () => {
  const { margin } = sample;
  const before = { clearances: [], findings: [] };
  expect(spareWords(snareRow(margin, 'clear'), sample, before)).toBe('0 mm to spare');
  const said = (over: number) => spareSentence(snareRow(margin + over, 'clear'), sample, before);
  expect(said(0)).toBe('Just clear: 0 mm to spare over the wanted clearance.');
  expect(said(9.7)).toBe('Just clear: 9 mm to spare over the wanted clearance.');
  expect(said(24)).toBe('24 mm to spare over the wanted clearance.');
  for (const row of [snareRow(margin - 1, 'tight'), snareRow(Number.POSITIVE_INFINITY, 'clear')]) {
    expect(spareWords(row, sample, before)).toBe('');
    expect(spareSentence(row, sample, before)).toBe('');
  }
});

test('of a mic that is led away from the player its room from what moves is not the whole of what it has to spare', () => {
  const row = snareRow(sample.margin + 150, 'clear');
  for (const finding of [
    nearPlayer('mic-snare', 20),
    { ...inDrum('mic-snare'), code: 'mic-in-player' as const },
  ]) {
    const before = { clearances: [], findings: [finding] };
    expect(spareWords(row, sample, before)).toBe('at least 50 mm from the player');
    expect(spareSentence(row, sample, before)).toBe(
      'At least 50 mm from the player; from what moves 150 mm to spare.',
    );
    const still = snareRow(Number.POSITIVE_INFINITY, 'clear');
    expect(spareSentence(still, sample, before)).toBe('At least 50 mm from the player.');
    expect(spareWords(snareRow(20, 'tight'), sample, before)).toBe('');
  }
});

test('the verdict with its number', () => {
  const open = { layout: sample, report: { clearances: [], findings: [] } };
  expect(roomWords(snareRow(-12.2, 'struck'), open)).toBe('Struck, −13 mm');
});

test('which mic of how many is looked for, and how many have a spot', () => {
  const said = (done: number, found: number, now = 'Snare mic', isAgain = false) =>
    inTurnWords(done, 11, { now, isAgain, found });
  expect(said(0, 0)).toBe('Looking for clear spots: 0 of 11 mics done. Now Snare mic…');
  expect(said(3, 2)).toBe(
    'Looking for clear spots: 3 of 11 mics done, 2 with a spot. Now Snare mic…',
  );
  expect(said(9, 2, 'Snare mic', true)).toBe(
    'Looking for clear spots: 9 of 11 mics done, 2 with a spot. Now Snare mic again…',
  );
  expect(said(11, 0, '')).toBe(
    'Looking for clear spots: 11 of 11 mics done, none with a spot. Summing up…',
  );
});

test('rule N7: what would be room enough is never more than what was seen, and no more than now is said so', () => {
  const said = (most: number | undefined, clearance = 62) =>
    enoughWords(
      most === undefined ? {} : { most },
      { mic: 'mic-snare', clearance },
      { layout: sample, report: { clearances: [], findings: [] } },
    );
  expect(said(142.9)).toBe(
    'The most room seen within its reach is 142 mm: with a wanted clearance of 142 mm or less (in Player) it has a clear spot.',
  );
  expect(said(142)).toBe(said(142.9));
  expect(said(143)).not.toBe(said(142.9));
  expect(said(62)).toBe('No place seen within its reach has more room.');
  expect(said(-3, -40)).toBe('No place seen within its reach keeps off what moves and the player.');
  expect(said(undefined)).toBe('');
});

test('rule N7: room from what moves is none where a mic stands in a drum, and no more than there is from the player', () => {
  const said = (most: number, finding: Finding) =>
    enoughWords(
      { most },
      { mic: 'mic-snare', clearance: 300 },
      { layout: sample, report: { clearances: [], findings: [finding] } },
    );
  expect(said(30, inDrum('mic-snare'))).toContain('of 30 mm or less');
  expect(said(30, inDrum('mic-rack-1'))).toBe('No place seen within its reach has more room.');
  expect(said(30, nearPlayer('mic-snare', 20.5))).toContain('of 30 mm or less');
  expect(said(20, nearPlayer('mic-snare', 20.5))).toBe(
    'No place seen within its reach has more room.',
  );
});

test('every mic that stays has a next step by what holds it', () => {
  const next = (id: string, why: 'none-found' | 'not-looked' = 'none-found') => {
    const mic = sample.mics.find((each) => each.id === id);
    if (!mic) throw new Error(`no mic ${id}`);
    return nextForLeft({ why }, mic);
  };
  expect(next('mic-rack-1')).toBe('Hold it by a stand, or move what is in the way.');
  expect(next('mic-snare')).toBe('Move its stand, or move what is in the way.');
  expect(next('mic-kick-plate')).toBe('Lay it elsewhere, or move what is in the way.');
  expect(next('mic-snare', 'not-looked')).toBe('Look again for it alone.');
});
