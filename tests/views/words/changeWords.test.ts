import { expect, test } from 'vitest';
import type { MountChoice } from '../../../src/layout/catalogue/micClasses.ts';
import { moveMic } from '../../../src/layout/edit/mics.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import { remount } from '../../../src/layout/edit/remount.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { compareKits, placedKit, type ThingChange } from '../../../src/report/compareKits.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import {
  differenceWords,
  kitChangeLines,
  thingChangeWords,
} from '../../../src/views/words/changeWords.ts';
import { handNames, hiHatNames } from '../../../src/views/words/handWords.ts';
import { inSentence } from '../../../src/views/words/nameOf.ts';
import { sample } from './sampleLayout.ts';

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

const linesOf = (before: Layout, after: Layout): readonly string[] =>
  kitChangeLines(compareKits(placedKit(before), placedKit(after)), after);

/** The layout with a mic on another mount, about where it was. */
function onMount(layout: Layout, id: string, choice: MountChoice): Layout {
  const placed = buildRig(layout).mics.find(({ mic }) => mic.id === id);
  if (placed === undefined) throw new Error(`${id} is placed`);
  return remount(layout, id, choice, placed);
}

test('how far, by how much, and what else of a thing is not as it was', () => {
  expect(thingChangeWords(change({ moved: 32.4, turned: 4.04 }), 'mm')).toBe(
    'moved 32 mm, turned 4°',
  );
  expect(thingChangeWords(change({ moved: 0.2 }), 'mm')).toBe('moved less than 1 mm');
  expect(thingChangeWords(change({ moved: 1.2 }), 'in')).toBe('moved less than 0.1 in');
  expect(thingChangeWords(change({ moved: 12, fields: [] }), 'mm')).toBe(
    'moved 12 mm, with what carries it',
  );
  expect(thingChangeWords(change({ base: 25 }), 'mm')).toBe('its stand moved 25 mm');
  expect(thingChangeWords(change({ change: 'gone' }), 'mm')).toBe('is gone');
  expect(
    thingChangeWords(change({ fields: [{ path: 'diameter', before: 330, after: 356 }] }), 'mm'),
  ).toBe('diameter 330 mm → 356 mm');
});

test('hands and the way with the hi-hat are called in a change as they are where they are chosen', () => {
  for (const [path, names] of [
    ['hands', handNames],
    ['hiHat', hiHatNames],
  ] as const) {
    for (const [before, name] of Object.entries(names)) {
      const words = differenceWords({ path, before, after: before }, 'mm');
      expect(words).toMatch(new RegExp(` ${inSentence(name)} → ${inSentence(name)}$`));
    }
  }
  expect(differenceWords({ path: 'hands', before: 'both', after: 'left' }, 'mm')).toBe(
    'played by both hands → left hand',
  );
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
      { units: 'mm', pieces: [], ownClasses: [] },
    ),
  ).toEqual(['Player: stature 1750 mm → 1820 mm', 'Snare mic: moved 5 mm', 'Snare: is new']);
});

test('what a mic is held by is told in the words of the trade, not of the file', () => {
  const layout = sample;
  const mic = layout.mics.find(({ mount }) => mount.kind === 'clip');
  if (mic === undefined) throw new Error('the sample has a clip');
  const onStand = onMount(layout, mic.id, 'tripodTall');
  const lines = linesOf(layout, onStand);
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(
    /^\w+.*: moved from a (rubber|metal) rim clip on the [a-z0-9 ]+ to a tall tripod boom(, by \d+ mm)?(, turned [\d.]+°)?$/,
  );
  const lower = linesOf(onStand, onMount(onStand, mic.id, 'tripodMedium'));
  expect(lower[0]).toContain('from a tall tripod boom to a medium tripod boom');
  const gone = linesOf(layout, deletePiece(layout, 'snare'));
  expect(gone.join('\n')).toContain('is gone');
});

test('no line of a change has a name of the file in it', () => {
  const names = /[a-z][A-Z]|undefined|\bnone\b.*→|tripod[A-Z]/;
  for (const from of sample.mics) {
    for (const choice of ['clip', 'tripodLow', 'roundBoom', 'plateOnDeck'] as const) {
      for (const line of linesOf(sample, onMount(sample, from.id, choice))) {
        expect(line).not.toMatch(names);
      }
    }
  }
});

test('a mic is told from the drum of the same name where both have changed', () => {
  const mic = sample.mics.find(({ id }) => id === 'mic-snare');
  if (mic?.name !== 'Snare') throw new Error('expected a mic with its drum’s name');
  const moved = moveMic(movePiece(sample, 'snare', { x: 400, y: 500 }), mic.id, { x: 12, y: 0 });
  const names = linesOf(sample, moved).map((line) => line.replace(/:.*/, ''));
  expect(names).toContain('Snare mic');
  expect(names).toContain('Snare');
  expect(new Set(names).size).toBe(names.length);
});
