import { verdictOf } from '../clearance/clearances.ts';
import { atSwing, touching } from '../clearance/micClearance.ts';
import type { Movement, MovingPart, Nearest, Verdict } from '../clearance/nearest.ts';
import { TOLERANCE } from '../clearance/searchBounds.ts';
import { nearestSwing, type Swing, swingsOf } from '../clearance/swing.ts';
import { swingMoment, swungAt } from '../clearance/swungAt.ts';
import { closestBetweenSegments, type Segment } from '../geometry/segments.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { MicSolid, PlacedMic } from '../rig/placed.ts';
import type { Surface } from '../rig/surface.ts';
import type { Mm } from '../units/quantity.ts';
import { type ArmPosition, type ArmRadii, armAt, radiiOf } from './sweep.ts';

/** What moves at one moment of a move or a swing, and how near it is to a mic then. Kit frame, mm. */
export interface Moment extends Gap {
  /** The arm of a stroke or a travel. */
  readonly arm: ArmPosition | null;
  /** The cymbal of a swing. */
  readonly cymbal: Surface | null;
  readonly verdict: Verdict;
}

interface Gap {
  /** The part that is nearest. */
  readonly part: MovingPart;
  readonly clearance: Mm;
  /** On the mic's surface and on the part's surface. */
  readonly onMic: Vec3;
  readonly onMoving: Vec3;
}

/** What comes nearest to a mic, and where that is. */
type Near = Pick<Nearest, 'movement' | 'onMoving'>;

/** When, from 0 to 1, a move or a swing comes nearest to the mic; null for a leg, which is at rest, and for what is not there. */
export function nearestMoment({ pieces }: Pick<Layout, 'pieces'>, near: Near): number | null {
  if ('at' in near.movement) return near.movement.at;
  const swing = swingOf(pieces, near.movement);
  return swing ? swingMoment(swing, near.onMoving) : null;
}

/**
 * A moment (`at` from 0 to 1) of a stroke, a travel or a cymbal's swing toward the place where it is nearest (W1) against a mic; null for legs and
 * for a mic without solids.
 */
export function momentOf(
  layout: Layout,
  { solids }: Pick<PlacedMic, 'solids'>,
  near: Near,
  at: number,
): Moment | null {
  const swing = swingOf(layout.pieces, near.movement);
  const cymbal = swing ? swungAt(swing, near.onMoving, at) : null;
  const arm = armAt(layout, near.movement, at);
  const gap = cymbal ? cymbalGap(cymbal, solids) : arm && armGap(arm, radiiOf(layout), solids);
  return gap && { ...gap, arm, cymbal, verdict: verdictOf(gap.clearance, layout.margin) };
}

const swingOf = (pieces: Layout['pieces'], movement: Movement): Swing | undefined =>
  movement.kind === 'swing'
    ? swingsOf(pieces).find(({ cymbal }) => cymbal === movement.cymbal)
    : undefined;

function cymbalGap(cymbal: Swing, solids: readonly MicSolid[]): Gap | null {
  const search = { limit: Number.POSITIVE_INFINITY, tolerance: TOLERANCE };
  const gap = nearestSwing([cymbal], solids, search);
  const near = gap && atSwing(gap, solids);
  return near ? { ...near, clearance: gap.clearance } : null;
}

function armGap(arm: ArmPosition, radii: ArmRadii, solids: readonly MicSolid[]): Gap | null {
  let best: Gap | null = null;
  for (const [part, segment] of partsOf(arm)) {
    for (const solid of solids) {
      const { a, b, radius } = solid.capsule;
      const { distance } = closestBetweenSegments([a, b], segment);
      const clearance = distance - radius - radii[part];
      if (best && clearance >= best.clearance) continue;
      best = { part, clearance, ...touching(solid, segment, radii[part]) };
    }
  }
  return best;
}

const partsOf = ({ elbow, grip, butt, tip }: ArmPosition): readonly [keyof ArmRadii, Segment][] => [
  ['stick', [butt, tip]],
  ['hand', [grip, grip]],
  ['forearm', [elbow, grip]],
];
