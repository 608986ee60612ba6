import {
  nearestOnRockingDisc,
  type RockingGap,
  rockingDiscDistance,
  segmentToRockingDisc,
} from '../geometry/rockingDisc.ts';
import { SegmentGap } from '../geometry/segments.ts';
import { distance, subtract, type Vec3, vec } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';
import type { Motion } from './micClearance.ts';
import type { MicPose } from './micPose.ts';
import { squaredToPoint } from './micPose.ts';
import { driftBound, type Finding, type Question } from './question.ts';
import type { Swing } from './swing.ts';

/** Swings are measured to within this share of the room. */
const EXACT = 1 / 8;

/** Legs and swinging cymbals: what has no stretches of time to sort out. */
export class StillThings {
  private readonly swings: readonly Swing[];
  private readonly limbs: Float64Array;
  private readonly limbRadii: readonly Mm[];
  private readonly gap = new SegmentGap();
  /** Bounds on the clearances of all poses to what was measured so far. */
  private low: Mm = 0;
  private high: Mm = 0;

  constructor({ legs, swings }: Pick<Motion, 'legs' | 'swings'>) {
    this.swings = swings;
    const limbs = legs.flatMap(({ thigh, shin }) => [thigh, shin]);
    this.limbs = Float64Array.from(limbs.flatMap(({ a, b }) => [a.x, a.y, a.z, b.x, b.y, b.z]));
    this.limbRadii = limbs.map(({ radius }) => radius);
  }

  ask(pose: MicPose, question: Question): Finding {
    const { threshold, room } = question;
    this.low = Number.POSITIVE_INFINITY;
    this.high = Number.POSITIVE_INFINITY;
    this.measureLimbs(pose, question);
    for (const swing of this.swings) {
      const far = rockingDiscDistance(swing, pose.centre) - pose.size;
      if (far < threshold + room + looseness(question)) this.measureSwing(swing, pose, question);
    }
    if (this.high <= threshold) return 'below';
    if (this.low >= threshold) return 'clear';
    return room === 0 ? 'below' : 'open';
  }

  private measureLimbs({ axes, radii, centre, size }: MicPose, question: Question): void {
    const { threshold, rooms, room, drift } = question;
    for (const [limb, radius] of this.limbRadii.entries()) {
      const near = Math.max(0, size + radius + threshold + room);
      if (squaredToPoint(this.limbs, limb * 6, centre) >= near * near) continue;
      for (let solid = 0; solid < radii.length; solid++) {
        const { gap } = this;
        const both = radius + (radii[solid] as number);
        const clearance = gap.measure(axes, solid * 6, this.limbs, limb * 6) - both;
        const own = rooms[solid] as number;
        this.take(clearance - own, clearance + own);
        if (!drift || clearance > threshold) continue;
        const point = { solid, s: gap.s, room: own };
        this.take(
          Number.POSITIVE_INFINITY,
          driftBound(drift, point, vec(gap.dx, gap.dy, gap.dz), both),
        );
      }
    }
  }

  private measureSwing(swing: Swing, { axes, radii }: MicPose, question: Question): void {
    const { threshold, rooms, drift } = question;
    const loose = looseness(question);
    const point = (i: number): Vec3 => vec(axes[i] ?? 0, axes[i + 1] ?? 0, axes[i + 2] ?? 0);
    for (const [solid, radius] of radii.entries()) {
      const own = rooms[solid] as number;
      const ends = { a: point(solid * 6), b: point(solid * 6 + 3) };
      const search = { limit: threshold + own + loose + radius, tolerance: loose };
      const found = segmentToRockingDisc(swing, ends, search);
      if (!found) continue;
      const clearance = found.distance - radius;
      this.take(clearance - loose - own, clearance + own);
      if (!drift || clearance > threshold || found.distance <= 0) continue;
      const onAxis = { solid, s: share(ends, found), room: own };
      const gap = subtract(nearestOnRockingDisc(swing, found.point), found.point);
      this.take(Number.POSITIVE_INFINITY, driftBound(drift, onAxis, gap, radius));
    }
  }

  private take(low: Mm, high: Mm): void {
    if (low < this.low) this.low = low;
    if (high < this.high) this.high = high;
  }
}

const looseness = ({ room, tolerance }: Question): Mm => Math.max(tolerance, EXACT * room);

/** Where on a segment the point found lies. */
function share({ a, b }: { readonly a: Vec3; readonly b: Vec3 }, { point }: RockingGap): number {
  const size = distance(a, b);
  return size > 0 ? distance(a, point) / size : 0;
}
