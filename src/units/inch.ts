import type { Mm } from './quantity.ts';

/** One inch in mm, exact by definition (international yard and pound agreement, 1959). */
export const MM_PER_INCH = 25.4;
/** One foot in mm, exact likewise: 12 inches. */
export const MM_PER_FOOT = 304.8;

export const fromInches = (inches: number): Mm => inches * MM_PER_INCH;
export const toInches = (length: Mm): number => length / MM_PER_INCH;
