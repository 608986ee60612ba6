import type { Vec2 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Rig } from '../rig/placed.ts';
import { type Selection, sameSelection } from '../session/selection.ts';
import { type Box, onScreen } from './labels/placeLabels.ts';
import { extentOf } from './view/extent.ts';
import {
  type Bounds,
  type ScreenPoint,
  type ScreenSize,
  toScreen,
  type View,
} from './view/view.ts';

export type Edge = 'left' | 'right' | 'top' | 'bottom';

/** Things that lie off the view beyond one edge of it. */
export interface OffView {
  readonly edge: Edge;
  /** Where the way from the middle of the view to the first of them crosses the edge, px. */
  readonly at: ScreenPoint;
  /** Where they lie from the middle of the view, as on a clock face: degrees clockwise from up. */
  readonly bearing: number;
  readonly things: readonly Selection[];
}

/** How far from the edges of the screen what points at them stays, px. */
export const INSET = { left: 12, right: 12, top: 72, bottom: 76 } as const;

/** The room that what points at them takes at most, px; plan.css has the same. */
const BADGE = { width: 260, height: 48 } as const;

/** Where labels should not stand: what points at what lies off the view is over them. */
export const offViewBoxes = (off: readonly OffView[]): readonly Box[] =>
  off.map(({ edge, at: { x, y } }) => ({
    ...BADGE,
    left: edge === 'left' ? x : x - BADGE.width / (edge === 'right' ? 1 : 2),
    top: edge === 'top' ? y : y - BADGE.height / (edge === 'bottom' ? 1 : 2),
  }));

/**
 * What is off the view and would not be missed: what lies far out, beyond deck, box and player (a mistyped number puts it there), and
 * what is selected. What the user has zoomed away from on the deck is not told: that is what zooming is for.
 */
export function offViewOf(
  layout: Layout,
  rig: Rig,
  view: View,
  selection: Selection | null,
): readonly OffView[] {
  const extent = extentOf(layout);
  const found = new Map<Edge, OffView>();
  for (const { thing, spot } of spotsOf(layout, rig)) {
    const at = toScreen(view, spot);
    if (onScreen(at, view.size)) continue;
    if (!sameSelection(thing, selection) && isWithin(spot, extent)) continue;
    const crossing = crossingOf(at, view.size);
    const before = found.get(crossing.edge);
    const things = [...(before?.things ?? []), thing];
    found.set(crossing.edge, { ...(before ?? crossing), things });
  }
  return [...found.values()];
}

/** Where everything stands that can be lost; a mic at its tip, wherever its stand is. */
const spotsOf = (
  { deck, pieces }: Layout,
  { mics }: Rig,
): readonly { readonly thing: Selection; readonly spot: Vec2<'deck'> }[] => [
  ...mics.map(({ mic: { id }, tip }) => ({
    thing: { kind: 'mic', id } as const,
    spot: toDeck(deck, tip),
  })),
  ...pieces.flatMap((piece) =>
    piece.kind === 'throne'
      ? []
      : [{ thing: { kind: 'piece', id: piece.id } as const, spot: toDeck(deck, piece) }],
  ),
];

const isWithin = ({ x, y }: Vec2<'deck'>, { left, right, back, front }: Bounds): boolean =>
  x >= left && x <= right && y >= back && y <= front;

function crossingOf(to: ScreenPoint, { width, height }: ScreenSize): Omit<OffView, 'things'> {
  const [x, y] = [to.x - width / 2, to.y - height / 2];
  const sideways = Math.abs(x) * height > Math.abs(y) * width;
  const edge = sideways ? (x < 0 ? 'left' : 'right') : y < 0 ? 'top' : 'bottom';
  const share = sideways ? width / 2 / Math.abs(x) : height / 2 / Math.abs(y);
  const at = {
    x: kept(width / 2 + x * share, INSET.left, width - INSET.right),
    y: kept(height / 2 + y * share, INSET.top, height - INSET.bottom),
  };
  return { edge, at, bearing: (Math.atan2(x, -y) * 180) / Math.PI };
}

const kept = (value: number, least: number, most: number): number =>
  Math.max(least, Math.min(value, Math.max(least, most)));
