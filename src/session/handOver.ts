/** One code as a drawing: an SVG path of its dark modules, on a square of `size` modules with the quiet zone in it. */
export interface CodePicture {
  readonly size: number;
  readonly path: string;
}

/** A picture of a camera or a file: 4 bytes a pixel, row by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray;
}

/**
 * What the last picture showed: `nothing` to read, a `new` code or one `again`, one of an `other` layout, a `foreign` one, one
 * of a `newer` version of the program, or a `damaged` one.
 */
export type SeenInPicture = 'nothing' | 'new' | 'again' | 'other' | 'foreign' | 'newer' | 'damaged';

/** How far the reading is. */
export interface Reading {
  readonly seen: SeenInPicture;
  /** How many codes there are; null before the first. */
  readonly count: number | null;
  /** Numbers of those still to come. */
  readonly missing: readonly number[];
  /** The layout's text, once all are there. */
  readonly text: string | null;
  /** All are there, but together they are not what was sent. */
  readonly isBroken: boolean;
}

/** Reads the codes of one layout off pictures, in any order. */
export interface CodeReader {
  look(picture: Picture): Promise<Reading>;
}

/** What screens ask to hand a layout to another tablet without a network. */
export interface HandOver {
  /** The open layout as codes, to be shown one after another. */
  pictures(): Promise<readonly CodePicture[]>;
  startReading(): CodeReader;
  /** Gives the open layout's file to the system's share sheet; null where there is none. */
  readonly share: (() => Promise<void>) | null;
}
