import { gap, nearestOnSegment } from '../../../geometry/plan.ts';
import { type PlanSegment, planMeeting } from '../../../geometry/planSegments.ts';
import { cosDeg, sinDeg } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import type { Layout } from '../../layout.ts';
import { isStruck, type Piece } from '../../pieces/piece.ts';
import { ahead } from '../defaults/room.ts';
import { type StandSpec, standSpec } from '../standClasses.ts';

/** A spot on the plan, kit frame. */
export interface Spot {
  readonly x: Mm;
  readonly y: Mm;
}

/** Where a mic stand can be put down, and which way its first leg points. */
export interface Standing {
  readonly base: Spot;
  readonly turn: Degrees;
}

/** A leg, a foot or a body on the deck: everything within `radius` of a line. */
export interface OnDeck {
  readonly line: PlanSegment;
  readonly radius: Mm;
}

/** Room wanted between the feet of two stands. */
const WANTED: Mm = 40;
const LEG_RADIUS: Mm = 8;
const FOOT_RADIUS: Mm = 15;
/** A mast keeps this far from the edge of a piece that it stands up to, or nearly. */
const MAST_BESIDE: Mm = 20;
const MAST_BELOW: Mm = 100;

/** A stand to be put down: its class and the height to which its mast stands. */
export interface Wanted {
  readonly spec: StandSpec;
  readonly height: Mm;
}

/**
 * The first of the spots, each with the first turn of the tripod, where a stand's feet keep 40 mm from everything on the deck,
 * its mast stands beside every piece and it is on the deck; else the spot with the most room. Spots are judged coarsely:
 * findings give the verdict.
 */
export function standingAt(
  layout: Layout,
  { spec, height }: Wanted,
  spots: readonly Spot[],
): Standing | undefined {
  const things = onDeckOf(layout);
  const pieces = layout.pieces.filter(isStruck).filter(({ z }) => z < height + MAST_BELOW);
  let best: { readonly standing: Standing; readonly room: Mm } | undefined;
  for (const base of spots) {
    const near = things.filter((thing) => distanceTo(thing, base) < spec.footRadius + WANTED);
    const mast = Math.min(
      WANTED,
      ...pieces.map((piece) => gap(piece, base) - piece.diameter / 2 - MAST_BESIDE),
    );
    for (const turn of spec.base === 'round' ? [0] : TURNS) {
      const atLeast = best?.room ?? Number.NEGATIVE_INFINITY;
      const feet = feetAt(spec, base, turn);
      const room = Math.min(mast, edgeRoom(layout, feet), roomOf(feet, near, atLeast));
      if (room >= WANTED) return { base, turn };
      if (!best || room > best.room) best = { standing: { base, turn }, room };
    }
  }
  return best?.standing;
}

const distanceTo = ({ line, radius }: OnDeck, spot: Spot): Mm =>
  gap(nearestOnSegment(...line, spot), spot) - radius;

/** A tripod looks the same every 120 degrees. */
const TURNS: readonly Degrees[] = [90, 105, 75, 120, 60, 135, 45, 150];

function feetAt(spec: StandSpec, base: Spot, turn: Degrees): readonly OnDeck[] {
  return spec.base === 'round'
    ? [{ line: [base, base], radius: spec.footRadius }]
    : legs(base, spec.footRadius, [turn, turn + 120, turn + 240]);
}

/** The room between feet and other things; it stops looking where there is no more than `atLeast`. */
export function roomOf(feet: readonly OnDeck[], others: readonly OnDeck[], atLeast: Mm): Mm {
  let room = Number.POSITIVE_INFINITY;
  for (const foot of feet) {
    for (const other of others) {
      const { distance } = planMeeting(foot.line, other.line);
      room = Math.min(room, distance - foot.radius - other.radius);
      if (room <= atLeast) return room;
    }
  }
  return room;
}

/** No limit for feet on the deck; a foot beyond its edge counts ten times. */
export function edgeRoom(layout: Layout, feet: readonly OnDeck[]): Mm {
  const inside = feet.flatMap(({ line, radius }) =>
    line.map((end) => insideDeck(layout, end) - radius),
  );
  const least = Math.min(...inside);
  return least < 0 ? 10 * least : WANTED;
}

/** How far a spot is inside the deck's edge; negative beyond it. */
function insideDeck({ deck }: Layout, { x, y }: Spot): Mm {
  const { kit } = deck;
  const deckX = kit.x + x * cosDeg(kit.turn) - y * sinDeg(kit.turn);
  const deckY = kit.y + x * sinDeg(kit.turn) + y * cosDeg(kit.turn);
  return Math.min(deck.width / 2 - Math.abs(deckX), deck.depth / 2 - Math.abs(deckY));
}

const onDeckOf = (layout: Layout): readonly OnDeck[] => [
  ...layout.pieces.flatMap(feetOfPiece),
  ...micFeet(layout),
];

/** The feet of the mic stands of a layout. */
export const micFeet = ({ mics }: Pick<Layout, 'mics'>): readonly OnDeck[] =>
  mics.flatMap(({ mount }) =>
    mount.kind === 'stand' ? feetAt(standSpec(mount.stand), mount.base, mount.turn) : [],
  );

/** What of a piece is on the deck. */

export function feetOfPiece(piece: Piece): readonly OnDeck[] {
  switch (piece.kind) {
    case 'throne': {
      const step = 360 / piece.legs;
      const turns = Array.from({ length: piece.legs }, (_, leg) => piece.turn + leg * step);
      return legs({ x: 0, y: 0 }, piece.spread, turns);
    }
    case 'pedal': {
      const toe = ahead(piece, piece.turn, piece.length);
      return [{ line: [{ x: piece.x, y: piece.y }, toe], radius: piece.width / 2 }];
    }
    case 'kick': {
      const half = piece.depth / 2;
      const line = [ahead(piece, piece.turn, -half), ahead(piece, piece.turn, half)] as const;
      const spurs = piece.diameter / 2 + piece.spurs;
      const root = ahead(piece, piece.turn, half / 2);
      const feet = [90, -90].map((side) => ahead(root, piece.turn + side, spurs));
      return [{ line, radius: piece.diameter / 2 }, ...feet.map(footAt)];
    }
    default:
      return isStruck(piece) ? feetOfSupport(piece) : [];
  }
}

function feetOfSupport(piece: Extract<Piece, { support: unknown }>): readonly OnDeck[] {
  const { support } = piece;
  if (support.kind === 'held') return [];
  if (support.kind === 'legs') {
    const out = piece.diameter / 2 + support.overhang;
    return [0, 120, 240].map((step) => footAt(ahead(piece, support.turn + step, out)));
  }
  const hub = { x: piece.x + support.dx, y: piece.y + support.dy };
  const steps = support.legs === 2 ? [-45, 45] : [0, 120, 240];
  return legs(
    hub,
    support.spread,
    steps.map((step) => support.turn + step),
  );
}

const footAt = (spot: Spot): OnDeck => ({ line: [spot, spot], radius: FOOT_RADIUS });

const legs = (hub: Spot, spread: Mm, directions: readonly Degrees[]): readonly OnDeck[] =>
  directions.map((direction) => ({
    line: [hub, ahead(hub, direction, spread)],
    radius: LEG_RADIUS,
  }));
