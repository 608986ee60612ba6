import { describe, expect, it } from 'vitest';
import { BOX, GROUP, PARTS, SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';
import { POSITION } from '../../src/player/arm.ts';
import { createPlaying, playingOf } from '../../src/player/moves.ts';
import { seededKits } from '../support/randomKit.ts';
import { startingKits } from './kits.ts';

/** How far a part at a time sticks out of a box; at most 0 when it is inside. */
function outside(
  row: Float64Array,
  part: { at: number; radius: number },
  box: Float64Array,
): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const end of [part.at, part.at + 3]) {
    for (let axis = 0; axis < 3; axis++) {
      const value = row[end + axis] ?? 0;
      most = Math.max(most, (box[axis] ?? 0) - (value - part.radius));
      most = Math.max(most, value + part.radius - (box[axis + 3] ?? 0));
    }
  }
  return most;
}

describe('the boxes round what sweeps', () => {
  it('hold every part at every time: of an interval, of a group of them, of the whole move', () => {
    for (const { player, pieces } of [...startingKits, ...seededKits(60, 31)]) {
      const swept = new SweptMoves(playingOf(player, pieces));
      const row = new Float64Array(POSITION);
      let most = Number.NEGATIVE_INFINITY;
      for (const [index, { move, intervals, interval }] of swept.moves.entries()) {
        for (let k = 0; k < 5 * intervals; k++) {
          const t = (k + 0.37) / (5 * intervals);
          move.write(t, row, 0);
          const at = interval + Math.floor(t * intervals);
          for (const [part, shape] of swept.arm.parts.entries()) {
            for (const [boxes, entry] of [
              [swept.boxes, at],
              [swept.groupBoxes, Math.floor(at / GROUP)],
              [swept.moveBoxes, index],
            ] as const) {
              const from = (entry * PARTS + part) * BOX;
              most = Math.max(most, outside(row, shape, boxes.subarray(from, from + BOX)));
            }
          }
        }
      }
      expect(most).toBeLessThanOrEqual(1e-6);
    }
  });

  it('are the same when only what changed is swept again', () => {
    for (const { player, pieces } of [...startingKits, ...seededKits(20, 32)]) {
      const playingFor = createPlaying();
      const struck = pieces.filter(isStruck);
      const moved = struck[Math.floor(struck.length / 2)];
      const kits = [
        pieces,
        pieces.map((piece) =>
          piece === moved && isStruck(piece)
            ? { ...piece, x: piece.x + 17, y: piece.y - 9 }
            : piece,
        ),
        pieces.filter((piece) => piece !== moved),
        pieces.toReversed(),
      ];
      let before: SweptMoves | undefined;
      for (const kit of kits) {
        const now = new SweptMoves(playingFor(player, kit), before);
        const fresh = new SweptMoves(playingOf(player, kit));
        for (const key of ['boxes', 'groupBoxes', 'moveBoxes', 'elbowBow'] as const) {
          expect(now[key], key).toEqual(fresh[key]);
        }
        expect(now.positions.subarray(0, now.scratch)).toEqual(
          fresh.positions.subarray(0, fresh.scratch),
        );
        before = now;
      }
    }
  });
});
