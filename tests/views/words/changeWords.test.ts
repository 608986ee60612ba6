import { expect, test } from 'vitest';
import type { ThingChange } from '../../../src/report/compareKits.ts';
import {
  differenceWords,
  kitChangeLines,
  thingChangeWords,
} from '../../../src/views/words/changeWords.ts';

const change = (part: Partial<ThingChange>): ThingChange => ({
  id: 'mic-snare',
  name: 'snare mic',
  change: 'changed',
  moved: 0,
  turned: 0,
  base: 0,
  fields: [{ path: 'mount.tip.x', before: 1, after: 2 }],
  ...part,
});

test('how far, by how much, and what else of a thing is not as it was', () => {
  expect(thingChangeWords(change({ moved: 32.4, turned: 4.04 }), 'mm')).toBe(
    'moved 32 mm, turned 4°',
  );
  expect(thingChangeWords(change({ moved: 0.2 }), 'mm')).toBe('moved less than 1 mm');
  expect(thingChangeWords(change({ moved: 12, fields: [] }), 'mm')).toBe(
    'moved 12 mm, with what carries it',
  );
  expect(thingChangeWords(change({ base: 25 }), 'mm')).toBe('its stand moved 25 mm');
  expect(thingChangeWords(change({ change: 'gone' }), 'mm')).toBe('is gone');
  expect(
    thingChangeWords(change({ fields: [{ path: 'diameter', before: 330, after: 356 }] }), 'mm'),
  ).toBe('diameter 330 mm → 356 mm');
});

test('fields of the player by name, and a line for each thing', () => {
  expect(differenceWords({ path: 'body.kneeHeightSitting', before: 1, after: 2 }, 'mm')).toBe(
    'knee height sitting',
  );
  expect(
    kitChangeLines(
      {
        player: [{ path: 'stature', before: 1750, after: 1820 }],
        mics: [change({ moved: 5 })],
        pieces: [change({ id: 'snare', name: 'snare', change: 'new' })],
      },
      { units: 'mm' },
    ),
  ).toEqual(['Player: stature 1750 mm → 1820 mm', 'Snare mic: moved 5 mm', 'Snare: is new']);
});
