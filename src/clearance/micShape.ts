import type { Capsule } from '../geometry/capsule.ts';
import type { SideSign } from '../player/hands.ts';
import type { MicSolid } from '../rig/placed.ts';
import { BOX } from './sweptMoves.ts';

/** Solids a mic may have: the search keeps sets of them as bits. */
export const MOST_SOLIDS = 30;

/** A mic's capsules as rows of numbers in the hand space of one side, with boxes, for the search. */
export interface MicShape {
  readonly count: number;
  /** Six numbers a capsule: both ends of its axis. */
  readonly axes: Float64Array;
  readonly radii: Float64Array;
  /** Boxes round each capsule, and round all of them at the end. */
  readonly boxes: Float64Array;
}

export function micShape(solids: readonly MicSolid[], sign: SideSign): MicShape {
  const count = solids.length;
  if (count > MOST_SOLIDS)
    throw new RangeError(`a mic of at most ${MOST_SOLIDS} solids, not ${count}`);
  const shape = {
    count,
    axes: new Float64Array(count * 6),
    radii: new Float64Array(count),
    boxes: new Float64Array((count + 1) * BOX),
  };
  const whole = count * BOX;
  shape.boxes.fill(Number.POSITIVE_INFINITY, whole, whole + 3);
  shape.boxes.fill(Number.NEGATIVE_INFINITY, whole + 3, whole + BOX);
  for (const [index, { capsule }] of solids.entries()) {
    shape.axes.set(axisRow(capsule, sign), index * 6);
    shape.radii[index] = capsule.radius;
    for (let axis = 0; axis < 3; axis++) {
      const a = shape.axes[index * 6 + axis] as number;
      const b = shape.axes[index * 6 + 3 + axis] as number;
      const low = Math.min(a, b) - capsule.radius;
      const high = Math.max(a, b) + capsule.radius;
      shape.boxes[index * BOX + axis] = low;
      shape.boxes[index * BOX + 3 + axis] = high;
      shape.boxes[whole + axis] = Math.min(shape.boxes[whole + axis] as number, low);
      shape.boxes[whole + 3 + axis] = Math.max(shape.boxes[whole + 3 + axis] as number, high);
    }
  }
  return shape;
}

const axisRow = ({ a, b }: Capsule, sign: SideSign): readonly number[] => [
  sign * a.x,
  a.y,
  a.z,
  sign * b.x,
  b.y,
  b.z,
];

/** Squared distance between two boxes; 0 where they meet. */
export function squaredGap(p: Float64Array, i: number, q: Float64Array, k: number): number {
  let sum = 0;
  const x = Math.max(
    (p[i] as number) - (q[k + 3] as number),
    (q[k] as number) - (p[i + 3] as number),
  );
  if (x > 0) sum = x * x;
  const y = Math.max(
    (p[i + 1] as number) - (q[k + 4] as number),
    (q[k + 1] as number) - (p[i + 4] as number),
  );
  if (y > 0) sum += y * y;
  const z = Math.max(
    (p[i + 2] as number) - (q[k + 5] as number),
    (q[k + 2] as number) - (p[i + 5] as number),
  );
  return z > 0 ? sum + z * z : sum;
}
