import { expect, test } from 'vitest';
import type { MovedSound } from '../../../../src/report/sound.ts';
import { movedWords } from '../../../../src/views/sound/words/movedWords.ts';
import { kit } from '../sampleSound.ts';

const said = (change: Partial<MovedSound>) =>
  movedWords(
    { piece: 'snare', level: -1.21, isolation: -0.84, isOneOfSeveral: false, ...change },
    kit,
  );

test('what another place costs in sound: its own level, and how well it is kept from the rest', () => {
  expect(said({})).toBe('Snare: 1.2 dB quieter, isolation 0.8 dB less');
  expect(said({ level: 2, isolation: 0.3 })).toBe('Snare: 2.0 dB louder, isolation 0.3 dB more');
});

test('what would be written as 0.0 dB is no change', () => {
  expect(said({ level: 0.04, isolation: -0.04 })).toBe('Snare: as loud as now, isolation the same');
});

test('an overhead has its largest change told, and no isolation', () => {
  const overhead = { isolation: null, isOneOfSeveral: true };
  expect(said({ ...overhead, level: 0.6 })).toBe(
    'Snare: 0.6 dB louder, the largest change of what it hears',
  );
  expect(said({ ...overhead, level: 0 })).toBe('all that it hears as loud as now');
  expect(said({ isolation: null, level: -0.6 })).toBe('Snare: 0.6 dB quieter');
});
