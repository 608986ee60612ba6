import { dot, length, perpendicular, subtract, type Vec3 } from '../geometry/vector.ts';
import { isDrum, type Piece } from '../layout/pieces/piece.ts';
import { type Surface, surfaceOf } from '../rig/surface.ts';
import type { Mm } from '../units/quantity.ts';

/** Nearer over its head than this a mic is in the way of the head. Common practice, no source. */
export const OVER_HEAD: Mm = 20;

/** Mounts are kept in hundredths of a mm. */
const ROUNDED: Mm = 0.01;

interface Head {
  readonly surface: Surface;
  readonly depth: Mm;
  readonly room: Mm;
}

/**
 * Rule N8, room over heads: where the tip of a mic is over the head of a drum, it is at least 20 mm over it, or as much as it is already. A mic that
 * stands in a piece has no place already.
 */
export class HeadRoom {
  private readonly heads: readonly Head[];

  /** `already` is where the tip is now; undefined when the mic stands in a piece there. */
  constructor(pieces: readonly Piece[], already: Vec3 | undefined) {
    this.heads = pieces.filter(isDrum).map((drum) => {
      const surface = surfaceOf(drum);
      const over = already && overHead(surface, already);
      const room = over && over.inside >= 0 && over.height >= 0 ? over.height : OVER_HEAD;
      return { surface, depth: drum.depth, room: Math.min(OVER_HEAD, room) };
    });
  }

  /** How far a tip has to go at least until it is not too near over any head, mm; undefined where it is not. A tip in a drum has to come out. */
  depthAt(tip: Vec3): Mm | undefined {
    let depth: Mm | undefined;
    for (const { surface, depth: below, room } of this.heads) {
      const { height, inside } = overHead(surface, tip);
      const missing = Math.min(room - height, inside, height + below);
      if (missing > Math.max(ROUNDED, depth ?? 0)) depth = missing;
    }
    return depth;
  }
}

/** How far a point is over the plane of a head, and how far inside its edge. */
function overHead({ centre, normal, radius }: Surface, point: Vec3) {
  const from = subtract(point, centre);
  return { height: dot(from, normal), inside: radius - length(perpendicular(from, normal)) };
}
