import { length, scale, type Vec3 } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';

/** What is asked of all poses of a mic that lie near the one looked at. */
export interface Question {
  /** Whether the clearance is below this, mm. */
  readonly threshold: Mm;
  /** Per solid: how far any of its points may be from its place in the pose looked at, mm; and the most of them. */
  readonly rooms: readonly Mm[];
  readonly room: Mm;
  /** Without room: how far above the threshold a clearance may be and still be told as below it. */
  readonly tolerance: Mm;
  /** Bounds the room in one direction. */
  readonly drift?: Drift;
}

/** `below`: the clearance of every pose is below the threshold; `clear`: of none; `open`: that can't be told for all of them at once. */
export type Finding = 'below' | 'clear' | 'open';

/** How far poses differ in one direction. */
export interface Drift {
  /** The most that the point at `s` (0 to 1) of a solid's axis is moved along a unit vector, in any of the poses, mm. */
  along(solid: number, s: number, way: Vec3): Mm;
  /** Told of the bound on the clearances that came of the last answer, mm, and how much of the room to the side is in it, as a share. */
  bounded(bound: Mm, aside: number): void;
}

/** A point of a mic, and how far it may be moved. */
interface Loose {
  readonly solid: number;
  readonly s: number;
  readonly room: Mm;
}

/** Points nearer than this have no direction between them. */
const MEETING: Mm = 1e-9;

/**
 * Rule C6: a bound on the clearance of a point of a mic to a fixed point, in all poses, when `gap` leads from one to the other and `radii` lie between:
 * it is moved away by at most its drift, and to the side by at most its room. Infinite where that says no more than the room alone.
 */
export function driftBound(drift: Drift, { solid, s, room }: Loose, gap: Vec3, radii: Mm): Mm {
  const apart = length(gap);
  if (apart < MEETING) return Number.POSITIVE_INFINITY;
  const away = drift.along(solid, s, scale(gap, -1 / apart));
  const straight = Math.max(apart + away, room - apart);
  const most = Math.sqrt(straight * straight + room * room);
  if (most >= apart + room) return Number.POSITIVE_INFINITY;
  drift.bounded(most - radii, room / most);
  return most - radii;
}
