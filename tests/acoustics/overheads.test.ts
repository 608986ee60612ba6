import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { energySum, toEnergy } from '../../src/acoustics/decibels.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isCymbal } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece, kit, kits } from '../rig/kits.ts';
import { classWith, micAt, only, sceneOf, smallSource, standAt } from './scenes.ts';

const overheadsOf = (layout: Layout, choices = DEFAULT_CHOICES) =>
  createAcoustics()(layout, buildRig(layout), choices).overheads;
const found = only(overheadsOf(fivePiece) ?? undefined);
const crash = only(fivePiece.pieces.find(({ kind }) => kind === 'crash'));

describe('overheads', () => {
  it('hear every cymbal and the hi-hat, each by its level', () => {
    const cymbals = fivePiece.pieces.filter((piece) => isCymbal(piece) || piece.kind === 'hiHat');
    for (const mic of found.mics) {
      expect(mic.cymbals.map(({ piece }) => piece)).toEqual(cymbals.map(({ id }) => id));
      const levels = mic.cymbals.map(({ level }) => level);
      expect(mic.spread).toBe(Math.max(...levels) - Math.min(...levels));
      expect(mic.cymbals.find(({ piece }) => piece === mic.loudest)?.level).toBe(
        Math.max(...levels),
      );
    }
  });

  it('H32 add as energy', () => {
    for (const [i, { level }] of found.together.cymbals.entries()) {
      expect(level).toBeCloseTo(energySum(found.mics.map((mic) => mic.cymbals[i]?.level ?? 0)), 9);
    }
  });

  it('the snare is balanced left to right by level', () => {
    const balance = only(found.balance ?? undefined);
    const of = (id: string) => only(found.mics.find(({ mic }) => mic === id)).snare ?? 0;
    expect(balance.level).toBeCloseTo(of(balance.right) - of(balance.left), 9);
    const x = (id: string) => {
      const mount = fivePiece.mics.find((mic) => mic.id === id)?.mount;
      return mount?.kind === 'stand' ? mount.tip.x : Number.NaN;
    };
    expect(x(balance.left)).toBeLessThan(x(balance.right));
  });

  it('a snare straight between two overheads is balanced, and an overhead nearer to it is louder', () => {
    const scene = (right: number) =>
      only(
        overheadsOf(
          sceneOf(
            [...fivePiece.pieces.filter(({ kind }) => kind === 'snare'), crash].map((piece) =>
              'tilt' in piece ? { ...piece, x: 0, tilt: 0 } : piece,
            ),
            [
              micAt('left', [crash.id, 'snare'], standAt([-400, 600, 1900], [270, -90])),
              micAt('right', [crash.id, 'snare'], standAt([right, 600, 1900], [270, -90])),
            ],
          ),
        ) ?? undefined,
      ).balance;
    expect(scene(400)?.level).toBeCloseTo(0, 9);
    expect(scene(300)?.level).toBeGreaterThan(0.2);
  });

  it('H33 level over wash falls dB by dB as the wash rises, and gains by the directivity index', () => {
    const louder = { ...DEFAULT_CHOICES, stageWash: DEFAULT_CHOICES.stageWash + 6 };
    const [before, after] = [found, only(overheadsOf(fivePiece, louder) ?? undefined)];
    expect(before.together.overWash - after.together.overWash).toBeCloseTo(6, 9);
    // Straight above a small cymbal every pattern hears it alike: they differ by their directivity indices alone.
    const over = (a: number) => {
      const pieces = [{ ...crash, tilt: 0, diameter: 100 }];
      const z = 'z' in crash ? crash.z : 0;
      const [x, y] = 'x' in crash ? [crash.x, crash.y] : [0, 0];
      const mic = micAt('mic', [crash.id], standAt([x, y, z + 1500], [0, -90]), 'own-class');
      return only(overheadsOf(sceneOf(pieces, [mic], [classWith('own-class', a)])) ?? undefined)
        .together.overWash;
    };
    expect(over(0.5) - over(1)).toBeCloseTo(4.77, 1);
    expect(over(0.25) - over(1)).toBeCloseTo(6.02, 1);
  });

  it('H33 is the mean energy of a cymbal over that of the wash in the mic', () => {
    const mic = only(found.mics[0]);
    const mean =
      mic.cymbals.reduce((sum, { level }) => sum + toEnergy(level), 0) / mic.cymbals.length;
    const cardioid = 1 / 3;
    const wash = toEnergy(DEFAULT_CHOICES.stageWash) * cardioid;
    expect(toEnergy(mic.overWash)).toBeCloseTo(mean / wash, 6);
  });

  it('a pair over a mirrored kit is as even, and its snare is balanced the other way', () => {
    const mirrored = only(overheadsOf(kit('left-handed')) ?? undefined);
    const original = only(overheadsOf(kit('five-piece-one-rack')) ?? undefined);
    expect(mirrored.together.spread).toBeCloseTo(original.together.spread, 9);
    expect(mirrored.balance?.level).toBeCloseTo(-(original.balance?.level ?? Number.NaN), 9);
  });

  it('there are none without an overhead, and no balance without a snare', () => {
    expect(overheadsOf({ ...fivePiece, mics: [] })).toBeNull();
    const mics = ['one', 'two'].map((id, i) =>
      micAt(id, [crash.id], standAt([400 * i, 900, 1950], [0, -90])),
    );
    const found = only(
      overheadsOf(sceneOf([crash, smallSource('block', [0, 0, 700])], mics)) ?? undefined,
    );
    expect(found.balance).toBeNull();
    expect(found.together.spread).toBe(0);
    expect(found.mics.map(({ snare }) => snare)).toEqual([null, null]);
  });

  it('every kit tells how high its overheads are over the highest cymbal', () => {
    for (const layout of kits) {
      const overheads = overheadsOf(layout);
      for (const { height } of overheads?.mics ?? []) expect(height).toBeGreaterThan(400);
    }
  });
});
