import { expect, test } from 'vitest';
import { aimMic, changeClip, moveMicTip, setMast } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Mic } from '../../../src/layout/mics/mic.ts';
import { moveRows } from '../../../src/views/words/moveRows.ts';
import { sample } from './sampleLayout.ts';

function micIn(layout: Layout, id: string): Mic {
  const found = layout.mics.find((each) => each.id === id);
  if (!found) throw new Error(`no mic ${id}`);
  return found;
}

const rows = (after: Layout, id: string, unit: 'mm' | 'in' = 'mm') =>
  moveRows(micIn(sample, id), micIn(after, id), unit).map(({ what, from, to, by }) =>
    [what, from, to, by].join(' | '),
  );

test('a clip: round the rim the short way, height, reach and pitch; only what is another', () => {
  const start = changeClip(sample, 'mic-rack-1', { angle: 350, height: 45, reach: 30 });
  const after = changeClip(start, 'mic-rack-1', { angle: 12.5, height: 60 });
  expect(moveRows(micIn(start, 'mic-rack-1'), micIn(after, 'mic-rack-1'), 'mm')).toEqual([
    {
      what: 'Round the rim',
      from: '350°, about half past 3',
      to: '12.5°, about half past 2',
      by: '+22.5°',
      said: 'round the rim 350°, then 12.5° (about half past 2)',
    },
    {
      what: 'Above the head',
      from: '45 mm',
      to: '60 mm',
      by: '+15 mm',
      said: 'above the head 45 mm, then 60 mm',
    },
  ]);
});

test('a stand: tip, aim and mast; the base that stays is not named', () => {
  const { mount } = micIn(sample, 'mic-snare');
  if (mount.kind !== 'stand') throw new Error('the snare mic of the sample is on a stand');
  const { tip, pitch } = mount;
  const tipped = moveMicTip(sample, 'mic-snare', { x: tip.x - 40, y: tip.y, z: tip.z + 25.4 });
  const moved = setMast(aimMic(tipped, 'mic-snare', { pitch: pitch - 5 }), 'mic-snare', 700);
  const shown = rows(moved, 'mic-snare');
  expect(shown.map((row) => row.split(' | ').at(0))).toEqual([
    'Tip, right of the throne',
    'Height of the tip',
    'Points down by',
    'Height of the mast',
  ]);
  expect(shown[0]).toMatch(/ \| −40 mm$/);
  expect(shown[1]).toMatch(/ \| \+25 mm$/);
  expect(shown[2]).toMatch(/ \| \+5°$/);
  expect(shown[3]).toBe('Height of the mast | follows | 700 mm | ');
  expect(rows(moved, 'mic-snare', 'in')[1]).toMatch(/ \| \+1 in$/);
});

test('a line says what was and then is, never the change alone', () => {
  const { mount } = micIn(sample, 'mic-snare');
  if (mount.kind !== 'stand') throw new Error('the snare mic of the sample is on a stand');
  const start = aimMic(sample, 'mic-snare', { pitch: -70, azimuth: 100 });
  const said = (after: Layout) =>
    moveRows(micIn(start, 'mic-snare'), micIn(after, 'mic-snare'), 'mm').map((each) => each.said);
  expect(said(aimMic(start, 'mic-snare', { pitch: -36.2, azimuth: 95.7 }))).toEqual([
    "points toward 100°, then 95.7° (about 12 o'clock)",
    'points 70° down, then 36.2° down',
  ]);
  expect(said(aimMic(start, 'mic-snare', { pitch: 0 }))).toEqual(['points 70° down, then level']);
  expect(said(aimMic(start, 'mic-snare', { pitch: 10 }))).toEqual(['points 70° down, then 10° up']);
  const clip = changeClip(sample, 'mic-rack-1', { pitch: 40 });
  const steeper = changeClip(clip, 'mic-rack-1', { pitch: 55 });
  expect(moveRows(micIn(clip, 'mic-rack-1'), micIn(steeper, 'mic-rack-1'), 'mm')).toMatchObject([
    { what: 'Points down by', by: '+15°', said: 'points 40° down, then 55° down' },
  ]);
});

test('nothing that is another is no row', () => {
  expect(rows(sample, 'mic-snare')).toEqual([]);
  expect(rows(sample, 'mic-kick-plate')).toEqual([]);
});

test('another kind of mount is named', () => {
  const clip = micIn(sample, 'mic-rack-1');
  const held = { ...clip, mount: micIn(sample, 'mic-snare').mount };
  expect(moveRows(clip, held, 'mm')).toMatchObject([{ what: 'Held by', from: 'rubber rim clip' }]);
});
