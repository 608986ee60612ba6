import type { Cylinder } from '../../geometry/cylinder.ts';
import { along } from '../../geometry/vector.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import type { Percussion } from '../../layout/pieces/percussion.ts';
import type { PlacedPiece } from '../placed.ts';
import { surfaceOf } from '../surface.ts';
import { type Carrier, pieceStand } from './pieceStand.ts';
import { hoopsOf, shellBelow } from './shell.ts';
import { shellLegs } from './shellLegs.ts';

/** Snare, rack tom or floor tom. */
export function placeDrum(piece: Drum): PlacedPiece {
  const { shell, carrier } = bodyAndCarrier(piece);
  return { piece, shells: [shell], hoops: hoopsOf(shell, piece.rim), ...carrier, outlines: [] };
}

/** Cowbell, block or other small percussion: its body reaches `depth` below the struck spot. */
export function placePercussion(piece: Percussion): PlacedPiece {
  const { shell, carrier } = bodyAndCarrier(piece);
  return { piece, shells: [shell], hoops: [], ...carrier, outlines: [] };
}

/**
 * P6 A stand under a drum (its hub nearer than the shell's radius on the plan) holds the middle of the underside; one
 *    beside it holds the middle of the shell. A drum held by another piece's hardware has none of its own.
 */
function bodyAndCarrier(piece: Drum | Percussion): { shell: Cylinder; carrier: Carrier } {
  const { centre, normal, radius } = surfaceOf(piece);
  const shell = shellBelow(centre, normal, radius, piece.depth);
  const { support } = piece;
  if (support.kind === 'held') return { shell, carrier: { hardware: [], footprints: [] } };
  if (support.kind === 'legs') return { shell, carrier: shellLegs(support, shell.centre, radius) };
  const below = support.dx * support.dx + support.dy * support.dy < radius * radius;
  const held = below ? along(centre, normal, -piece.depth) : shell.centre;
  return { shell, carrier: pieceStand(support, centre, held) };
}
