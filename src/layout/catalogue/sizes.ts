import { fromInches } from '../../units/inch.ts';
import type { Mm } from '../../units/quantity.ts';
import type { PieceKind } from '../pieces/piece.ts';

/** A size of the trade: inches by name, mm exactly (25.4 mm each). Drums are diameter x depth; cymbals have no depth. */
export interface NominalSize {
  readonly diameterInches: number;
  readonly depthInches: number | null;
  readonly diameter: Mm;
  readonly depth: Mm | null;
}

/** Kinds of piece that are sold by nominal size. */
export type SizedKind = Exclude<PieceKind, 'pedal' | 'throne'>;

const drum = (diameterInches: number, depthInches: number): NominalSize => ({
  diameterInches,
  depthInches,
  diameter: fromInches(diameterInches),
  depth: fromInches(depthInches),
});

const cymbal = (diameterInches: number): NominalSize => ({
  diameterInches,
  depthInches: null,
  diameter: fromInches(diameterInches),
  depth: null,
});

/** Sizes offered, the usual ones of each kind (common practice); any other number can be typed. */
const sizes: Readonly<Record<SizedKind, readonly NominalSize[]>> = {
  kick: [
    drum(16, 14),
    drum(18, 14),
    drum(18, 16),
    drum(20, 14),
    drum(20, 16),
    drum(20, 18),
    drum(22, 14),
    drum(22, 16),
    drum(22, 18),
    drum(22, 20),
    drum(24, 14),
    drum(24, 16),
    drum(24, 18),
    drum(26, 14),
    drum(26, 18),
  ],
  snare: [
    drum(10, 5),
    drum(12, 5),
    drum(13, 3),
    drum(13, 6),
    drum(13, 7),
    drum(14, 4),
    drum(14, 5),
    drum(14, 5.5),
    drum(14, 6),
    drum(14, 6.5),
    drum(14, 8),
    drum(15, 6.5),
  ],
  rackTom: [
    drum(6, 6),
    drum(8, 7),
    drum(8, 8),
    drum(10, 7),
    drum(10, 8),
    drum(10, 9),
    drum(12, 8),
    drum(12, 9),
    drum(12, 10),
    drum(13, 9),
    drum(13, 10),
    drum(13, 11),
    drum(14, 10),
    drum(14, 12),
    drum(15, 12),
  ],
  floorTom: [
    drum(13, 12),
    drum(14, 12),
    drum(14, 14),
    drum(15, 13),
    drum(16, 14),
    drum(16, 16),
    drum(18, 16),
    drum(18, 18),
  ],
  hiHat: [10, 12, 13, 14, 15, 16].map(cymbal),
  crash: [14, 15, 16, 17, 18, 19, 20].map(cymbal),
  ride: [18, 19, 20, 21, 22, 24].map(cymbal),
  splash: [6, 8, 10, 12].map(cymbal),
  china: [12, 14, 16, 18, 20, 22].map(cymbal),
  percussion: [drum(2, 5), drum(3, 6), drum(4, 7), drum(5, 8), drum(6, 8), drum(8, 4)],
};

/** The nominal sizes offered for a kind of piece, smallest first. */
export const nominalSizes = (kind: SizedKind): readonly NominalSize[] => sizes[kind];

/** The nominal size that a piece has exactly, if any: then it is shown in inches with mm beside it. */
export function nominalSizeOf(
  kind: SizedKind,
  diameter: Mm,
  depth: Mm | null,
): NominalSize | undefined {
  return sizes[kind].find(
    (size) => size.diameter === diameter && (size.depth === null || size.depth === depth),
  );
}
