import { turnPiece } from '../../layout/edit/pieces.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import { turnBetween } from '../../units/angle.ts';
import type { Degrees } from '../../units/quantity.ts';

/** Turns a piece with its feet and clips until it faces (or leans) toward a direction. */
export function turnTo(layout: Layout, id: Id, toward: Degrees): Layout {
  const piece = layout.pieces.find((entry) => entry.id === id);
  if (!piece) return layout;
  const now = isStruck(piece) ? piece.tiltToward : piece.turn;
  return turnPiece(layout, id, turnBetween(now, toward));
}
