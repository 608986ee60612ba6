import type { MicSolid } from '../rig/placed.ts';
import { BOX } from './sweptMoves.ts';

/** A mic's capsules as rows of numbers in the hand space of one side, with boxes, for the search. */
export interface MicShape {
  readonly count: number;
  /** Six numbers a capsule: both ends of its axis. */
  readonly axes: Float64Array;
  readonly radii: Float64Array;
  /** Boxes round each capsule, then round all of them, then round those before the middle of the list and round the others. */
  readonly boxes: Float64Array;
  /** How many are before the middle. They stand in a row along the mic and its stand, so halves of the list are halves of the whole. */
  readonly middle: number;
}

/** The shape of a mic in the hand space of each side. */
export interface MicShapes {
  readonly right: MicShape;
  readonly left: MicShape;
}

export function micShapes(solids: readonly MicSolid[]): MicShapes {
  const right = rightShape(solids);
  return { right, left: mirroredShape(right) };
}

/** A mic's capsules as rows of numbers, kit frame: six a capsule for both ends of its axis, and its radius. */
export function capsuleRows(
  solids: readonly MicSolid[],
): Pick<MicShape, 'count' | 'axes' | 'radii'> {
  const count = solids.length;
  const axes = new Float64Array(count * 6);
  const radii = new Float64Array(count);
  for (let index = 0; index < count; index++) {
    const { a, b, radius } = (solids[index] as MicSolid).capsule;
    const at = index * 6;
    axes[at] = a.x;
    axes[at + 1] = a.y;
    axes[at + 2] = a.z;
    axes[at + 3] = b.x;
    axes[at + 4] = b.y;
    axes[at + 5] = b.z;
    radii[index] = radius;
  }
  return { count, axes, radii };
}

function rightShape(solids: readonly MicSolid[]): MicShape {
  const { count, axes, radii } = capsuleRows(solids);
  const middle = count >> 1;
  const boxes = new Float64Array((count + 3) * BOX);
  for (let index = 0; index < count; index++) {
    const at = index * 6;
    const radius = radii[index] as number;
    for (let axis = 0; axis < 3; axis++) {
      const low = Math.min(axes[at + axis] as number, axes[at + axis + 3] as number) - radius;
      const high = Math.max(axes[at + axis] as number, axes[at + axis + 3] as number) + radius;
      boxes[at + axis] = low;
      boxes[at + axis + 3] = high;
    }
  }
  const shape = { count, axes, radii, boxes, middle };
  boxRound(shape, count, 0, count);
  boxRound(shape, count + 1, 0, middle);
  boxRound(shape, count + 2, middle, count);
  return shape;
}

/** Writes the box round the solids from `first` up to `end`; nothing is near to one round none. */
function boxRound(
  { boxes }: Pick<MicShape, 'boxes'>,
  into: number,
  first: number,
  end: number,
): void {
  for (let axis = 0; axis < 3; axis++) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let at = first * BOX + axis; at < end * BOX; at += BOX) {
      low = Math.min(low, boxes[at] as number);
      high = Math.max(high, boxes[at + 3] as number);
    }
    boxes[into * BOX + axis] = low;
    boxes[into * BOX + axis + 3] = high;
  }
}

function mirroredShape({ count, axes, radii, boxes, middle }: MicShape): MicShape {
  const other = { count, axes: axes.slice(), radii, boxes: boxes.slice(), middle };
  for (let i = 0; i < axes.length; i += 3) other.axes[i] = -(axes[i] as number);
  for (let i = 0; i < boxes.length; i += BOX) {
    other.boxes[i] = -(boxes[i + 3] as number);
    other.boxes[i + 3] = -(boxes[i] as number);
  }
  return other;
}

/**
 * Squared distance between two boxes; 0 where they meet. Along an axis their middles are apart by their halves and the gap together. A search asks
 * for tens of thousands, in no order that a processor could foresee: so there is no branch.
 */
export function squaredGap(p: Float64Array, i: number, q: Float64Array, k: number): number {
  const x = fourGaps(p[i] as number, p[i + 3] as number, q[k] as number, q[k + 3] as number);
  const y = fourGaps(
    p[i + 1] as number,
    p[i + 4] as number,
    q[k + 1] as number,
    q[k + 4] as number,
  );
  const z = fourGaps(
    p[i + 2] as number,
    p[i + 5] as number,
    q[k + 2] as number,
    q[k + 5] as number,
  );
  return (x * x + y * y + z * z) / 16;
}

/** Four times the gap between two ranges; 0 where they meet. */
function fourGaps(low: number, high: number, otherLow: number, otherHigh: number): number {
  const apart =
    Math.abs(low + high - (otherLow + otherHigh)) - (high - low + (otherHigh - otherLow));
  return apart + Math.abs(apart);
}
