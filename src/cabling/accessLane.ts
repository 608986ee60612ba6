import { type ConvexPolygon, convexHull, stretchInside } from '../geometry/convexPolygon.ts';
import { gap } from '../geometry/plan.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import { stairsMiddle } from '../rig/stairs.ts';
import type { Mm } from '../units/quantity.ts';

/** Width of the lane kept free. Common practice, no source. */
const LANE_WIDTH: Mm = 600;

/**
 * A1 The access lane is a strip 600 mm wide, straight from the throne's back (the kit's origin where there is no throne) to
 *    the middle of the nearest stairs. It goes round nothing: what stands in it is seen on the plan. Without stairs, or with the
 *    throne on them, there is none. Deck frame.
 */
export function accessLane({ deck, pieces }: Layout): ConvexPolygon<'deck'> | undefined {
  const throne = pieces.find((piece) => piece.kind === 'throne');
  const back = toDeck(deck, { x: 0, y: throne ? -throne.diameter / 2 : 0 });
  const middles = deck.stairs.map((stairs) => stairsMiddle(stairs, deck));
  const [first, ...others] = middles;
  if (!first) return undefined;
  const to = others.reduce(
    (best, next) => (gap(back, next) < gap(back, best) ? next : best),
    first,
  );
  const length = gap(back, to);
  if (length === 0) return undefined;
  const across = LANE_WIDTH / 2 / length;
  const [sideX, sideY] = [(back.y - to.y) * across, (to.x - back.x) * across];
  return convexHull<'deck'>([
    { x: back.x + sideX, y: back.y + sideY },
    { x: back.x - sideX, y: back.y - sideY },
    { x: to.x - sideX, y: to.y - sideY },
    { x: to.x + sideX, y: to.y + sideY },
  ]);
}

/** Where a cable crosses a lane: the middle of its first stretch in it, and how much of it lies there, mm. */
export interface LaneCrossing {
  readonly place: Vec2<'deck'>;
  readonly length: Mm;
}

/** A2 A route crosses the lane when some of it lies inside; running along the lane's side does not. */
export function laneCrossing(
  lane: ConvexPolygon<'deck'>,
  route: readonly Vec2<'deck'>[],
): LaneCrossing | undefined {
  let place: Vec2<'deck'> | undefined;
  let length = 0;
  for (const [i, p] of route.entries()) {
    const stretch = stretchInside(lane, route[i - 1] ?? p, p);
    if (!stretch) continue;
    const [a, b] = stretch;
    place ??= { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    length += gap(a, b);
  }
  return place && { place, length };
}
