import {
  type RockingDisc,
  rockingDiscDistance,
  type Search,
  segmentToRockingDisc,
} from '../geometry/rockingDisc.ts';
import { type Vec3, vec } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import { isCymbal, type Piece } from '../layout/pieces/piece.ts';
import type { MicSolid } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';

/** Rule W1: a struck cymbal swings 20 degrees either way about its centre. */
export const SWING = 20;

export interface Swing extends RockingDisc {
  readonly cymbal: Id;
}

export const swingsOf = (pieces: readonly Piece[]): readonly Swing[] =>
  pieces.filter(isCymbal).map((piece) => ({
    cymbal: piece.id,
    ...surfaceOf(piece),
    sin: sinDeg(SWING),
    cos: cosDeg(SWING),
  }));

/** How near one of the mic's solids comes to a swinging cymbal. */
export interface SwingGap {
  readonly swing: Swing;
  readonly solid: number;
  readonly clearance: Mm;
  /** The point of the solid's axis that is nearest. */
  readonly point: Vec3;
}

/** The nearest swing below the limit; undefined when all stay at or above it (less the tolerance). */
export function nearestSwing(
  swings: readonly Swing[],
  solids: readonly MicSolid[],
  { limit, tolerance }: Search,
): SwingGap | undefined {
  let best: SwingGap | undefined;
  // One object for all: most are dismissed at once.
  const within = { limit, tolerance };
  const search = (swing: Swing, solid: number): void => {
    const at = solids[solid];
    if (!at) return;
    const { capsule } = at;
    within.limit = (best?.clearance ?? limit) + capsule.radius;
    const gap = segmentToRockingDisc(swing, capsule, within);
    if (gap) {
      best = { swing, solid, clearance: gap.distance - capsule.radius, point: gap.point };
    }
  };
  // What is nearest by its middle comes first: then the others seldom have to be looked at closely.
  const likely = nearestByMiddle(swings, solids);
  if (likely) search(likely.swing, likely.solid);
  for (const swing of swings) {
    for (let solid = 0; solid < solids.length; solid++) {
      if (swing !== likely?.swing || solid !== likely.solid) search(swing, solid);
    }
  }
  return best;
}

function nearestByMiddle(
  swings: readonly Swing[],
  solids: readonly MicSolid[],
): Pick<SwingGap, 'swing' | 'solid'> | undefined {
  let nearest: Pick<SwingGap, 'swing' | 'solid'> | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (let solid = 0; solid < solids.length; solid++) {
    const { a, b, radius } = (solids[solid] as MicSolid).capsule;
    const middle = vec((a.x + b.x) / 2, (a.y + b.y) / 2, (a.z + b.z) / 2);
    for (const swing of swings) {
      const clearance = rockingDiscDistance(swing, middle) - radius;
      if (clearance >= least) continue;
      least = clearance;
      nearest = { swing, solid };
    }
  }
  return nearest;
}
