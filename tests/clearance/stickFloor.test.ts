import { describe, expect, it } from 'vitest';
import { SPOT, type StickFloor } from '../../src/clearance/floorField.ts';
import { floorContours, stickFloor } from '../../src/clearance/stickFloor.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import type { Vec2, Vec3 } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { playingOf } from '../../src/player/moves.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { seededKits } from '../support/randomKit.ts';
import { underSide } from '../support/underSide.ts';
import { startingKit } from './kits.ts';

const AREA = { left: -1300, bottom: -500, right: 1500, top: 1700 };
/** The height shown is at most this far below the true one within half a spot. */
const BELOW = 15;
/** Moments of a move at which the second implementation is looked at. */
const MOMENTS = 150;

const floorOf = ({ player, pieces }: Pick<Layout, 'player' | 'pieces'>): StickFloor =>
  stickFloor(new SweptMoves(playingOf(player, pieces)), AREA);

/** A part of an arm at one moment. */
interface Moment {
  readonly axis: readonly [Vec3, Vec3];
  readonly radius: number;
}

/** All parts at all sampled moments, by a second implementation. */
const momentsOf = ({ player, pieces }: Pick<Layout, 'player' | 'pieces'>): readonly Moment[] =>
  oracleMotion(player, pieces).moves.flatMap((move) =>
    Array.from({ length: MOMENTS + 1 }, (_, k) => move.at(k / MOMENTS)).flatMap(
      ({ elbow, grip, butt, tip }): Moment[] => [
        { axis: [butt, tip], radius: player.stick.diameter / 2 },
        { axis: [grip, grip], radius: 45 },
        { axis: [elbow, grip], radius: 40 },
      ],
    ),
  );

/** The lowest height of all parts over a spot. */
function sampledHeight(moments: readonly Moment[], spot: Vec2): number {
  let least = Number.POSITIVE_INFINITY;
  for (const { axis, radius } of moments) {
    const [a, b] = axis;
    const reach = radius + 1;
    if (Math.min(a.x, b.x) - reach > spot.x || Math.max(a.x, b.x) + reach < spot.x) continue;
    if (Math.min(a.y, b.y) - reach > spot.y || Math.max(a.y, b.y) + reach < spot.y) continue;
    if (Math.min(a.z, b.z) - reach > least) continue;
    least = Math.min(least, underSide(spot, axis, radius));
  }
  return least;
}

const layouts = [startingKit('four-piece-jazz'), ...seededKits(5, 51)];
const shown = layouts.map((layout) => ({
  layout,
  floor: floorOf(layout),
  moments: momentsOf(layout),
}));
const heightAt = ({ columns, heights }: StickFloor, column: number, row: number): number =>
  heights[row * columns + column] ?? Number.NaN;
const spotOf = ({ left, bottom }: StickFloor, column: number, row: number): Vec2 => ({
  x: left + column * SPOT,
  y: bottom + row * SPOT,
});
/** Some of the spots over which something passes, and their neighbours. */
const somePlaces = ({ columns, rows }: StickFloor, every: number) =>
  Array.from({ length: columns * rows }, (_, k) => ({
    column: k % columns,
    row: Math.floor(k / columns),
  })).filter((_, k) => (k * 7) % every === 0);

describe('rule F1: the stick floor', () => {
  it('is never above the lowest sampled height over a spot', () => {
    const faults = shown.flatMap(({ layout, floor, moments }) =>
      somePlaces(floor, 61).flatMap(({ column, row }) => {
        const height = heightAt(floor, column, row);
        const sampled = sampledHeight(moments, spotOf(floor, column, row));
        return height <= sampled + 1e-3
          ? []
          : [`${layout.name} at ${column}, ${row}: ${height}, sampled ${sampled}`];
      }),
    );
    expect(faults).toEqual([]);
  }, 60_000);

  it('is at most 15 mm below the lowest sampled height within 10 mm of the spot', () => {
    const faults = shown.slice(0, 4).flatMap(({ layout, floor, moments }) =>
      somePlaces(floor, 499).flatMap(({ column, row }) => {
        const height = heightAt(floor, column, row);
        if (!Number.isFinite(height)) return [];
        const { x, y } = spotOf(floor, column, row);
        const about = Array.from({ length: 25 }, (_, k) => {
          const out = k === 0 ? 0 : k <= 8 ? 5 : 9.9;
          const turn = (k * Math.PI) / (k <= 8 ? 4 : 8);
          return sampledHeight(moments, {
            x: x + out * Math.cos(turn),
            y: y + out * Math.sin(turn),
          });
        });
        // Sampled heights lie above the true ones by up to a step of the sampling.
        return height >= Math.min(...about) - BELOW - 1
          ? []
          : [`${layout.name} at ${column}, ${row}: ${height}, about ${Math.min(...about)}`];
      }),
    );
    expect(faults).toEqual([]);
  }, 60_000);

  it('is a grid of 20 mm or finer over the whole area, open where nothing passes', () => {
    expect(SPOT).toBeLessThanOrEqual(20);
    for (const { floor } of shown) {
      expect(floor.heights).toHaveLength(floor.columns * floor.rows);
      expect(floor.left + (floor.columns - 1) * SPOT).toBe(AREA.right);
      expect(floor.bottom + (floor.rows - 1) * SPOT).toBe(AREA.top);
      expect(heightAt(floor, 0, 0)).toBe(Number.POSITIVE_INFINITY);
    }
  });

  it('holds where the elbow swings fast: a floor tom beside the seat', () => {
    const kit = startingKit('four-piece-jazz');
    const pieces = kit.pieces.flatMap((piece) =>
      piece.kind === 'floorTom'
        ? [{ ...piece, x: 795, y: -10, z: 480, tilt: 0 }]
        : piece.kind === 'snare'
          ? [piece]
          : [],
    );
    const floor = floorOf({ player: kit.player, pieces });
    const moments = momentsOf({ player: kit.player, pieces });
    const faults = somePlaces(floor, 23).flatMap(({ column, row }) => {
      const sampled = sampledHeight(moments, spotOf(floor, column, row));
      const height = heightAt(floor, column, row);
      return height <= sampled + 1e-3 ? [] : [`${column}, ${row}: ${height}, sampled ${sampled}`];
    });
    expect(faults).toEqual([]);
  }, 60_000);
});

describe('contours of the stick floor', () => {
  /** Even-odd. */
  const inside = (rings: readonly (readonly Vec2[])[], p: Vec2): boolean =>
    rings
      .flatMap((ring) => ring.map((a, k) => ({ a, b: ring[(k + 1) % ring.length] ?? a })))
      .filter(({ a, b }) => a.y > p.y !== b.y > p.y)
      .filter(({ a, b }) => p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)).length %
      2 ===
    1;

  it('hold the spots at or below their height, lowest contour first, each within the next', () => {
    const levels = [900, 700, 1100];
    for (const { floor } of shown) {
      const contours = floorContours(floor, levels);
      expect(contours.map(({ height }) => height)).toEqual([700, 900, 1100]);
      for (const { column, row } of somePlaces(floor, 17)) {
        const height = heightAt(floor, column, row);
        const spot = spotOf(floor, column, row);
        for (const { height: level, rings } of contours) {
          if (Math.abs(height - level) < 1e-3) continue;
          expect(inside(rings, spot), `${level} at ${column}, ${row}`).toBe(height < level);
        }
      }
    }
  });
});
