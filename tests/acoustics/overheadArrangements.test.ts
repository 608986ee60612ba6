import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overheadArrangement } from '../../src/acoustics/overheadArrangements.ts';
import { dot, type Vec3, vec } from '../../src/geometry/vector.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import { isCymbal, isDrum } from '../../src/layout/pieces/piece.ts';
import { standPose } from '../../src/rig/mics/standMic.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { randomKit } from '../support/randomKit.ts';
import { only, standAt } from './scenes.ts';

const kinds = ['spaced', 'coincident', 'snareEquidistant'] as const;
const playable = kits.filter(({ pieces }) => pieces.some(isCymbal));

const axisOf = ({ tip, azimuth, pitch }: { tip: Vec3; azimuth: number; pitch: number }) =>
  standPose(standAt([tip.x, tip.y, tip.z], [azimuth, pitch])).axis;

describe('overhead arrangements', () => {
  it.each(kinds)('%s: left of right, at the height asked for over the highest cymbal', (kind) => {
    for (const { pieces } of playable) {
      const [left, right] = only(overheadArrangement(kind, pieces, 700));
      const cymbals = pieces.flatMap((piece) =>
        isCymbal(piece) || piece.kind === 'hiHat' ? [piece.z] : [],
      );
      expect(left.tip.z).toBeCloseTo(Math.max(...cymbals) + 700, 0);
      expect(right.tip.z).toBe(left.tip.z);
      if (kind !== 'coincident') expect(left.tip.x).toBeLessThan(right.tip.x);
      else expect(axisOf(left).x).toBeLessThan(axisOf(right).x);
    }
  });

  it('H38 snare-equidistant: both as far from the snare, within 10 mm, on any kit with a snare and cymbals', () => {
    let tried = 0;
    fc.assert(
      fc.property(randomKit, ({ pieces }) => {
        const places = overheadArrangement('snareEquidistant', pieces, 800);
        const snare = pieces.filter(isDrum).some(({ kind }) => kind === 'snare');
        if (!places || !snare) return;
        tried += 1;
        const [left, right] = places;
        expect(Math.abs((left.toSnare ?? 0) - (right.toSnare ?? 1e9))).toBeLessThan(10);
      }),
      { numRuns: 150 },
    );
    expect(tried).toBeGreaterThan(20);
  });

  it('H38 snare-equidistant: as far from the snare as the spaced pair is on average', () => {
    for (const { pieces } of playable) {
      const spaced = only(overheadArrangement('spaced', pieces, 700));
      const mean = ((spaced[0].toSnare ?? 0) + (spaced[1].toSnare ?? 0)) / 2;
      for (const { toSnare } of only(overheadArrangement('snareEquidistant', pieces, 700))) {
        expect(Math.abs((toSnare ?? 0) - mean)).toBeLessThan(2);
      }
    }
  });

  it('H37 coincident: 60 mm apart, equally far from the snare, at right angles to each other', () => {
    for (const { pieces } of playable) {
      const [left, right] = only(overheadArrangement('coincident', pieces, 700));
      const gap = Math.hypot(left.tip.x - right.tip.x, left.tip.y - right.tip.y);
      expect(Math.abs(gap - 60)).toBeLessThan(1.5);
      expect(Math.abs((left.toSnare ?? 0) - (right.toSnare ?? 1e9))).toBeLessThan(2);
      expect(dot(axisOf(left), axisOf(right))).toBeCloseTo(0, 9);
    }
  });

  it('H36 spaced: each looks straight down, at least 600 mm apart', () => {
    for (const { pieces } of playable) {
      const [left, right] = only(overheadArrangement('spaced', pieces, 700));
      expect(right.tip.x - left.tip.x).toBeGreaterThanOrEqual(599);
      for (const place of [left, right])
        expect(dot(axisOf(place), vec(0, 0, -1))).toBeCloseTo(1, 9);
    }
  });

  it('a mirrored kit has mirrored places', () => {
    for (const kind of kinds) {
      const [left, right] = only(overheadArrangement(kind, fivePiece.pieces, 700));
      const [mirroredLeft, mirroredRight] = only(
        overheadArrangement(kind, mirrorKit(fivePiece).pieces, 700),
      );
      for (const [place, image] of [
        [left, mirroredRight],
        [right, mirroredLeft],
      ] as const) {
        expect(Math.abs(image.tip.x + place.tip.x)).toBeLessThanOrEqual(1);
        expect(Math.abs(image.tip.y - place.tip.y)).toBeLessThanOrEqual(1);
        expect(axisOf(image).x).toBeCloseTo(-axisOf(place).x, 9);
      }
    }
  });

  it('there is none without cymbals; without a snare no distance to it', () => {
    const drums = fivePiece.pieces.filter(isDrum);
    const cymbals = fivePiece.pieces.filter(isCymbal);
    for (const kind of kinds) {
      expect(overheadArrangement(kind, drums, 700)).toBeUndefined();
      expect(overheadArrangement(kind, cymbals, 700)?.map(({ toSnare }) => toSnare)).toEqual([
        null,
        null,
      ]);
    }
  });
});
