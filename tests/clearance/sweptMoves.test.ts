import { describe, expect, it } from 'vitest';
import { BOX, GROUP, PARTS, SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { POSITION } from '../../src/player/arm.ts';
import { playingOf } from '../../src/player/moves.ts';
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
});
