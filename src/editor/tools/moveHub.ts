import { changePiece } from '../../layout/edit/change.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';

/** Moves the hub of a piece's stand by mm (kit frame); the piece stays where it is. */
export const moveHub = (layout: Layout, id: Id, dx: number, dy: number): Layout =>
  changePiece(layout, id, (piece) => {
    if (!('support' in piece) || piece.support.kind !== 'stand') return piece;
    const support = { ...piece.support, dx: piece.support.dx + dx, dy: piece.support.dy + dy };
    return { ...piece, support };
  });
