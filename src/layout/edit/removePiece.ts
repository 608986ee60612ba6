import { onStand } from '../catalogue/defaults/usualPieces.ts';
import type { Id } from '../fields.ts';
import type { Layout } from '../layout.ts';
import type { Mic } from '../mics/mic.ts';
import type { Piece } from '../pieces/piece.ts';
import { carrierOf } from '../references.ts';
import { heardOnce, mapShared } from './change.ts';
import { withoutLostChannels } from './patch.ts';

/** Feet of the stand that a piece gets when what held it is gone. */
const STAND_SPREAD = 280;
const STAND_TURN = 90;

/**
 * A layout without one piece. Mics clipped to it or lying in it go with it, as they would when it is carried off; a mic on a
 * stand stays and no longer hears it; what its hardware held gets a stand of its own.
 */
export function deletePiece(layout: Layout, id: Id): Layout {
  if (!layout.pieces.some((piece) => piece.id === id)) return layout;
  const pieces = layout.pieces
    .filter((piece) => piece.id !== id)
    .map((piece) => (carrierOf(piece) === id ? onItsOwnStand(piece) : piece));
  const kept = { ...layout, pieces };
  const stay = layout.mics.filter((mic) => !goesWith(mic, id));
  const staying = stay.length === layout.mics.length ? layout.mics : stay;
  const mics = mapShared(staying, (mic) => heardOnce(kept, mic));
  return withoutLostChannels({ ...kept, mics });
}

const goesWith = ({ mount }: Mic, id: Id): boolean =>
  (mount.kind === 'clip' && mount.drum === id) ||
  (mount.kind === 'plateInKick' && mount.kick === id);

const onItsOwnStand = (piece: Piece): Piece =>
  'support' in piece && piece.kind !== 'hiHat'
    ? { ...piece, support: onStand(STAND_SPREAD, STAND_TURN) }
    : piece;
