import type { Vec2, Vec3 } from '../geometry/vector.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { squaredGap } from './micShape.ts';
import { BOX, type BoxedMove, GROUP, PARTS, type SweptMoves } from './sweptMoves.ts';

/** Intervals and parts of one move that a code has room for. */
const PER_MOVE = 64;

/** One arm part in one interval of one move, as one number. */
export const entryCode = (move: number, interval: number, part: number): number =>
  move * PER_MOVE + interval * PARTS + part;
export const entryMove = (code: number): number => Math.floor(code / PER_MOVE);
export const entryInterval = (code: number): number => Math.floor((code % PER_MOVE) / PARTS);
export const entryPart = (code: number): number => (code % PER_MOVE) % PARTS;

/** A part of space in the hand space of each side, as a box. */
export interface Region {
  readonly right: Float64Array;
  readonly left: Float64Array;
}

/** The region that a mic's solids can be in while they move by at most `room` mm along each axis. */
export function regionOf(solids: readonly MicSolid[], room: Vec3): Region {
  const right = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
  const take = (axis: number, value: Mm, slack: Mm): void => {
    right[axis] = Math.min(right[axis] as number, value - slack);
    right[axis + 3] = Math.max(right[axis + 3] as number, value + slack);
  };
  for (const { capsule } of solids) {
    for (const { x, y, z } of [capsule.a, capsule.b]) {
      take(0, x, capsule.radius + room.x);
      take(1, y, capsule.radius + room.y);
      take(2, z, capsule.radius + room.z);
    }
  }
  const left = right.slice();
  left[0] = -(right[3] as number);
  left[3] = -(right[0] as number);
  return { right, left };
}

/** Whatever sweeps within `limit` mm of a region, as codes of entries: all that a search there has to look at. */
export function neighbourhood(swept: SweptMoves, region: Region, limit: Mm): Int32Array {
  const codes: number[] = [];
  const squared = limit * limit;
  const close = (boxes: Float64Array, at: number, box: Float64Array): boolean =>
    squaredGap(boxes, at * BOX, box, 0) <= squared;
  for (const [index, { move, intervals, interval }] of swept.moves.entries()) {
    const box = region[move.side];
    for (let part = 0; part < PARTS; part++) {
      if (!close(swept.moveBoxes, index * PARTS + part, box)) continue;
      for (let k = 0; k < intervals; k++) {
        const group = Math.floor((interval + k) / GROUP);
        if (k % GROUP === 0 && !close(swept.groupBoxes, group * PARTS + part, box)) {
          k += GROUP - 1;
        } else if (close(swept.boxes, (interval + k) * PARTS + part, box)) {
          codes.push(entryCode(index, k, part));
        }
      }
    }
  }
  return Int32Array.from(codes);
}

/** Whether an entry's box is within `limit` mm of a region. */
export function entryMeets(swept: SweptMoves, code: number, region: Region, limit: Mm): boolean {
  const { move, interval } = swept.moves[entryMove(code)] as BoxedMove;
  const at = ((interval + entryInterval(code)) * PARTS + entryPart(code)) * BOX;
  const near = Math.max(0, limit);
  return squaredGap(swept.boxes, at, region[move.side], 0) <= near * near;
}

/** By how much a mic that fills `region` must be shifted on the plan so that its box meets an entry's: least and most, kit frame. */
export function meetingShifts(
  swept: SweptMoves,
  code: number,
  region: Region,
): { readonly least: Vec2; readonly most: Vec2 } {
  const { move, interval } = swept.moves[entryMove(code)] as BoxedMove;
  const mic = region[move.side];
  const at = ((interval + entryInterval(code)) * PARTS + entryPart(code)) * BOX;
  const least = (axis: number): Mm => (swept.boxes[at + axis] ?? 0) - (mic[axis + 3] ?? 0);
  const most = (axis: number): Mm => (swept.boxes[at + axis + 3] ?? 0) - (mic[axis] ?? 0);
  const [x0, x1] = move.side === 'right' ? [least(0), most(0)] : [-most(0), -least(0)];
  return { least: { x: x0, y: least(1) }, most: { x: x1, y: most(1) } };
}
