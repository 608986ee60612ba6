import { expect, test } from 'vitest';
import { STAND_CLASSES, standSpec } from '../../../src/layout/catalogue/standClasses.ts';
import { standClassField } from '../../../src/layout/mics/mount.ts';

test('every class of the layout has its sizes, once', () => {
  expect(STAND_CLASSES.map(({ standClass }) => standClass)).toEqual(standClassField.options);
  for (const spec of STAND_CLASSES) expect(standSpec(spec.standClass)).toBe(spec);
});

test.each(STAND_CLASSES)('$standClass: ranges are ranges, weights are weights', (spec) => {
  expect(spec.mastMin).toBeLessThan(spec.mastMax);
  expect(spec.boomMin).toBeLessThanOrEqual(spec.boomMax);
  expect(spec.hubRadius).toBeLessThanOrEqual(spec.footRadius);
  expect(spec.legHeight).toBeLessThan(spec.mastMin);
  expect(spec.baseMass).toBeGreaterThan(spec.boomMass + spec.counterweightMass);
});

test('a round base is a disc: nothing passes under it', () => {
  for (const { base, hubRadius, footRadius } of STAND_CLASSES) {
    expect(hubRadius === footRadius).toBe(base === 'round');
  }
});

// Plan radii, heights and booms, common practice, from memory.
test.each([
  ['tripodLow', [200, 280], [400, 650], [400, 500]],
  ['tripodTall', [300, 360], [900, 1600], [700, 860]],
] as const)('%s is as large as its class usually is', (standClass, feet, mast, boom) => {
  const spec = standSpec(standClass);
  expect(spec.footRadius).toBeGreaterThanOrEqual(feet[0]);
  expect(spec.footRadius).toBeLessThanOrEqual(feet[1]);
  expect([spec.mastMin, spec.mastMax]).toEqual(mast);
  expect(spec.boomMax).toBeGreaterThanOrEqual(boom[0]);
  expect(spec.boomMax).toBeLessThanOrEqual(boom[1]);
});

test('only the straight stand has no boom', () => {
  const without = STAND_CLASSES.filter(({ boomMax }) => boomMax === 0);
  expect(without.map(({ standClass }) => standClass)).toEqual(['roundStraight']);
});
