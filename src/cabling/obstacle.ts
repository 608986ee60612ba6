import { type ConvexPolygon, convexHull } from '../geometry/convexPolygon.ts';
import { grown } from '../geometry/grow.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';

/** What keeps a cable off a part of the deck. */
export type ObstacleKind =
  | 'kick'
  | 'pedal'
  | 'footSpace'
  | 'throne'
  | 'hub'
  | 'foot'
  | 'base'
  | 'plate'
  | 'box';

/** A part of the deck that cables keep off. Deck frame. */
export interface Obstacle {
  readonly kind: ObstacleKind;
  /** The piece or mic it belongs to; null for the box. */
  readonly owner: Id | null;
  /** What stands there. */
  readonly body: ConvexPolygon<'deck'>;
  /** Everything within the distance to keep from it: no route enters this. */
  readonly outline: ConvexPolygon<'deck'>;
}

/** How obstacles of one layout are made: the distance to keep (mm) and the way from the kit frame to the deck frame. */
export interface Keeping {
  readonly keepAway: Mm;
  readonly toDeck: (p: Vec2) => Vec2<'deck'>;
}

/**
 * The obstacle round points of the kit frame and everything within `radius` of them; none when that is no more than a line.
 * It is grown before it is turned, so a kit turned on its deck has the same obstacles, turned.
 */
export function obstacleRound(
  { kind, owner, points, radius }: ObstacleShape,
  { keepAway, toDeck }: Keeping,
): Obstacle[] {
  const body = convexHull<'deck'>(grown(points, radius).map(toDeck));
  const outline = convexHull<'deck'>(grown(points, radius + keepAway).map(toDeck));
  return body && outline ? [{ kind, owner, body, outline }] : [];
}

interface ObstacleShape {
  readonly kind: ObstacleKind;
  readonly owner: Id | null;
  readonly points: readonly Vec2[];
  readonly radius: Mm;
}
