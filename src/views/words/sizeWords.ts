import type { NominalSize } from '../../layout/catalogue/sizes.ts';
import type { Piece } from '../../layout/pieces/piece.ts';
import { toInches } from '../../units/inch.ts';

/** `6.5` for 6.5, `14` for 14: inches to a tenth, without a needless zero. */
const inches = (length: number): string => String(Math.round(toInches(length) * 10) / 10);

/** A nominal size with mm beside it: `14 × 6.5 in (356 × 165 mm)`, diameter first. */
export function nominalWords(size: NominalSize): string {
  if (size.depthInches === null || size.depth === null) {
    return `${size.diameterInches} in (${Math.round(size.diameter)} mm)`;
  }
  const named = `${size.diameterInches} × ${size.depthInches} in`;
  return `${named} (${Math.round(size.diameter)} × ${Math.round(size.depth)} mm)`;
}

/** The size of a piece as the trade says it, diameter first: `14 × 6.5 in`; empty for what has no trade size. */
export function sizeWords(piece: Piece): string {
  if (piece.kind === 'pedal' || piece.kind === 'throne') return '';
  const diameter = inches(piece.diameter);
  return 'depth' in piece ? `${diameter} × ${inches(piece.depth)} in` : `${diameter} in`;
}
