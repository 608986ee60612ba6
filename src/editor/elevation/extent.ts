import { cylinderOutline } from '../../geometry/cylinderOutline.ts';
import { vec } from '../../geometry/vector.ts';
import type { Deck } from '../../layout/deck.ts';
import type { Figure } from '../../report/figure.ts';
import { deckOutline, toKit } from '../../rig/deckFrame.ts';
import type { Rig } from '../../rig/placed.ts';
import type { Standpoint } from '../../rig/standpoint.ts';
import { OVER_FOOT } from '../shapes/ground.ts';
import { FIT_BORDER } from '../view/extent.ts';
import type { Border, Bounds } from '../view/view.ts';

/** Free px round a fitted elevation: the 0 of its ruler stands over its foot. Below another drawing nothing stands over it. */
export const ELEVATION_BORDER: Border = { ...FIT_BORDER, bottom: OVER_FOOT };
export const LOWER_BORDER: Border = { ...ELEVATION_BORDER, top: 24 };

/** From where to where the deck reaches in an elevation, mm to the right. */
export function deckReach(
  deck: Deck,
  { point }: Pick<Standpoint, 'point'>,
): { readonly left: number; readonly right: number } {
  const across = deckOutline(deck).map((corner) => {
    const { x, y } = toKit(deck, corner);
    return point(vec(x, y, 0)).x;
  });
  return { left: Math.min(...across), right: Math.max(...across) };
}

/** What an elevation fitted to the kit must show: everything of pieces, mics and player, down to the deck. All turned. */
export function kitExtent({ pieces, mics }: Rig, { head }: Figure): Bounds {
  const spots = [
    ...pieces.flatMap(({ shells, hardware }) => [
      ...shells.flatMap(cylinderOutline),
      ...hardware.flatMap(({ a, b }) => [a, b]),
    ]),
    ...mics.flatMap(({ solids }) => solids.flatMap(({ capsule: { a, b } }) => [a, b])),
    ...head.map(({ b, radius }) => ({ x: b.x, y: b.y + radius })),
  ];
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    back: Math.min(0, ...ys),
    front: Math.max(...ys),
  };
}

/** A high deck is not shown down to its foot, mm. */
const MOST_BELOW = 120;

/** What an elevation fitted to the deck must show: all of the deck's width, and all that stands on it. */
export function deckExtent(deck: Deck, standpoint: Standpoint, kit: Bounds): Bounds {
  const { left, right } = deckReach(deck, standpoint);
  return {
    left: Math.min(left, kit.left),
    right: Math.max(right, kit.right),
    back: Math.min(-Math.min(deck.height, MOST_BELOW), kit.back),
    front: kit.front,
  };
}
