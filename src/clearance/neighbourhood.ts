import type { SideSign } from '../player/hands.ts';
import type { MicSolid } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { squaredGap } from './micShape.ts';
import { BOX, GROUP, PARTS, type SweptMoves } from './sweptMoves.ts';

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

/** The region that a mic's solids can be in while they move by at most `dx` and `dy` on the plan. */
export function regionOf(solids: readonly MicSolid[], dx: Mm, dy: Mm): Region {
  const row = (sign: SideSign): Float64Array => {
    const box = Float64Array.of(Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity);
    for (const { capsule } of solids) {
      for (const { x, y, z } of [capsule.a, capsule.b]) {
        for (const [axis, value] of [sign * x, y, z].entries()) {
          const room = capsule.radius + (axis === 0 ? dx : axis === 1 ? dy : 0);
          box[axis] = Math.min(box[axis] as number, value - room);
          box[axis + 3] = Math.max(box[axis + 3] as number, value + room);
        }
      }
    }
    return box;
  };
  return { right: row(1), left: row(-1) };
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

/** Those entries of a neighbourhood that are within `limit` mm of a smaller region. */
export function narrowed(
  swept: SweptMoves,
  entries: Int32Array,
  region: Region,
  limit: Mm,
): Int32Array {
  return entries.filter((code) => {
    const boxed = swept.moves[entryMove(code)];
    if (!boxed) return false;
    const at = ((boxed.interval + entryInterval(code)) * PARTS + entryPart(code)) * BOX;
    return squaredGap(swept.boxes, at, region[boxed.move.side], 0) <= limit * limit;
  });
}
