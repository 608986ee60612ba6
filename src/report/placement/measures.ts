import type { Vec2 } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { toDeck } from '../../rig/deckFrame.ts';
import { kickFrame } from '../../rig/pieces/kickFrame.ts';
import type { Mm } from '../../units/quantity.ts';

/**
 * What a hand with a tape measures to find a spot on the deck.
 *
 * T1 From two edges of the deck, square to them: the edge at the player's left and the edge behind the player. These two give
 *    the spot. Below 0: that far outside the edge.
 * T2 From the mark under the throne's middle and from the mark under the middle of the first kick's front head, straight. Where no edge can be
 *    measured from, these two give the spot, on its side of the line between the marks.
 */
export interface Measures {
  readonly fromLeft: Mm;
  readonly fromBack: Mm;
  readonly fromThrone: Mm;
  /** Null without a kick drum. */
  readonly fromKick: Mm | null;
}

/** Measures a spot of the deck. */
export function measuresOf(layout: Pick<Layout, 'deck' | 'pieces'>, at: Vec2<'deck'>): Measures {
  const { deck } = layout;
  const kick = kickMark(layout);
  return {
    fromLeft: at.x + deck.width / 2,
    fromBack: at.y + deck.depth / 2,
    fromThrone: apart(at, throneMark(deck)),
    fromKick: kick && apart(at, kick),
  };
}

/** The edge of the deck that a place of the kit frame lies farthest outside of, as the player sees the deck; null on it. */
export function edgeBeyond(
  { deck }: Pick<Layout, 'deck'>,
  place: Vec2,
): 'left' | 'right' | 'back' | 'front' | null {
  const { x, y } = toDeck(deck, { x: place.x, y: place.y });
  const outside = [
    ['left', -x - deck.width / 2],
    ['right', x - deck.width / 2],
    ['back', -y - deck.depth / 2],
    ['front', y - deck.depth / 2],
  ] as const;
  const [edge, by] = outside.reduce((far, each) => (each[1] > far[1] ? each : far));
  return by > 0 ? edge : null;
}

/** Where the throne's middle is marked. */
export const throneMark = (deck: Pick<Deck, 'kit'>): Vec2<'deck'> => toDeck(deck, { x: 0, y: 0 });

/** Where the middle of the first kick's front head is marked. */
export function kickMark({ deck, pieces }: Pick<Layout, 'deck' | 'pieces'>): Vec2<'deck'> | null {
  const kick = pieces.find((piece): piece is Kick => piece.kind === 'kick');
  return kick ? toDeck(deck, kickFrame(kick).frontHead) : null;
}

const apart = (p: Vec2<'deck'>, q: Vec2<'deck'>): Mm => Math.hypot(p.x - q.x, p.y - q.y);
