import type { Vec2 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import { boxCorners } from '../../rig/boxShape.ts';
import { toDeck } from '../../rig/deckFrame.ts';
import type { Rig } from '../../rig/placed.ts';
import { stairsMiddle, stairsOutward } from '../../rig/stairs.ts';
import { type Box, overlap } from '../labels/placeLabels.ts';
import { controlZones } from '../labels/reserved.ts';
import { type Border, type Bounds, fitted, type ScreenSize, toScreen, type View } from './view.ts';

/** Free px round a fitted plan: at the top there is the choice of drawing, at the bottom the scale bar. */
export const FIT_BORDER: Border = { top: 62, right: 28, bottom: 66, left: 28 };

/** Free ground round the box and behind the throne, mm. */
const ROUND_BOX = 250;
const BEHIND_THRONE = 400;
const ROUND_THRONE = 280;

/** How much of stairs is shown: where they meet the deck matters, their foot does not. */
const FIRST_STEP = 260;

/** The deck, the head of its stairs, the box and the player, wherever they are. */
export function extentOf({ deck, box }: Pick<Layout, 'deck' | 'box'>): Bounds {
  const throne = toDeck(deck, { x: 0, y: 0 });
  const spots = [
    { x: -deck.width / 2, y: -deck.depth / 2 },
    { x: deck.width / 2, y: deck.depth / 2 },
    ...around(box, ROUND_BOX),
    ...around(throne, BEHIND_THRONE),
    ...deck.stairs.map((stairs) => {
      const at = stairsMiddle(stairs, deck);
      const outward = stairsOutward[stairs.edge];
      return { x: at.x + outward.x * FIRST_STEP, y: at.y + outward.y * FIRST_STEP };
    }),
  ];
  return boundsOf(spots);
}

/** The same, with as much free ground round other spots for the box. */
export const extentOfSpots = (
  layout: Pick<Layout, 'deck' | 'box'>,
  spots: readonly { readonly box: Pick<Layout['box'], 'x' | 'y'> }[],
): Bounds =>
  both(extentOf(layout), boundsOf([layout, ...spots].flatMap(({ box }) => around(box, ROUND_BOX))));

/** What stands farther outside is not set up there: a mistyped number put it there, and it must not make all the rest small, mm. */
const NEAR = 1500;

/** What a plan fitted to the deck must show: the deck with box and player, and all that stands by it, feet and booms over its edge too. */
export function extentOfDeck(layout: Pick<Layout, 'deck' | 'box'>, rig: Rig): Bounds {
  const own = extentOf(layout);
  const near = spotsOfKit(layout, rig).filter(
    ({ x, y }) =>
      x > own.left - NEAR && x < own.right + NEAR && y > own.back - NEAR && y < own.front + NEAR,
  );
  return near.length === 0 ? own : both(own, boundsOf(near));
}

/** px per mm of the smallest plan on which things lie far enough apart for fingers and names: a head of 10 in is 33 px wide. */
const LEGIBLE = 0.13;

/** What the plan shows at first: the whole deck, or the kit where the deck would be too small to work on and the kit is larger. */
export function firstFit(
  layout: Pick<Layout, 'deck' | 'box' | 'pieces'>,
  rig: Rig,
  size: ScreenSize,
): 'deck' | 'kit' {
  const start = { seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 } as const;
  const scaleOf = (extent: Bounds): number => fitted(start, extent, FIT_BORDER).scale;
  const deck = scaleOf(extentOfDeck(layout, rig));
  if (deck >= LEGIBLE || !layout.pieces.some(isStruck)) return 'deck';
  return scaleOf(extentOfKit(layout, rig)) > deck ? 'kit' : 'deck';
}

/** What a plan fitted to the kit must show: the pieces, every mic and every stand's feet. */
export const extentOfKit = (layout: Pick<Layout, 'deck'>, rig: Rig): Bounds =>
  boundsOf(spotsOfKit(layout, rig));

/** Where all that stands reaches to. */
function spotsOfKit({ deck }: Pick<Layout, 'deck'>, rig: Rig): readonly Vec2<'deck'>[] {
  const stands = [
    ...rig.pieces.flatMap(({ footprints }) => footprints),
    ...rig.mics.flatMap(({ stand }) => (stand ? [stand.footprint] : [])),
  ];
  const spots = [
    ...around({ x: 0, y: 0 }, ROUND_THRONE),
    ...rig.pieces.flatMap(({ piece, outlines }) => [
      ...outlines.flat(),
      ...('diameter' in piece && 'x' in piece ? around(piece, piece.diameter / 2) : []),
    ]),
    ...rig.mics.map(({ tip }) => tip),
    ...stands.flatMap(({ hub, feet }) => [hub, ...feet]),
  ];
  return spots.map((spot) => toDeck(deck, spot));
}

/** How far the plugs of a box stand out of it, px: they would be seen alone. */
const PLUGS = 24;

/**
 * What the kit shown large must show: the kit, and the box too where it would be cut by the edge or lie under what stands over the drawing: there it
 * could be neither seen nor taken hold of.
 */
export function extentOfLargeKit(
  layout: Pick<Layout, 'deck' | 'box'>,
  rig: Rig,
  start: Pick<View, 'seenFrom' | 'size'>,
): Bounds {
  const kit = extentOfKit(layout, rig);
  const view = fitted({ ...start, centre: { x: 0, y: 0 }, scale: 1 }, kit, FIT_BORDER);
  const corners = boxCorners(layout.box);
  const { left, right, back, front } = boundsOf(corners.map((spot) => toScreen(view, spot)));
  const { width, height } = start.size;
  const box = { left, top: back, width: right - left, height: front - back };
  const isIn = (zone: Box): boolean => overlap(box, zone) > 0;
  const isWhole = left >= 0 && back >= 0 && right <= width && front <= height;
  const seen = { left: -PLUGS, top: -PLUGS, width: width + 2 * PLUGS, height: height + 2 * PLUGS };
  const isCut = !isWhole && isIn(seen);
  return isCut || controlZones(start.size).some(isIn) ? both(kit, boundsOf(corners)) : kit;
}

/** All of it: deck, box and player, and the kit wherever its parts are. */
export const extentOfAll = (layout: Pick<Layout, 'deck' | 'box'>, rig: Rig): Bounds =>
  both(extentOf(layout), extentOfKit(layout, rig));

const both = (a: Bounds, b: Bounds): Bounds => ({
  left: Math.min(a.left, b.left),
  right: Math.max(a.right, b.right),
  back: Math.min(a.back, b.back),
  front: Math.max(a.front, b.front),
});

function boundsOf(spots: readonly { readonly x: number; readonly y: number }[]): Bounds {
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    back: Math.min(...ys),
    front: Math.max(...ys),
  };
}

const around = ({ x, y }: { readonly x: number; readonly y: number }, reach: number) => [
  { x: x - reach, y: y - reach },
  { x: x + reach, y: y + reach },
];
