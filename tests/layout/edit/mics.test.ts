import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import {
  addMic,
  aimMic,
  changeClip,
  deleteMic,
  duplicateMic,
  moveMic,
  moveMicBase,
  moveMicTip,
  setHears,
  setInput,
  setMast,
  setMicClass,
  setPlateDepth,
  setStandClass,
  turnMicStand,
} from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Mic } from '../../../src/layout/mics/mic.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';
import { randomKit } from '../../support/randomKit.ts';

const kit = fivePieceTwoRacks('kit');
const micOf = (layout: Layout, id: string): Mic => {
  const found = layout.mics.find((mic) => mic.id === id);
  if (!found) throw new Error(`no mic ${id}`);
  return found;
};
const mountOf = (layout: Layout, id: string) => micOf(layout, id).mount;
const coordinate = fc.integer({ min: -900, max: 900 });

describe('a mic on a stand', () => {
  test('the base stays when the tip is moved, and the other way round', () => {
    fc.assert(
      fc.property(coordinate, coordinate, (x, y) => {
        const before = mountOf(kit, 'mic-snare');
        if (before.kind !== 'stand') throw new Error('the snare mic stands on a stand');
        expect(mountOf(moveMicTip(kit, 'mic-snare', { x, y, z: 800 }), 'mic-snare')).toEqual({
          ...before,
          tip: { x, y, z: 800 },
        });
        expect(mountOf(moveMicBase(kit, 'mic-snare', { x, y }), 'mic-snare')).toEqual({
          ...before,
          base: { x, y },
        });
      }),
      { numRuns: 30 },
    );
  });

  test('moved as a whole and back it is where it was', () => {
    const moved = moveMic(kit, 'mic-snare', { x: 35, y: -80 });
    expect(mountOf(moved, 'mic-snare')).toMatchObject({
      base: { x: -235, y: 810 },
      tip: { x: -106, y: 484, z: 700 },
    });
    expect(moveMic(moved, 'mic-snare', { x: -35, y: 80 })).toEqual(kit);
  });

  test('class of stand, feet, mast and aim change alone', () => {
    const before = mountOf(kit, 'mic-snare');
    const changed = (layout: Layout) => mountOf(layout, 'mic-snare');
    expect(changed(setStandClass(kit, 'mic-snare', 'roundBoom'))).toEqual({
      ...before,
      stand: 'roundBoom',
    });
    expect(changed(turnMicStand(kit, 'mic-snare', -30))).toEqual({ ...before, turn: 330 });
    expect(changed(setMast(kit, 'mic-snare', 520))).toEqual({ ...before, mast: 520 });
    expect(changed(aimMic(kit, 'mic-snare', { azimuth: 361, pitch: -95 }))).toEqual({
      ...before,
      azimuth: 1,
      pitch: -90,
    });
  });
});

describe('a mic on a clip', () => {
  test('dragged to where its tip already is, it stays', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        for (const mic of layout.mics) {
          if (mic.mount.kind !== 'clip') continue;
          const { tip } = placeMic(mic, layout);
          const moved = moveMicTip(layout, mic.id, tip);
          const back = placeMic(micOf(moved, mic.id), moved).tip;
          for (const axis of ['x', 'y', 'z'] as const) expect(back[axis]).toBeCloseTo(tip[axis], 2);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('dragged on the plan, its tip comes to the spot and keeps its height above the head', () => {
    const moved = moveMicTip(kit, 'mic-rack-1', { x: 60, y: 880 });
    const { tip } = placeMic(micOf(moved, 'mic-rack-1'), moved);
    expect([tip.x, tip.y].map((c) => Math.round(c * 1000) / 1000)).toEqual([60, 880]);
    expect(mountOf(moved, 'mic-rack-1')).toMatchObject({ height: 45, pitch: 35, drum: 'rack-1' });
  });

  test('angle, reach, height and pitch stop at their limits', () => {
    const patch = { angle: 725, reach: 999, height: 0, pitch: 200 };
    expect(mountOf(changeClip(kit, 'mic-rack-1', patch), 'mic-rack-1')).toMatchObject({
      angle: 5,
      reach: 300,
      height: 5,
      pitch: 90,
    });
  });

  test('it goes to another drum, not to a cymbal', () => {
    const other = changeClip(kit, 'mic-rack-1', { drum: 'rack-2' });
    expect(mountOf(other, 'mic-rack-1')).toMatchObject({ drum: 'rack-2' });
    expect(changeClip(kit, 'mic-rack-1', { drum: 'ride' })).toBe(kit);
  });
});

test('a plate in a kick has a depth and nothing else to move', () => {
  expect(mountOf(setPlateDepth(kit, 'mic-kick-plate', 150), 'mic-kick-plate')).toMatchObject({
    depth: 150,
  });
  expect(moveMicTip(kit, 'mic-kick-plate', { x: 0, y: 0, z: 0 })).toBe(kit);
  expect(moveMic(kit, 'mic-kick-plate', { x: 100, y: 0 })).toBe(kit);
});

describe('class, hearing and input', () => {
  test('only a known class is taken', () => {
    expect(micOf(setMicClass(kit, 'mic-snare', 'mini-clip'), 'mic-snare').micClass).toBe(
      'mini-clip',
    );
    expect(setMicClass(kit, 'mic-snare', 'nobody')).toBe(kit);
  });

  test('only pieces that are there are heard, each once, in the order given', () => {
    const heard = setHears(kit, 'mic-snare', ['ride', 'nobody', 'snare', 'ride']);
    expect(micOf(heard, 'mic-snare').hears).toEqual(['ride', 'snare']);
  });

  test('an input is a whole number from 1, or none', () => {
    expect(micOf(setInput(kit, 'mic-snare', null), 'mic-snare').input).toBeNull();
    expect(micOf(setInput(kit, 'mic-snare', 2.6), 'mic-snare').input).toBe(3);
    expect(micOf(setInput(kit, 'mic-snare', 0), 'mic-snare').input).toBe(1);
  });
});

describe('adding, copying and deleting', () => {
  test('an added mic gets an id of its own and is deleted without a trace', () => {
    const added = addMic(kit, micOf(kit, 'mic-snare'));
    expect(added.mics.at(-1)?.id).toBe('mic-snare-2');
    expect(deleteMic(added, 'mic-snare-2')).toEqual(kit);
  });

  test('a copy is not plugged and stands beside the first', () => {
    const copies = duplicateMic(duplicateMic(kit, 'mic-rack-1'), 'mic-snare');
    expect(micOf(copies, 'mic-rack-3')).toMatchObject({ name: 'Rack 3', input: null });
    expect(mountOf(copies, 'mic-rack-3')).toMatchObject({ kind: 'clip', angle: 125 });
    expect(mountOf(copies, 'mic-snare-2')).toMatchObject({ base: { x: -120, y: 890 } });
  });

  test('mics end at 64', () => {
    let layout = kit;
    for (let n = 0; n < 80; n += 1) layout = addMic(layout, micOf(kit, 'mic-snare'));
    expect(layout.mics).toHaveLength(64);
  });
});
