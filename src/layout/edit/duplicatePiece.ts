import { copyOfPiece } from '../catalogue/defaults/newPiece.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import { addPiece } from './pieces.ts';

/** A copy of a piece at the nearest free place; it is the last piece. Mics are not copied. Without effect for the throne. */
export function duplicatePiece(layout: Layout, id: Id): Layout {
  const piece = layout.pieces.find((entry) => entry.id === id);
  return piece ? addPiece(layout, copyOfPiece(piece, layout)) : layout;
}
