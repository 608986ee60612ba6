import { type ConvexPolygon, convexHull, overlaps } from '../geometry/convexPolygon.ts';
import { grown } from '../geometry/grow.ts';
import { listed } from '../geometry/listed.ts';
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
  /** What stands there; inside the outline. */
  readonly body: ConvexPolygon<'deck'>;
  /** Everything within the distance to keep from it: no route enters this. */
  readonly outline: ConvexPolygon<'deck'>;
}

/** Whether what stands there shares a place with a polygon. Most bodies are never asked for. */
export const standsIn = (
  polygon: ConvexPolygon<'deck'>,
  obstacle: Pick<Obstacle, 'outline' | 'body'>,
): boolean => overlaps(polygon, obstacle.outline) && overlaps(polygon, obstacle.body);

/** How obstacles of one layout are made: the distance to keep (mm) and the way from the kit frame to the deck frame. */
export interface Keeping {
  readonly keepAway: Mm;
  readonly toDeck: (p: Vec2) => Vec2<'deck'>;
}

/**
 * The obstacle round points of the kit frame and everything within `radius` of them; none when that is no more than a line.
 * It is grown before it is turned, so a kit turned on its deck has the same obstacles, turned.
 */
export function obstacleRound(shape: ObstacleShape, keeping: Keeping): Obstacle[] {
  const { radius } = shape;
  const isLine = !(radius > 0) && !hullRound(shape, radius, keeping);
  const outline = isLine ? undefined : hullRound(shape, radius + keeping.keepAway, keeping);
  return outline ? [new RoundObstacle(shape, outline, keeping)] : [];
}

interface ObstacleShape {
  readonly kind: ObstacleKind;
  readonly owner: Id | null;
  readonly points: readonly Vec2[];
  readonly radius: Mm;
}

const hullRound = (
  { points }: ObstacleShape,
  distance: Mm,
  { toDeck }: Keeping,
): ConvexPolygon<'deck'> | undefined => convexHull<'deck'>(listed(grown(points, distance), toDeck));

/** Its body is made when it is first asked for. */
class RoundObstacle implements Obstacle {
  readonly kind: ObstacleKind;
  readonly owner: Id | null;
  readonly outline: ConvexPolygon<'deck'>;
  readonly #shape: ObstacleShape;
  readonly #keeping: Keeping;
  #body: ConvexPolygon<'deck'> | undefined;

  constructor(shape: ObstacleShape, outline: ConvexPolygon<'deck'>, keeping: Keeping) {
    this.kind = shape.kind;
    this.owner = shape.owner;
    this.outline = outline;
    this.#shape = shape;
    this.#keeping = keeping;
  }

  get body(): ConvexPolygon<'deck'> {
    this.#body ??= hullRound(this.#shape, this.#shape.radius, this.#keeping) ?? this.outline;
    return this.#body;
  }
}
