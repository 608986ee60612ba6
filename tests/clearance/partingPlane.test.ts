import { expect, test } from 'vitest';
import { type MicShape, micShapes } from '../../src/clearance/micShape.ts';
import { PartingPlane } from '../../src/clearance/partingPlane.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { vec } from '../../src/geometry/vector.ts';
import { POSITION } from '../../src/player/arm.ts';
import type { Move } from '../../src/player/move.ts';
import { playingOf } from '../../src/player/moves.ts';
import { seededKits } from '../support/randomKit.ts';
import { rod, startingKits } from './kits.ts';

const DIRECTIONS = [
  [0, 0, -1],
  [0.6, -0.8, 0],
  [-0.48, 0.6, -0.64],
] as const;

type Direction = (typeof DIRECTIONS)[number];

const along = ([x, y, z]: Direction, p: Float64Array, i: number): number =>
  x * (p[i] ?? 0) + y * (p[i + 1] ?? 0) + z * (p[i + 2] ?? 0);

/** Where each part begins along a direction, at many times of a move. */
function sampledParts(direction: Direction, { arm }: SweptMoves, move: Move): readonly number[] {
  const row = new Float64Array(POSITION);
  const nearest = arm.parts.map(() => Number.POSITIVE_INFINITY);
  for (let k = 0; k <= 40; k++) {
    move.write(k / 40, row, 0);
    for (const [part, { at, radius }] of arm.parts.entries()) {
      const low = Math.min(along(direction, row, at), along(direction, row, at + 3)) - radius;
      nearest[part] = Math.min(nearest[part] ?? 0, low);
    }
  }
  return nearest;
}

/** How far each solid reaches along a direction, then all of them, then each half. */
function reachesOf(direction: Direction, { axes, radii, middle }: MicShape): readonly number[] {
  const alone = [...radii].map((radius, k) => {
    const ends = [6 * k, 6 * k + 3].map((i) => along(direction, axes, i));
    return Math.max(...ends) + radius;
  });
  const groups = [alone, alone.slice(0, middle), alone.slice(middle)];
  return [...alone, ...groups.map((group) => Math.max(...group))];
}

test('what is said to keep off is that far away at every time, and seldom much farther', () => {
  const { right: shape } = micShapes([
    ...rod(vec(-200, 300, 900), vec(-150, 420, 950), 20),
    ...rod(vec(-150, 420, 950), vec(-150, 500, 1900), 8),
    ...rod(vec(-150, 500, 1900), vec(-150, 900, 0), 12),
  ]);
  let asked = 0;
  let told = 0;
  for (const { player, pieces } of [...startingKits, ...seededKits(15, 8)]) {
    const swept = new SweptMoves(playingOf(player, pieces));
    const moves = swept.moves.filter(({ move }) => move.side === 'right');
    for (const direction of DIRECTIONS) {
      const [x, y, z] = direction;
      const plane = new PartingPlane(swept, shape);
      plane.offer(2, 1, 0, 0);
      plane.offer(1, x, y, z);
      plane.offer(3, 0, 1, 0);
      plane.end(shape);
      const reaches = reachesOf(direction, shape);
      for (const boxed of moves) {
        plane.begin(boxed, shape);
        for (const [part, begins] of sampledParts(direction, swept, boxed.move).entries()) {
          for (const [solid, reach] of reaches.entries()) {
            expect(plane.keeps(part, solid, begins - reach + 1e-6)).toBe(false);
            if (plane.keeps(part, solid, begins - reach - 25)) told++;
            asked++;
          }
        }
      }
    }
  }
  expect(told / asked).toBeGreaterThan(0.8);
});

test('nothing is said before a direction is known, nor of the other hand', () => {
  const [kit] = startingKits;
  if (!kit) throw new Error('a starting kit was expected');
  const swept = new SweptMoves(playingOf(kit.player, kit.pieces));
  const { right, left } = micShapes(rod(vec(0, 0, 5000), vec(0, 0, 5100), 10));
  const [boxed] = swept.moves;
  if (!boxed) throw new Error('a move was expected');
  const plane = new PartingPlane(swept, right);
  plane.begin(boxed, right);
  expect(plane.keeps(0, 0, 0)).toBe(false);
  plane.offer(1, 0, 0, -1);
  plane.end(right);
  plane.begin(boxed, right);
  expect(plane.keeps(0, 0, 0)).toBe(true);
  plane.begin(boxed, left);
  expect(plane.keeps(0, 0, 0)).toBe(false);
});
