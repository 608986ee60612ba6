import type { Mm } from '../units/quantity.ts';

/** A point of a drawing: of the model (deck or elevation, y away from the lower edge) or of the paper (y down from its upper edge), mm. */
export interface Point {
  readonly x: Mm;
  readonly y: Mm;
}

/** What a mark belongs to. CAD programs get one layer for each. */
export const LAYERS = [
  'DECK',
  'PLAYER',
  'FEET',
  'KIT',
  'STANDS',
  'MICS',
  'BOX',
  'CABLES',
  'DIMENSIONS',
  'LABELS',
  'FRAME',
] as const;
export type Layer = (typeof LAYERS)[number];

/** How a line or an area is drawn. Greys run from 0 (black) to 1 (white); widths and dashes are mm on paper at every scale. */
export interface Look {
  /** Null: no line. */
  readonly ink: number | null;
  readonly width: Mm;
  /** Null: not filled. */
  readonly fill: number | null;
  /** Lengths of dashes and gaps, mm; empty: drawn through. */
  readonly dash: readonly Mm[];
}

export interface LineMark {
  readonly kind: 'line';
  readonly layer: Layer;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly look: Look;
}

export interface CircleMark {
  readonly kind: 'circle';
  readonly layer: Layer;
  readonly centre: Point;
  readonly radius: Mm;
  readonly look: Look;
}

/** One line of text on its baseline. */
export interface TextMark {
  readonly kind: 'text';
  readonly layer: Layer;
  readonly at: Point;
  readonly text: string;
  /** Height of the letters' body, mm. */
  readonly size: Mm;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly bold: boolean;
  readonly ink: number;
}

export type Mark = LineMark | CircleMark | TextMark;

/** One page: its marks in the order in which they are drawn, inside a paper of this size. */
export interface Page {
  readonly width: Mm;
  readonly height: Mm;
  readonly marks: readonly Mark[];
}

export const line = (width: Mm, ink = 0, dash: readonly Mm[] = []): Look => ({
  ink,
  width,
  fill: null,
  dash,
});
export const filled = (fill: number, width: Mm, ink = 0): Look => ({ ink, width, fill, dash: [] });
