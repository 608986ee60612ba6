import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { add, distance, length, scale, subtract, type Vec3 } from '../../src/geometry/vector.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { POSITION } from '../../src/player/arm.ts';
import type { Move } from '../../src/player/move.ts';
import { playingOf } from '../../src/player/moves.ts';
import { randomKit } from '../support/randomKit.ts';
import { anyPlayer, pointsAt } from './arms.ts';

const NAMES = ['grip', 'butt', 'tip'] as const;
/** Kits with players of all sizes. */
const played = fc
  .tuple(randomKit, anyPlayer, fc.boolean())
  .map(([kit, player, own]) => playingOf(own ? player : kit.player, kit.pieces));
const insideTime = fc.double({ min: 0.001, max: 0.999, noNaN: true });

/** Mean speed over a short time about t. */
const speedAt = (move: Move, name: (typeof NAMES)[number], t: number): number => {
  const h = 1e-3;
  return distance(pointsAt(move, t + h)[name], pointsAt(move, t - h)[name]) / (2 * h);
};

/** Second difference over a short time about t: a mean of the second derivative. */
function bendAt(move: Move, name: (typeof NAMES)[number], t: number): number {
  const h = 1e-3;
  const at = (time: number): Vec3 => pointsAt(move, time)[name];
  const ends = add(at(t - h), at(t + h));
  return length(subtract(ends, scale(at(t), 2))) / (h * h);
}

/** By how much the worst of many values is above what it may be. */
const worst = (excesses: Iterable<number>): number => Math.max(-Infinity, ...excesses);

describe('the bounds of moves', () => {
  it('no point is ever faster than its speed', () => {
    fc.assert(
      fc.property(played, insideTime, ({ moves }, t) => {
        const excess = moves.flatMap((move) =>
          NAMES.map((name) => speedAt(move, name, t) - move.speed[name] * (1 + 1e-9)),
        );
        expect(worst(excess)).toBeLessThanOrEqual(1e-6);
      }),
      { numRuns: 200 },
    );
  });

  it('no point ever bends more than its bend', () => {
    fc.assert(
      fc.property(played, insideTime, ({ moves }, t) => {
        const excess = moves.flatMap((move) =>
          NAMES.map((name) => bendAt(move, name, t) - move.bend[name] * (1 + 1e-9)),
        );
        expect(worst(excess)).toBeLessThanOrEqual(1e-4);
      }),
      { numRuns: 200 },
    );
  });

  it('the elbow keeps within elbowRoom of the nearer end of any interval', () => {
    const parts = fc.constantFrom(1, 4, 16, 64, 256);
    const interval = fc
      .tuple(fc.double({ min: 0, max: 0.999, noNaN: true }), parts)
      .map(([at, n]) => ({ from: Math.floor(at * n) / n, n }));
    fc.assert(
      fc.property(played, interval, ({ arm, moves }, { from, n }) => {
        const excess = moves.flatMap((move) => {
          const elbow = (k: number): Vec3 => pointsAt(move, from + k / n).elbow;
          const row = new Float64Array(POSITION);
          move.write(from, row, 0);
          const room = arm.elbowRoom(row, 0, move.speed.grip / n);
          const [first, last] = [elbow(0), elbow(1)];
          return Array.from({ length: 11 }, (_, k) => elbow((k + 1) / 12)).map(
            (between) => Math.min(distance(between, first), distance(between, last)) - room,
          );
        });
        expect(worst(excess)).toBeLessThanOrEqual(1e-6);
      }),
      { numRuns: 150 },
    );
  });

  it('are no more than three times what the starting kits use: looser ones would slow the search', () => {
    for (const kit of STARTING_KITS) {
      const { player, pieces } = kit.make('kit');
      const looseness = playingOf(player, pieces).moves.map((move) => {
        const times = Array.from({ length: 39 }, (_, k) => (k + 1) / 40);
        return move.speed.tip / Math.max(...times.map((t) => speedAt(move, 'tip', t)));
      });
      expect(worst(looseness), kit.name).toBeLessThan(3);
    }
  });
});
