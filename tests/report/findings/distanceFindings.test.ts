import { describe, expect, test } from 'vitest';
import { fivePieceOneRack } from '../../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { moveMic } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';

const farIn = (layout: Layout) =>
  createAnalyst()(layout).findings.filter(({ code }) => code === 'mic-far-away');
const start = fivePieceOneRack('kit');
const onStand = (several: boolean) => {
  const mic = start.mics.find(
    ({ mount, hears }) => mount.kind === 'stand' && hears.length > 1 === several,
  );
  if (!mic) throw new Error('expected a mic on a stand');
  return mic;
};

describe('a mic implausibly far from what it hears', () => {
  test('is found with how far it is and from which piece: a typo of 15 m', () => {
    const mic = onStand(false);
    const [found, ...more] = farIn(moveMic(start, mic.id, { x: 15_000, y: 0 }));
    expect(more).toEqual([]);
    expect(found?.about).toEqual([mic.id, mic.hears[0]]);
    expect(found?.numbers['away']).toBeGreaterThan(14_000);
    expect(found?.numbers['away']).toBeLessThan(16_000);
  });

  test('one that hears several pieces may stand twice as far back', () => {
    const mic = onStand(true);
    expect(farIn(moveMic(start, mic.id, { x: 0, y: 4500 }))).toEqual([]);
    expect(farIn(moveMic(start, mic.id, { x: 0, y: 9000 }))).toHaveLength(1);
    const one = onStand(false);
    expect(farIn(moveMic(start, one.id, { x: 0, y: 4500 }))).toHaveLength(1);
  });

  test('is none in any starting kit, and a mic that hears nothing is far from nothing', () => {
    for (const { make } of STARTING_KITS) expect(farIn(make('kit'))).toEqual([]);
    const mic = onStand(false);
    const deaf = {
      ...start,
      mics: start.mics.map((one) => (one.id === mic.id ? { ...one, hears: [] } : one)),
    };
    expect(farIn(moveMic(deaf, mic.id, { x: 15_000, y: 0 }))).toEqual([]);
  });
});
