import { expect, test } from 'vitest';
import {
  findMicClass,
  isBuiltInMicClass,
  MIC_CLASSES,
  usualMounts,
} from '../../../src/layout/catalogue/micClasses.ts';
import { micClassSchema } from '../../../src/layout/mics/micClass.ts';

test.each(MIC_CLASSES)('$id is a class that a layout may hold', (micClass) => {
  expect(micClassSchema.safeParse(micClass).success).toBe(true);
  expect(usualMounts(micClass).length).toBeGreaterThan(0);
  expect(findMicClass({ ownClasses: [] }, micClass.id)).toBe(micClass);
});

// Lengths and diameters of bodies without connector, common practice, from memory.
test.each([
  ['compact-dynamic', [40, 120], [20, 45]],
  ['kick-dynamic', [115, 190], [60, 115]],
  ['pencil-condenser', [100, 170], [19, 24]],
  ['side-condenser', [150, 215], [45, 60]],
  ['mini-clip', [40, 120], [20, 45]],
] as const)('%s is as large as its class usually is', (id, [shortest, longest], [thin, thick]) => {
  const { length, diameter } = MIC_CLASSES.find((entry) => entry.id === id) ?? {};
  expect(length).toBeGreaterThanOrEqual(shortest);
  expect(length).toBeLessThanOrEqual(longest);
  expect(diameter).toBeGreaterThanOrEqual(thin);
  expect(diameter).toBeLessThanOrEqual(thick);
});

test('dynamic and ribbon classes ask for no phantom power, condensers do', () => {
  for (const { type, phantom } of MIC_CLASSES) {
    expect(phantom).toBe(type === 'condenser' || type === 'boundary');
  }
});

test('the ribbon is a figure-8 that listens from its side', () => {
  expect(findMicClass({ ownClasses: [] }, 'ribbon')).toMatchObject({
    patternA: 0,
    address: 'side',
    type: 'ribbon',
  });
});

test('an own class comes first, and an unknown id is no class', () => {
  const own = { ...MIC_CLASSES[0], id: 'mine', name: 'Mine' };
  const layout = { ownClasses: [micClassSchema.parse(own)] };
  expect(findMicClass(layout, 'mine')?.name).toBe('Mine');
  expect(findMicClass(layout, 'nobody')).toBeUndefined();
  expect([isBuiltInMicClass('mine'), isBuiltInMicClass('ribbon')]).toEqual([false, true]);
});

test('a boundary class of the user goes on plates, any other on stands and clips', () => {
  const own = micClassSchema.parse({ ...MIC_CLASSES[0], id: 'mine' });
  expect(usualMounts({ ...own, type: 'boundary' })).toEqual(['plateInKick', 'plateOnDeck']);
  expect(usualMounts(own)).toContain('clip');
});
