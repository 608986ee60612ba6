import { cosDeg, sinDeg } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import type { Layout } from '../../layout.ts';
import { isDrum, type Piece, type Struck } from '../../pieces/piece.ts';

/** An upright can that a piece fits in: a coarse place-holder for finding room, never for verdicts. Kit frame, mm. */
export interface Can {
  readonly x: Mm;
  readonly y: Mm;
  readonly radius: Mm;
  readonly low: Mm;
  readonly high: Mm;
}

/** Kept free between pieces that are put down for the user. */
const GAP: Mm = 30;
/** The player's trunk and thighs. */
const PLAYER: Can = { x: 0, y: 0, radius: 200, low: 0, high: 1300 };

/** The cans of a piece: one, or three along a kick. */
export function cansOf(piece: Piece): readonly Can[] {
  switch (piece.kind) {
    case 'throne':
      return [{ x: 0, y: 0, radius: piece.diameter / 2, low: 0, high: 700 }];
    case 'pedal':
      return along(piece, piece.turn, piece.length, {
        radius: piece.width / 2,
        low: 0,
        high: 200,
      });
    case 'kick': {
      const [short, long] = [piece.depth, piece.diameter].toSorted((a, b) => a - b);
      if (short === undefined || long === undefined) return [];
      const turn = piece.depth > piece.diameter ? piece.turn : piece.turn + 90;
      const can = {
        radius: short / 2,
        low: 0,
        high: piece.z + piece.diameter / 2 + piece.rim.width,
      };
      return along(ahead(piece, turn, (short - long) / 2), turn, long - short, can);
    }
    default: {
      const lean = (piece.diameter / 2) * sinDeg(piece.tilt);
      const depth = depthOf(piece);
      const { x, y, z } = piece;
      const top = piece.kind === 'hiHat' ? piece.opening + 10 : 10;
      return [{ x, y, radius: piece.diameter / 2, low: z - lean - depth, high: z + lean + top }];
    }
  }
}

/** How far a piece reaches below its surface, its lower hoop included. */
function depthOf(piece: Struck): Mm {
  if (isDrum(piece)) return piece.depth + piece.rim.height;
  return piece.kind === 'percussion' ? piece.depth : 10;
}

/** Whether a piece would stand in another one, in the player, or beyond the deck's edge. */
export function hasRoom(piece: Piece, layout: Layout): boolean {
  const others = layout.pieces.filter(
    (other) => !playedBy(piece, other) && !playedBy(other, piece),
  );
  const taken = [PLAYER, ...others.flatMap(cansOf)];
  return cansOf(piece).every(
    (can) => onDeck(can, layout) && taken.every((other) => apart(can, other)),
  );
}

/** A pedal stands against the kick or under the hi-hat that it plays. */
export const playedBy = (piece: Piece, pedal: Piece): boolean =>
  pedal.kind === 'pedal' && piece.kind === pedal.plays;

const apart = (a: Can, b: Can): boolean =>
  a.low >= b.high ||
  b.low >= a.high ||
  Math.hypot(a.x - b.x, a.y - b.y) >= a.radius + b.radius + GAP;

function onDeck({ x, y }: Can, { deck }: Layout): boolean {
  const { kit } = deck;
  const deckX = kit.x + x * cosDeg(kit.turn) - y * sinDeg(kit.turn);
  const deckY = kit.y + x * sinDeg(kit.turn) + y * cosDeg(kit.turn);
  return Math.abs(deckX) <= deck.width / 2 && Math.abs(deckY) <= deck.depth / 2;
}

/** Three cans in a row. */
const along = (
  from: { readonly x: Mm; readonly y: Mm },
  turn: Degrees,
  length: Mm,
  can: Omit<Can, 'x' | 'y'>,
): readonly Can[] => [0, 0.5, 1].map((share) => ({ ...can, ...ahead(from, turn, share * length) }));

/** The spot at a distance from another in a direction. */
export const ahead = (
  { x, y }: { readonly x: Mm; readonly y: Mm },
  direction: Degrees,
  distance: Mm,
): { readonly x: Mm; readonly y: Mm } => ({
  x: x + distance * cosDeg(direction),
  y: y + distance * sinDeg(direction),
});

/** Offsets on the plan to try one after the other, the nearest first: rings of 16 directions. */
export const offsets: readonly { readonly x: Mm; readonly y: Mm }[] = [
  { x: 0, y: 0 },
  ...Array.from({ length: 16 }, (_, ring) => (ring + 1) * 100).flatMap((radius) =>
    Array.from({ length: 16 }, (_, step) => ({
      x: Math.round(radius * cosDeg(step * 22.5)),
      y: Math.round(radius * sinDeg(step * 22.5)),
    })),
  ),
];
