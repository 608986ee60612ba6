import type { Vec2 } from '../geometry/vector.ts';
import type { Deck, Stairs } from '../layout/deck.ts';

/** D3 Where stairs meet the deck: the middle of them, deck frame. Their offset runs toward the player's right or the audience. */
export function stairsMiddle(
  { edge, offset }: Stairs,
  { width, depth }: Pick<Deck, 'width' | 'depth'>,
): Vec2<'deck'> {
  switch (edge) {
    case 'front':
      return { x: offset, y: depth / 2 };
    case 'back':
      return { x: offset, y: -depth / 2 };
    case 'left':
      return { x: -width / 2, y: offset };
    case 'right':
      return { x: width / 2, y: offset };
  }
}

/** The unit direction in which stairs at an edge lead away from the deck. */
export const stairsOutward: Readonly<Record<Stairs['edge'], Vec2<'deck'>>> = {
  front: { x: 0, y: 1 },
  back: { x: 0, y: -1 },
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
};
