import { verdictOf } from '../clearance/clearances.ts';
import { touching } from '../clearance/micClearance.ts';
import type { Movement, Verdict } from '../clearance/nearest.ts';
import { closestBetweenSegments, type Segment } from '../geometry/segments.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { type ArmPosition, type ArmRadii, armAt, radiiOf } from './sweep.ts';

/** An arm at one moment of a move, and how near it is to a mic then. Kit frame, mm. */
export interface Moment {
  readonly arm: ArmPosition;
  /** The part of the arm that is nearest. */
  readonly part: keyof ArmRadii;
  readonly clearance: Mm;
  readonly verdict: Verdict;
  /** On the mic's surface and on the part's surface. */
  readonly onMic: Vec3;
  readonly onMoving: Vec3;
}

/** A moment (`at` from 0 to 1) of a stroke or a travel against a mic; null for legs and cymbals, and for a mic without solids. */
export function momentOf(
  layout: Layout,
  mic: Pick<PlacedMic, 'solids'>,
  movement: Movement,
  at: number,
): Moment | null {
  const arm = armAt(layout, movement, at);
  if (!arm) return null;
  const radii = radiiOf(layout);
  let best: Moment | null = null;
  for (const [part, segment] of partsOf(arm)) {
    for (const solid of mic.solids) {
      const { a, b, radius } = solid.capsule;
      const { distance } = closestBetweenSegments([a, b], segment);
      const clearance = distance - radius - radii[part];
      if (best && clearance >= best.clearance) continue;
      const verdict = verdictOf(clearance, layout.margin);
      best = { arm, part, clearance, verdict, ...touching(solid, segment, radii[part]) };
    }
  }
  return best;
}

const partsOf = ({ elbow, grip, butt, tip }: ArmPosition): readonly [keyof ArmRadii, Segment][] => [
  ['stick', [butt, tip]],
  ['hand', [grip, grip]],
  ['forearm', [elbow, grip]],
];
