import { type ConvexPolygon, convexHull, stretchInside } from '../geometry/convexPolygon.ts';
import { listed } from '../geometry/listed.ts';
import { leftOf } from '../geometry/orientation.ts';
import { gap } from '../geometry/plan.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Deck, Stairs } from '../layout/deck.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import { stairsMiddle, stairsOutward } from '../rig/stairs.ts';
import type { Mm } from '../units/quantity.ts';
import { type Obstacle, standsIn } from './obstacle.ts';

/** Width of the lane kept free, and depth of what is kept free before stairs. Common practice, no source. */
const LANE_WIDTH: Mm = 600;

/** The middle line of the lane: from the throne's back to the stairs, deck frame. */
interface LaneLine {
  readonly from: Vec2<'deck'>;
  readonly to: Vec2<'deck'>;
  readonly length: Mm;
}

function laneLine({ deck, pieces }: Layout): LaneLine | undefined {
  const throne = pieces.find((piece) => piece.kind === 'throne');
  const from = toDeck(deck, { x: 0, y: throne ? -throne.diameter / 2 : 0 });
  const middles = deck.stairs
    .filter((stairs) => beyondEdge(stairs, deck) < stairs.width)
    .map((stairs) => stairsMiddle(stairs, deck));
  const [first, ...others] = middles;
  if (!first) return undefined;
  const to = others.reduce(
    (best, next) => (gap(from, next) < gap(from, best) ? next : best),
    first,
  );
  const length = gap(from, to);
  return length === 0 ? undefined : { from, to, length };
}

/**
 * A1 The access lane is a strip 600 mm wide, straight from the throne's back (the kit's origin where there is no throne) to
 *    the middle of the nearest stairs that stand at an edge. It goes round nothing. Without stairs, or with the throne on them,
 *    there is none. Deck frame.
 */
export function accessLane(layout: Layout): ConvexPolygon<'deck'> | undefined {
  const line = laneLine(layout);
  if (!line) return undefined;
  const { from, to, length } = line;
  const across = LANE_WIDTH / 2 / length;
  const sideX = (from.y - to.y) * across;
  const sideY = (to.x - from.x) * across;
  return convexHull<'deck'>([
    { x: from.x + sideX, y: from.y + sideY },
    { x: from.x - sideX, y: from.y - sideY },
    { x: to.x - sideX, y: to.y - sideY },
    { x: to.x + sideX, y: to.y + sideY },
  ]);
}

/** How far stairs reach beyond the nearer end of their edge; 0 or less where they don't. */
export function beyondEdge({ edge, offset, width }: Stairs, deck: Deck): Mm {
  const length = edge === 'front' || edge === 'back' ? deck.width : deck.depth;
  return Math.abs(offset) + width / 2 - length / 2;
}

/** A4 A cable crosses stairs where it lies before them: as wide as they are, 600 mm from the edge to both sides. Deck frame. */
export function beforeStairs(stairs: Stairs, deck: Deck): ConvexPolygon<'deck'> {
  const middle = stairsMiddle(stairs, deck);
  const out = stairsOutward[stairs.edge];
  const half = stairs.width / 2;
  const corners = [-1, 1].flatMap((far) =>
    [-1, 1].map((aside) => ({
      x: middle.x + far * LANE_WIDTH * out.x - aside * half * out.y,
      y: middle.y + far * LANE_WIDTH * out.y + aside * half * out.x,
    })),
  );
  const strip = convexHull<'deck'>(corners);
  if (!strip) throw new RangeError('Stairs have a width.');
  return strip;
}

/** Something that stands in the lane: whose it is (null: the box), where, and how far it must go sideways to leave it, mm. */
export interface LaneBlock {
  readonly owner: Id | null;
  readonly place: Vec2<'deck'>;
  readonly overlap: Mm;
}

/**
 * A3 The lane is blocked by whatever stands on the deck inside it, but for the throne and the room for the player's feet; each thing is told
 *    once, at its part that must move the farthest.
 */
export function laneBlocks(layout: Layout, obstacles: readonly Obstacle[]): readonly LaneBlock[] {
  const lane = accessLane(layout);
  const line = laneLine(layout);
  if (!lane || !line) return [];
  const worst = new Map<Id | null, LaneBlock>();
  for (const obstacle of obstacles) {
    const { kind, owner } = obstacle;
    if (kind === 'throne' || kind === 'footSpace' || !standsIn(lane, obstacle)) continue;
    const { body } = obstacle;
    const aside = listed(
      body.corners,
      (corner) => leftOf(line.from, line.to, corner) / line.length,
    );
    const overlap = LANE_WIDTH / 2 + Math.min(Math.max(...aside), -Math.min(...aside));
    const { low, high } = body;
    const place = { x: (low.x + high.x) / 2, y: (low.y + high.y) / 2 };
    const known = worst.get(owner);
    if (!known || known.overlap < overlap) worst.set(owner, { owner, place, overlap });
  }
  return [...worst.values()];
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
  let before = route[0];
  for (const p of route) {
    const stretch = stretchInside(lane, before ?? p, p);
    before = p;
    if (!stretch) continue;
    const a = stretch[0];
    const b = stretch[1];
    place ??= { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    length += gap(a, b);
  }
  return place && { place, length };
}
