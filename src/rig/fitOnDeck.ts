import { convexHull } from '../geometry/convexPolygon.ts';
import { outsideOutline } from '../geometry/planSegments.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Deck } from '../layout/deck.ts';
import { toDegrees, wrapDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { deckOutline, toDeck } from './deckFrame.ts';
import type { Rig } from './placed.ts';
import { type Rest, restsOfMic, restsOfPiece } from './standing/offDeck.ts';

/** Where the kit frame stands on the deck. */
export type KitPlace = Deck['kit'];

/** A place at which the whole kit rests on the deck, and how the kit gets there. */
export interface FittingPlace {
  readonly kit: KitPlace;
  /** How far the throne moves on the deck. */
  readonly shift: Mm;
  /** Anticlockwise from above when positive, in (-180, 180]. */
  readonly turn: Degrees;
}

/** Whether a kit rests whole on its deck, and the smallest ways in which it would. */
export interface KitFit {
  /** How far the farthest foot stands over the edge; 0 when all rest on the deck. */
  readonly beyond: Mm;
  /** The smallest shift without a turn; null where none does it. */
  readonly shifted: FittingPlace | null;
  /** The smallest turn about the throne without a shift; null where none does it. */
  readonly turned: FittingPlace | null;
  /** The smallest turn with which a shift does it, and the smallest such shift; null where none does it. */
  readonly both: FittingPlace | null;
  /** By how much the kit is wider and deeper than the deck as it is turned now; 0 where it is not. */
  readonly tooWide: Mm;
  readonly tooDeep: Mm;
}

/** Kept from the edge, so that rounding puts nothing over it. */
const INSIDE: Mm = 0.001;
/** What lies over an edge by less lies on it. */
const ON_EDGE: Mm = 1e-6;

/**
 * How a kit can stand whole on its deck (K8), mics and their stands included; it stays as it is in itself.
 *
 * H1 For one turn the places that fit are a rectangle: from the back left to the front right, as far as the outermost feet allow. The
 *    smallest shift leads to its nearest point; whole mm inside it where there is room.
 * H2 A foot at distance r from the throne is beyond one edge for one arc of turns; two feet a distance apart are farther apart across the
 *    deck than it is wide for one arc. The smallest turn is the end, nearest to none, of what these arcs leave free. Nothing is sampled.
 */
export function fitOnDeck(rig: Rig, deck: Deck): KitFit {
  const rests = outermost([...rig.pieces.flatMap(restsOfPiece), ...rig.mics.flatMap(restsOfMic)]);
  const beyond = beyondEdge(rests, deck);
  const now = { kit: deck.kit, shift: 0, turn: 0 };
  const room = roomFor(rests, deck, deck.kit.turn);
  const sizes = {
    tooWide: Math.max(0, room.low.x - room.high.x),
    tooDeep: Math.max(0, room.low.y - room.high.y),
  };
  if (beyond <= ON_EDGE) return { beyond: 0, shifted: now, turned: now, both: now, ...sizes };
  return {
    beyond,
    shifted: shiftedTo(rests, deck, 0),
    turned: turnedInPlace(rests, deck),
    both: turnedAndShifted(rests, deck),
    ...sizes,
  };
}

function beyondEdge(rests: readonly Rest[], deck: Deck): Mm {
  const outline = deckOutline(deck);
  return rests.reduce(
    (most, { spot, radius }) =>
      Math.max(most, outsideOutline(outline, toDeck(deck, spot)) + radius),
    0,
  );
}

/** Those that can be the first over an edge: of equal radii, the corners of what they enclose. */
function outermost(rests: readonly Rest[]): readonly Rest[] {
  const byRadius = new Map<Mm, Vec2[]>();
  for (const { spot, radius } of rests) {
    const spots = byRadius.get(radius) ?? [];
    spots.push({ x: spot.x, y: spot.y });
    byRadius.set(radius, spots);
  }
  return [...byRadius].flatMap(([radius, spots]) =>
    (convexHull(spots)?.corners ?? spots).map((spot) => ({ spot, radius })),
  );
}

interface Room {
  readonly low: Vec2<'deck'>;
  readonly high: Vec2<'deck'>;
}

/** H1: where the throne can be at a turn; `low` lies beyond `high` where there is no such place. */
function roomFor(rests: readonly Rest[], { width, depth }: Deck, turn: Degrees): Room {
  const turned = { kit: { x: 0, y: 0, turn } };
  const spots = rests.map(({ spot, radius }) => ({ ...toDeck(turned, spot), radius }));
  const bound = (most: (reach: Mm) => Mm, of: (spot: (typeof spots)[number]) => Mm): Mm =>
    most(
      spots.reduce((far, spot) => Math.max(far, of(spot) + spot.radius), Number.NEGATIVE_INFINITY),
    );
  return {
    low: {
      x: bound(
        (reach) => reach - width / 2 + INSIDE,
        ({ x }) => -x,
      ),
      y: bound(
        (reach) => reach - depth / 2 + INSIDE,
        ({ y }) => -y,
      ),
    },
    high: {
      x: bound(
        (reach) => width / 2 - INSIDE - reach,
        ({ x }) => x,
      ),
      y: bound(
        (reach) => depth / 2 - INSIDE - reach,
        ({ y }) => y,
      ),
    },
  };
}

function shiftedTo(rests: readonly Rest[], deck: Deck, turn: Degrees): FittingPlace | null {
  const { kit } = deck;
  const after = wrapDegrees(kit.turn + turn);
  const { low, high } = roomFor(rests, deck, after);
  if (low.x > high.x || low.y > high.y) return null;
  const x = nearest(kit.x, low.x, high.x);
  const y = nearest(kit.y, low.y, high.y);
  return { kit: { x, y, turn: after }, shift: Math.hypot(x - kit.x, y - kit.y), turn };
}

/** The value in a range that is nearest to one, in whole mm where the range holds one. */
function nearest(value: Mm, low: Mm, high: Mm): Mm {
  if (value < low) return Math.ceil(low) <= high ? Math.ceil(low) : low;
  if (value > high) return Math.floor(high) >= low ? Math.floor(high) : high;
  return value;
}

function turnedInPlace(rests: readonly Rest[], deck: Deck): FittingPlace | null {
  const { width, depth, kit } = deck;
  const arcs = rests.flatMap(({ spot, radius }) => {
    const across = (turn: Degrees, free: Mm) =>
      forbidden(spot, turn + kit.turn, free - radius - INSIDE);
    return [
      ...across(0, width / 2 - kit.x),
      ...across(180, width / 2 + kit.x),
      ...across(-90, depth / 2 - kit.y),
      ...across(90, depth / 2 + kit.y),
    ];
  });
  const turn = smallestFree(arcs);
  return turn === undefined
    ? null
    : { kit: { ...kit, turn: wrapDegrees(kit.turn + turn) }, shift: 0, turn };
}

function turnedAndShifted(rests: readonly Rest[], deck: Deck): FittingPlace | null {
  const { width, depth, kit } = deck;
  const arcs = rests.flatMap((one) =>
    rests.flatMap((other) => {
      const between = { x: one.spot.x - other.spot.x, y: one.spot.y - other.spot.y };
      const radii = one.radius + other.radius + 2 * INSIDE;
      return [
        ...forbidden(between, kit.turn, width - radii),
        ...forbidden(between, kit.turn - 90, depth - radii),
      ];
    }),
  );
  const turn = smallestFree(arcs);
  return turn === undefined ? null : shiftedTo(rests, deck, turn);
}

/** Turns from one to another, degrees; each open at both ends. */
type Arc = readonly [from: Degrees, to: Degrees];
const ALL: Arc = [-Infinity, Infinity];
/** Added to both ends of an arc: layouts keep angles to a millionth of a degree. */
const GRAIN: Degrees = 2e-6;

/** H2: the turns for which a spot, turned by `turn` already, lies farther along x than `free`. */
function forbidden({ x, y }: Vec2, turn: Degrees, free: Mm): readonly Arc[] {
  const far = Math.hypot(x, y);
  if (far <= free) return [];
  if (free < -far) return [ALL];
  const half = toDegrees(Math.acos(free / far)) + GRAIN;
  const middle = -toDegrees(Math.atan2(y, x)) - turn;
  const start = wrapDegrees(middle + 180) - 180;
  return [-360, 0, 360].map((round) => [start + round - half, start + round + half] as const);
}

/** The turn nearest to none that lies in no arc; undefined where they leave none. Of two as near the anticlockwise one. */
function smallestFree(arcs: readonly Arc[]): Degrees | undefined {
  const sorted = [...arcs].sort((p, q) => p[0] - q[0]);
  let [from, to] = [0, 0];
  // What lies over no turn grows by every arc that overlaps it, until none does.
  let grows = true;
  while (grows) {
    grows = false;
    for (const [start, end] of sorted) {
      const overlaps = from === to ? start < from && end > to : start < to && end > from;
      if (overlaps && (start < from || end > to)) {
        [from, to] = [Math.min(from, start), Math.max(to, end)];
        grows = true;
      }
    }
  }
  const turn = to <= -from ? to : from;
  return Math.abs(turn) <= 180 ? turn + 0 : undefined;
}
