import fc from 'fast-check';
import { expect, test } from 'vitest';
import { facingOf } from '../../src/acoustics/facing.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { pickupsOf } from '../../src/patch/pickup.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { heardIn } from '../acoustics/scenes.ts';
import { kits } from '../rig/kits.ts';
import { randomKit } from '../support/randomKit.ts';
import { demoWithMore, largeWithMore, micAt } from './scenes.ts';

const scenes = [...kits, demoWithMore, largeWithMore];

test('A1 and A3 agree with what the acoustics say of the same mics, on every starting kit and on random kits', () => {
  const check = (layout: (typeof scenes)[number]): number => {
    const { listeners } = heardIn(layout);
    const pickups = pickupsOf(buildRig(layout));
    expect(pickups.map(({ placed }) => placed.mic.id)).toEqual(listeners.map(({ id }) => id));
    for (const [index, { id, role, own, ear }] of listeners.entries()) {
      const pickup = pickups[index];
      const expected = role === 'free' ? 'none' : role;
      const found =
        pickup?.source === 'overhead' || pickup?.source === 'none' ? pickup.source : 'close';
      expect([pickup?.placed.mic.id, found]).toEqual([id, expected]);
      expect(pickup?.own?.id).toBe(own?.piece.id);
      const isHead = own && (own.piece.kind === 'kick' || isDrum(own.piece));
      const facing = role === 'close' && isHead ? facingOf(ear, own) : undefined;
      expect(pickup?.first).toBe(facing?.sure ? facing.first : undefined);
    }
    return pickups.filter(({ first }) => first !== undefined).length;
  };
  const sure = scenes.map(check).reduce((sum, count) => sum + count, 0);
  expect(sure).toBeGreaterThan(30);
  fc.assert(
    fc.property(randomKit, (layout) => check(layout) >= 0),
    { numRuns: 60 },
  );
});

test('A2 tells the places of mics on snare and kick', () => {
  const places = new Map(
    pickupsOf(buildRig(largeWithMore)).map(({ placed, place }) => [placed.mic.id, place]),
  );
  expect(places.get('mic-snare')).toBe('top');
  expect(places.get('mic-snare-bottom')).toBe('bottom');
  expect(places.get('mic-kick-in')).toBe('inside');
  expect(places.get('mic-kick-plate')).toBe('inside');
  expect(places.get('mic-kick-beater')).toBe('batter');
  expect(places.get('mic-hi-hat')).toBeUndefined();
  const jazz = kits.find(({ name }) => name === 'Four-piece jazz');
  const outside = jazz && pickupsOf(buildRig(jazz)).find(({ source }) => source === 'kick');
  expect(outside?.place).toBe('front');
});

test('A2 beside a drum: above half its depth a mic is on the side of the stick, below it under the drum', () => {
  const floor = demoWithMore.pieces.find(({ kind }) => kind === 'floorTom');
  if (floor?.kind !== 'floorTom') throw new Error('a floor tom was expected');
  const level = { ...floor, tilt: 0 };
  const beside = (share: number) => {
    const mic = micAt(
      'beside',
      [floor.id],
      [floor.x + 400, floor.y, floor.z - share * floor.depth],
      0,
    );
    const pieces = demoWithMore.pieces.map((piece) => (piece === floor ? level : piece));
    const [pickup] = pickupsOf(buildRig({ ...demoWithMore, pieces, mics: [mic] }));
    return [pickup?.place, pickup?.first];
  };
  expect(beside(0.45)).toEqual(['top', undefined]);
  expect(beside(0.55)).toEqual(['bottom', undefined]);
});
