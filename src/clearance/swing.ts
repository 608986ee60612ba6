import { type RockingDisc, segmentToRockingDisc } from '../geometry/rockingDisc.ts';
import type { Vec3 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import { isCymbal, type Piece } from '../layout/pieces/piece.ts';
import type { MicSolid } from '../rig/placed.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Mm } from '../units/quantity.ts';

/** Rule W1: a struck cymbal swings 20 degrees either way about its centre. */
const SWING = 20;

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

/** The nearest swing below `limit` mm; undefined when all stay at or above it (less `tolerance`). */
export function nearestSwing(
  swings: readonly Swing[],
  solids: readonly MicSolid[],
  limit: Mm,
  tolerance: Mm,
): SwingGap | undefined {
  let best: SwingGap | undefined;
  for (const swing of swings) {
    for (const [solid, { capsule }] of solids.entries()) {
      const bound = best?.clearance ?? limit;
      if (ballGap(swing, capsule.a, capsule.b) - capsule.radius >= bound) continue;
      const { distance, point } = segmentToRockingDisc(swing, [capsule.a, capsule.b], tolerance);
      const clearance = distance - capsule.radius;
      if (clearance < bound) best = { swing, solid, clearance, point };
    }
  }
  return best;
}

/** Below the distance from a segment to the ball that holds the whole swing. */
function ballGap({ centre, radius }: Swing, a: Vec3, b: Vec3): Mm {
  const mx = (a.x + b.x) / 2 - centre.x;
  const my = (a.y + b.y) / 2 - centre.y;
  const mz = (a.z + b.z) / 2 - centre.z;
  return Math.hypot(mx, my, mz) - Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z) / 2 - radius;
}
