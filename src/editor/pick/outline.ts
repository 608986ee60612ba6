import { gap, nearestOnSegment } from '../../geometry/plan.ts';
import { outsideOutline } from '../../geometry/planSegments.ts';
import type { Vec2 } from '../../geometry/vector.ts';
import type { Surface } from '../../rig/surface.ts';

/** What a finger can meet on the plan (kit frame, mm). */
export type Outline =
  | { readonly kind: 'disc'; readonly disc: Surface }
  | { readonly kind: 'line'; readonly a: Vec2; readonly b: Vec2; readonly radius: number }
  /** Convex, anticlockwise. */
  | { readonly kind: 'area'; readonly ring: readonly Vec2[] };

/** How far a spot lies outside an outline, mm; 0 inside. A leaning disc is met where it is seen: on its ellipse. */
export function awayFrom(outline: Outline, spot: Vec2): number {
  switch (outline.kind) {
    case 'line': {
      const nearest = nearestOnSegment(outline.a, outline.b, spot);
      return Math.max(0, gap(nearest, spot) - outline.radius);
    }
    case 'area':
      return Math.max(0, outsideOutline(outline.ring, spot));
    case 'disc':
      return awayFromDisc(outline.disc, spot);
  }
}

/** Least share of a disc's radius that is seen along its lean: a disc on edge can still be met. */
const LEAST_SEEN = 0.1;

/** Measured along the ray from the centre, where an ellipse is nearest to a circle's rule; exact for a level disc. */
function awayFromDisc({ centre, normal, radius }: Surface, spot: Vec2): number {
  const lean = Math.hypot(normal.x, normal.y);
  const dx = spot.x - centre.x;
  const dy = spot.y - centre.y;
  if (lean < 1e-9) return Math.max(0, Math.hypot(dx, dy) - radius);
  const along = (dx * normal.x + dy * normal.y) / lean;
  const across = (dy * normal.x - dx * normal.y) / lean;
  const seen = radius * Math.max(LEAST_SEEN, Math.abs(normal.z));
  const share = Math.hypot(along / seen, across / radius);
  return share <= 1 ? 0 : Math.hypot(along, across) * (1 - 1 / share);
}
