import { describe, expect, test } from 'vitest';
import { fourPieceJazz } from '../../../src/layout/catalogue/kits/fourPieceJazz.ts';
import { setMicClass } from '../../../src/layout/edit/mics.ts';
import {
  addOwnClass,
  changeOwnClass,
  removeOwnClass,
} from '../../../src/layout/edit/ownClasses.ts';
import type { MicClass } from '../../../src/layout/mics/micClass.ts';

const kit = fourPieceJazz('kit');
const mine: MicClass = {
  id: 'mine',
  name: 'Mine',
  length: 90,
  diameter: 40,
  address: 'end',
  patternA: 0.5,
  type: 'dynamic',
  phantom: false,
  connector: 'straight',
  mass: 0.2,
};

test('an own class is added and taken away again without a trace', () => {
  const added = addOwnClass(kit, mine);
  expect(added.ownClasses).toEqual([mine]);
  expect(removeOwnClass(added, 'mine')).toEqual(kit);
});

test('it never takes the id of a built-in class, nor of anything in the layout', () => {
  expect(addOwnClass(kit, { ...mine, id: 'ribbon' }).ownClasses[0]?.id).toBe('own-ribbon');
  expect(addOwnClass(kit, { ...mine, id: 'snare' }).ownClasses[0]?.id).toBe('snare-2');
});

test('a change stays inside the limits, and an impossible class is not added', () => {
  const added = addOwnClass(kit, mine);
  expect(changeOwnClass(added, 'mine', { length: 5000 }).ownClasses[0]?.length).toBe(400);
  expect(changeOwnClass(added, 'nobody', { length: 50 })).toBe(added);
  expect(addOwnClass(kit, { ...mine, length: 5000 })).toBe(kit);
});

describe('mics of a removed class take the built-in class most like it', () => {
  test.each([
    [{ type: 'dynamic', length: 90 }, 'compact-dynamic'],
    [{ type: 'dynamic', length: 150 }, 'short-dynamic'],
    [{ type: 'condenser', address: 'side' }, 'side-condenser'],
    [{ type: 'condenser', address: 'end' }, 'pencil-condenser'],
    [{ type: 'ribbon' }, 'ribbon'],
    [{ type: 'boundary' }, 'boundary-plate'],
  ] as const)('%j', (shape, builtIn) => {
    const used = setMicClass(addOwnClass(kit, { ...mine, ...shape }), 'mic-snare', 'mine');
    const snare = removeOwnClass(used, 'mine').mics.find(({ id }) => id === 'mic-snare');
    expect(snare?.micClass).toBe(builtIn);
  });
});
