import { type Vec3, vec } from '../geometry/vector.ts';
import type { Deck } from '../layout/deck.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import { toDeck } from './deckFrame.ts';

/** The plan or the front as the audience sees it, or as the player does. */
export type SeenFrom = 'house' | 'player';

/** An elevation from the front (or, as the player sees it, from behind the player) or from the player's right. */
export type Facing = 'front' | 'side';

/**
 * Where an elevation is looked from. Rule E1: an elevation is the whole of space turned upright, never stretched or mirrored: x to the
 * right of the screen, y up, z toward who looks. So it is to scale, and what is drawn true on the plan is drawn true here. The front is
 * that of the deck, its x runs as on the plan; the side has the audience on the right.
 */
export interface Standpoint {
  readonly facing: Facing;
  readonly seenFrom: SeenFrom;
  /** A point of the kit, turned. */
  point(p: Vec3): Vec3;
  /** A direction of the kit, turned. */
  direction(d: Vec3): Vec3;
}

/** The deck's x and y on the way to the right of the screen; toward the viewer is a quarter turn clockwise from it. */
const rightward = {
  front: { house: { x: -1, y: 0 }, player: { x: 1, y: 0 } },
  side: { house: { x: 0, y: 1 }, player: { x: 0, y: 1 } },
} as const;

export function standpointOf(
  deck: Pick<Deck, 'kit'>,
  facing: Facing,
  seenFrom: SeenFrom,
): Standpoint {
  const right = rightward[facing][seenFrom];
  const cos = cosDeg(deck.kit.turn);
  const sin = sinDeg(deck.kit.turn);
  const turned = (x: number, y: number, z: number): Vec3 =>
    vec(right.x * x + right.y * y, z, right.y * x - right.x * y);
  return {
    facing,
    seenFrom,
    point(p) {
      const { x, y } = toDeck(deck, p);
      return turned(x, y, p.z);
    },
    direction: ({ x, y, z }) => turned(cos * x - sin * y, sin * x + cos * y, z),
  };
}
