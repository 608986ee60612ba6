import type { Vec2 } from '../../geometry/vector.ts';
import type { Deck, Stairs } from '../../layout/deck.ts';
import { deckOutline } from '../../rig/deckFrame.ts';
import { stairsMiddle, stairsOutward } from '../../rig/stairs.ts';
import { apart, fillPath, type Pen, strokePath, traceLine, tracePolygon } from './pen.ts';

const GRID = 500;

/** The platform: its surface with a half-metre grid from its centre, its edge, its stairs (deck frame). */
export function paintDeck(pen: Pen, deck: Deck): void {
  const { colours } = pen;
  for (const stairs of deck.stairs) paintStairs(pen, deck, stairs);
  tracePolygon(pen, deckOutline(deck));
  fillPath(pen, colours.deck);
  apart(pen, () => {
    pen.canvas.clip();
    paintGrid(pen, deck);
  });
  tracePolygon(pen, deckOutline(deck));
  strokePath(pen, colours.deckEdge, deck.height > 0 ? 2.5 : 1.5);
  traceLine(pen, { x: 0, y: -deck.depth / 2 }, { x: 0, y: deck.depth / 2 });
  apart(pen, () => {
    pen.canvas.setLineDash([14 * pen.px, 4 * pen.px, 2 * pen.px, 4 * pen.px]);
    strokePath(pen, colours.centreLine, 1);
  });
}

function paintGrid(pen: Pen, deck: Deck): void {
  const lines = (reach: number): readonly number[] => {
    const most = Math.floor(reach / 2 / GRID);
    return Array.from({ length: 2 * most + 1 }, (_, i) => (i - most) * GRID);
  };
  const colourOf = (at: number): string =>
    at % (2 * GRID) === 0 ? pen.colours.gridStrong : pen.colours.grid;
  for (const x of lines(deck.width)) {
    traceLine(pen, { x, y: -deck.depth / 2 }, { x, y: deck.depth / 2 });
    strokePath(pen, colourOf(x), 1);
  }
  for (const y of lines(deck.depth)) {
    traceLine(pen, { x: -deck.width / 2, y }, { x: deck.width / 2, y });
    strokePath(pen, colourOf(y), 1);
  }
}

/** Rise and going of one step, mm: for drawing stairs whose own steps are not known. */
const RISE = 200;
const GOING = 260;

/** How far stairs stand out from the deck. */
const lengthOf = (deck: Deck): number => Math.max(1, Math.ceil(deck.height / RISE)) * GOING;

function paintStairs(pen: Pen, deck: Deck, stairs: Stairs): void {
  const at = stairsMiddle(stairs, deck);
  const outward = stairsOutward[stairs.edge];
  const length = lengthOf(deck);
  const half = stairs.width / 2;
  const spot = (out: number, side: number): Vec2<'deck'> => ({
    x: at.x + outward.x * out - outward.y * side,
    y: at.y + outward.y * out + outward.x * side,
  });
  tracePolygon(pen, [spot(0, -half), spot(0, half), spot(length, half), spot(length, -half)]);
  fillPath(pen, pen.colours.grid);
  strokePath(pen, pen.colours.deckEdge, 1.5);
  for (let out = GOING; out < length; out += GOING) {
    traceLine(pen, spot(out, -half), spot(out, half));
    strokePath(pen, pen.colours.deckEdge, 1);
  }
  // The arrow up the stairs, as on any building plan.
  const head = Math.min(90, half / 2);
  traceLine(pen, spot(length - 40, 0), spot(40, 0));
  strokePath(pen, pen.colours.deckEdge, 1.5);
  traceLine(pen, spot(40 + head, -head), spot(40, 0), spot(40 + head, head));
  strokePath(pen, pen.colours.deckEdge, 1.5);
}
