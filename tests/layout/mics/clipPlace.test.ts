import fc from 'fast-check';
import { expect, test } from 'vitest';
import { usualSnare } from '../../../src/layout/catalogue/defaults/usualPieces.ts';
import { clipPlaceAt } from '../../../src/layout/mics/clipPlace.ts';
import type { ClipMount } from '../../../src/layout/mics/mount.ts';
import { clipPose } from '../../../src/rig/mics/clipMic.ts';

test('it undoes the place that a clip gives its tip, on any drum', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const drums = fc.record({
    tilt: number(0, 80),
    tiltToward: number(0, 360),
    x: number(-500, 500),
  });
  const places = fc.record({
    angle: number(0, 359.9),
    reach: number(-60, 150),
    height: number(5, 300),
  });
  fc.assert(
    fc.property(drums, places, (shape, place) => {
      const drum = { ...usualSnare('snare'), ...shape };
      const mount: ClipMount = {
        kind: 'clip',
        drum: 'snare',
        material: 'rubber',
        pitch: 30,
        ...place,
      };
      const { tip } = clipPose(mount, drum);
      for (const point of [tip, { x: tip.x, y: tip.y }]) {
        const found = clipPlaceAt(drum, point, place.height);
        const again = clipPose({ ...mount, ...found }, drum).tip;
        expect(found.reach).toBeCloseTo(place.reach, 4);
        expect(found.height).toBeCloseTo(place.height, 4);
        expect(again.x).toBeCloseTo(tip.x, 4);
        expect(again.y).toBeCloseTo(tip.y, 4);
      }
    }),
  );
});

test('on a level drum it can be read off the plan', () => {
  const drum = { ...usualSnare('snare'), x: 0, y: 0, z: 600, tilt: 0, diameter: 400 };
  expect(clipPlaceAt(drum, { x: 0, y: 170, z: 640 }, 0)).toEqual({
    angle: 90,
    reach: 30,
    height: 40,
  });
});
