import type { Vec2 } from '../geometry/vector.ts';
import type { Deck } from '../layout/deck.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';

/**
 * D1 A kit point is turned anticlockwise by the kit's turn and moved to where the kit's origin stands on the deck; quarter
 *    turns are exact. The way back undoes it.
 */
export const toDeck = (deck: Pick<Deck, 'kit'>, p: Vec2<'kit'>): Vec2<'deck'> => ontoDeck(deck)(p);

/** {@link toDeck} for many points of one kit. */
export function ontoDeck({ kit }: Pick<Deck, 'kit'>): (p: Vec2<'kit'>) => Vec2<'deck'> {
  const cos = cosDeg(kit.turn);
  const sin = sinDeg(kit.turn);
  const { x, y } = kit;
  return (p) => ({ x: x + (cos * p.x - sin * p.y), y: y + (sin * p.x + cos * p.y) });
}

export function toKit({ kit }: Pick<Deck, 'kit'>, p: Vec2<'deck'>): Vec2<'kit'> {
  const cos = cosDeg(kit.turn);
  const sin = sinDeg(kit.turn);
  const x = p.x - kit.x;
  const y = p.y - kit.y;
  return { x: cos * x + sin * y, y: cos * y - sin * x };
}

/** D2 The deck's outline, anticlockwise from the back left corner (as the player sees it). */
export function deckOutline({ width, depth }: Pick<Deck, 'width' | 'depth'>): Vec2<'deck'>[] {
  const x = width / 2;
  const y = depth / 2;
  return [
    { x: -x, y: -y },
    { x, y: -y },
    { x, y },
    { x: -x, y },
  ];
}
