import fc from 'fast-check';
import { expect, test } from 'vitest';
import { aimMic, changeClip, moveMicTip, setMast } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Mic } from '../../../src/layout/mics/mic.ts';
import { cosDeg, sinDeg } from '../../../src/units/angle.ts';
import { moveToDo } from '../../../src/views/words/moveToDo.ts';
import { sample } from './sampleLayout.ts';

function micIn(layout: Layout, id: string): Mic {
  const found = layout.mics.find((each) => each.id === id);
  if (!found) throw new Error(`no mic ${id}`);
  return found;
}

const toDo = (before: Layout, after: Layout, id: string, unit: 'mm' | 'in' = 'mm'): string =>
  moveToDo(micIn(before, id), micIn(after, id), unit);

test('a clip: which way round, how much higher, how far in, how tipped, in the order of the hands', () => {
  const start = changeClip(sample, 'mic-rack-1', { angle: 350, height: 45, reach: 30, pitch: 40 });
  const to = (clip: Parameters<typeof changeClip>[2]) =>
    toDo(start, changeClip(start, 'mic-rack-1', clip), 'mic-rack-1');
  expect(to({ angle: 338, height: 60 })).toBe(
    'Turn it 12° clockwise round the rim (seen from above) and set it 15 mm higher.',
  );
  expect(to({ angle: 10, reach: 22.8, pitch: 35 })).toBe(
    'Turn it 20° anticlockwise round the rim (seen from above), draw it 7 mm back toward the rim and tilt its front 5° up.',
  );
  expect(to({ reach: 40, pitch: 45, height: 44.7 })).toBe(
    'Set it less than 1 mm lower, push it 10 mm farther in over the head and tilt its front 5° down.',
  );
  expect(to({})).toBe('');
});

test('anticlockwise is as one sees it on the plan from above: x to the right, y up', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 359 }),
      fc.integer({ min: -179, max: 179 }),
      (from, by) => {
        fc.pre(by !== 0);
        const start = changeClip(sample, 'mic-rack-1', { angle: from });
        const to = (from + by + 360) % 360;
        const said = toDo(start, changeClip(start, 'mic-rack-1', { angle: to }), 'mic-rack-1');
        const cross = cosDeg(from) * sinDeg(to) - sinDeg(from) * cosDeg(to);
        expect(said.includes('anticlockwise')).toBe(cross > 0);
      },
    ),
  );
});

test("a stand: the player's right and left, toward whom, higher, tipped, and the mast", () => {
  const { mount } = micIn(sample, 'mic-snare');
  if (mount.kind !== 'stand') throw new Error('the snare mic of the sample is on a stand');
  const { tip, pitch } = mount;
  const moved = moveMicTip(sample, 'mic-snare', { x: tip.x - 40, y: tip.y + 12, z: tip.z + 25.4 });
  expect(toDo(sample, moved, 'mic-snare')).toBe(
    "Move the mic 40 mm to the player's left and 12 mm toward the audience and set it 25 mm higher.",
  );
  expect(toDo(moved, sample, 'mic-snare', 'in')).toBe(
    "Move the mic 1.6 in to the player's right and 0.5 in toward the player and set it 1 in lower.",
  );
  const masted = setMast(aimMic(sample, 'mic-snare', { pitch: pitch - 5 }), 'mic-snare', 700);
  expect(toDo(sample, masted, 'mic-snare')).toBe(
    'Set the mast 700 mm high and tilt its front 5° down.',
  );
});

test('another mount is named', () => {
  const clip = micIn(sample, 'mic-rack-1');
  const held = { ...clip, mount: micIn(sample, 'mic-snare').mount };
  expect(moveToDo(clip, held, 'mm')).toMatch(/^Hold it by .*(tripod|round base)/);
});
