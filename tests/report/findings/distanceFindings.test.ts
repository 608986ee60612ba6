import { describe, expect, test } from 'vitest';
import { fivePieceOneRack } from '../../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { micSources, offeredMics } from '../../../src/layout/catalogue/offered/offeredMics.ts';
import { moveMic, moveMicTip } from '../../../src/layout/edit/mics.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { distanceFindings } from '../../../src/report/findings/distanceFindings.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';

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

describe('a close mic that is close no more', () => {
  const notClose = (layout: Layout) =>
    createAnalyst()(layout).findings.filter(({ code }) => code === 'mic-not-close');
  const hiHat = start.pieces.find(({ kind }) => kind === 'hiHat');
  const mic = start.mics.find(({ hears }) => hears.length === 1 && hears[0] === hiHat?.id);
  if (hiHat?.kind !== 'hiHat' || mic?.mount.kind !== 'stand') {
    throw new Error('expected a hi-hat with its mic on a stand');
  }

  test('is told with how far it is from the edge: beside the piece, over it, and where the piece was moved away', () => {
    const { x, y, z, diameter } = hiHat;
    const beside = (off: number) => moveMicTip(start, mic.id, { x: x + diameter / 2 + off, y, z });
    expect(notClose(beside(290))).toEqual([]);
    const [found] = notClose(beside(340));
    expect(found?.about).toEqual([mic.id, hiHat.id]);
    expect(found?.numbers['away']).toBeGreaterThan(325);
    expect(found?.numbers['away']).toBeLessThan(345);
    expect(notClose(moveMicTip(start, mic.id, { x, y, z: z + 280 }))).toEqual([]);
    expect(notClose(moveMicTip(start, mic.id, { x, y, z: z + 400 }))).toHaveLength(1);
    expect(notClose(movePiece(start, hiHat.id, { x: x - 600, y }))).toHaveLength(1);
  });

  test('is not said of a mic that hears several, nor beside what is said of one far away', () => {
    const codes = (layout: Layout) => createAnalyst()(layout).findings.map(({ code }) => code);
    expect(notClose(moveMic(start, onStand(true).id, { x: 0, y: 1000 }))).toEqual([]);
    const away = codes(moveMic(start, mic.id, { x: 15_000, y: 0 }));
    expect(away).toContain('mic-far-away');
    expect(away).not.toContain('mic-not-close');
  });

  test('is none in any starting kit, nor at the first place that a mic is offered', () => {
    for (const { make } of STARTING_KITS) {
      const kit = make('kit');
      expect(notClose(kit)).toEqual([]);
      const { pieces } = buildRig(kit);
      for (const { hears } of micSources(kit)) {
        const first = offeredMics(kit, hears).next().value;
        if (first) expect(distanceFindings(placeMic(first, kit), pieces)).toEqual([]);
      }
    }
  });
});
