import { fromInches } from '../../units/inch.ts';
import type { Mm } from '../../units/quantity.ts';

/** Sizes of paper: ISO 216 A4, and US Letter (8.5 by 11 in, ANSI/ASME Y14.1 size A). */
const sizes = {
  a4: { short: 210, long: 297 },
  letter: { short: fromInches(8.5), long: fromInches(11) },
} as const;
export type PaperSize = keyof typeof sizes;
export const PAPER_SIZES: readonly PaperSize[] = ['a4', 'letter'];
export type Orientation = 'landscape' | 'portrait';

/** A sheet of paper as it is to be printed on. */
export interface Paper {
  readonly size: PaperSize;
  readonly orientation: Orientation;
}

/** Kept free at every edge: common printers leave up to 6.4 mm blank. From memory. */
export const PAPER_MARGIN: Mm = 10;

export function paperExtent({ size, orientation }: Paper): {
  readonly width: Mm;
  readonly height: Mm;
} {
  const { short, long } = sizes[size];
  return orientation === 'portrait'
    ? { width: short, height: long }
    : { width: long, height: short };
}
