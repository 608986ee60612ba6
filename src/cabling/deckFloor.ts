import type { Rectangle } from '../geometry/plan.ts';
import type { Vec2, Vec3 } from '../geometry/vector.ts';
import type { Deck } from '../layout/deck.ts';
import type { Layout } from '../layout/layout.ts';
import { ontoDeck, toKit } from '../rig/deckFrame.ts';
import type { Keeping } from './obstacle.ts';

/** The deck on the plan, deck frame. */
export const deckRectangle = ({ width, depth }: Deck): Rectangle<'deck'> => ({
  low: { x: -width / 2, y: -depth / 2 },
  high: { x: width / 2, y: depth / 2 },
});

/** How obstacles of this layout are made. */
export function keepingOf({ deck, cabling }: Pick<Layout, 'deck' | 'cabling'>): Keeping {
  return { keepAway: cabling.keepAway, toDeck: ontoDeck(deck) };
}

/** A place on the deck in the kit frame. */
export function onDeck({ deck }: Pick<Layout, 'deck'>, p: Vec2<'deck'>): Vec3 {
  const { x, y } = toKit(deck, p);
  return { x, y, z: 0 };
}
