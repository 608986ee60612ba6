import { dot, length, perpendicular, subtract, type Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import { isDrum, type Piece } from '../layout/pieces/piece.ts';
import type { MicSolid } from '../rig/placed.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import type { Mm } from '../units/quantity.ts';

/** Nearer over its head than this a mic is in the way of the head. Common practice, no source. */
export const OVER_HEAD: Mm = 20;

/** Mounts are kept in hundredths of a mm. */
const ROUNDED: Mm = 0.01;
/** Halvings that bring the room that a mic has to far less than that. */
const HALVINGS = 20;
/** Cuts of an axis to two thirds that bring a place on it to far less than that. */
const CUTS = 32;

interface Head {
  readonly drum: Id;
  readonly surface: Surface;
  readonly depth: Mm;
  readonly room: Mm;
}

/**
 * Rule N8, room over heads: where any part of a mic and its mount, its clip's own arm left out, is over the head of a drum, it is at least 20 mm over
 * it, or as much as the mic is already. A mic that stands in a piece has no place already.
 */
export class HeadRoom {
  private readonly heads: readonly Head[];

  /** `already` is what the mic is made of where it is now; undefined when it stands in a piece there. */
  constructor(pieces: readonly Piece[], already: readonly MicSolid[] | undefined) {
    this.heads = pieces.filter(isDrum).map((drum) => {
      const head = { drum: drum.id, surface: surfaceOf(drum), depth: drum.depth, room: OVER_HEAD };
      return already ? { ...head, room: roomOf(already, head) } : head;
    });
  }

  /** The room that is asked for over the head of a drum, mm. */
  over(drum: Id): Mm {
    return this.heads.find((head) => head.drum === drum)?.room ?? OVER_HEAD;
  }

  /** How far something of a mic has to go at least until nothing is too near over any head, mm; undefined where it is not. What is in a drum has to come out. */
  depthAt(solids: readonly MicSolid[]): Mm | undefined {
    let depth: Mm | undefined;
    for (const head of this.heads) {
      const missing = missingOver(solids, head);
      if (missing > Math.max(ROUNDED, depth ?? 0)) depth = missing;
    }
    return depth;
  }
}

/** The room that a mic has over a head, 20 mm at most; 20 mm where it is in the drum. */
function roomOf(solids: readonly MicSolid[], head: Head): Mm {
  const isMissing = (room: Mm): boolean => missingOver(solids, { ...head, room }) > 0;
  if (!isMissing(OVER_HEAD) || isMissing(0)) return OVER_HEAD;
  let [has, lacks] = [0, OVER_HEAD];
  for (let k = 0; k < HALVINGS; k += 1) {
    const room = (has + lacks) / 2;
    if (isMissing(room)) lacks = room;
    else has = room;
  }
  return has;
}

function missingOver(solids: readonly MicSolid[], head: Head): Mm {
  let most = 0;
  for (const { part, capsule } of solids) {
    if (part !== 'clipArm') most = Math.max(most, new AxisOver(capsule, head).missing());
  }
  return most;
}

/** The axis of a solid as it lies over a head: heights over its plane, and places on that plane from its middle. */
class AxisOver {
  private readonly low: Mm;
  private readonly rise: Mm;
  private readonly from: Vec3;
  private readonly way: Vec3;
  /** How high, how far aside and how far below the axis must be for its solid to be out of the way: over it, beside it or under its drum. */
  private readonly above: Mm;
  private readonly beside: Mm;
  private readonly under: Mm;

  constructor({ a, b, radius }: MicSolid['capsule'], { surface, depth, room }: Head) {
    const { centre, normal } = surface;
    const [start, end] = [subtract(a, centre), subtract(b, centre)];
    this.low = dot(start, normal);
    this.rise = dot(end, normal) - this.low;
    this.from = perpendicular(start, normal);
    this.way = subtract(perpendicular(end, normal), this.from);
    this.above = room + radius;
    this.beside = surface.radius + radius;
    this.under = depth + radius;
  }

  /**
   * How far its point that is most in the way has to go at least, mm; 0 or less when none is. The least of three ways out is concave along the axis, since the
   * distance from the drum's axis is convex: whatever third holds the lower of two places does not hold the top.
   */
  missing(): Mm {
    if (!this.mayMiss()) return 0;
    let [from, to] = [0, 1];
    for (let k = 0; k < CUTS; k += 1) {
      const third = (to - from) / 3;
      if (this.missingAt(from + third) < this.missingAt(to - third)) from += third;
      else to -= third;
    }
    return Math.max(this.missingAt(0), this.missingAt(1), this.missingAt((from + to) / 2));
  }

  /** Most of a mic is nowhere near most heads. */
  private mayMiss(): boolean {
    const top = this.low + this.rise;
    return (
      Math.min(this.low, top) < this.above &&
      Math.max(this.low, top) > -this.under &&
      length(this.from) - length(this.way) < this.beside
    );
  }

  private missingAt(t: number): Mm {
    const height = this.low + t * this.rise;
    const x = this.from.x + t * this.way.x;
    const y = this.from.y + t * this.way.y;
    const z = this.from.z + t * this.way.z;
    const aside = Math.sqrt(x * x + y * y + z * z);
    return Math.min(this.above - height, this.beside - aside, height + this.under);
  }
}
