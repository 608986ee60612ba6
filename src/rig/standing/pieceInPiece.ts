import { boundsMeet } from '../../geometry/bounds.ts';
import { cylinderOverlap } from '../../geometry/cylinderOverlap.ts';
import { carrierOf } from '../../layout/references.ts';
import type { Mm } from '../../units/quantity.ts';
import type { BoxedPiece } from './boxed.ts';
import { type Standing, worstOfEach } from './standing.ts';

/** A clamp holds a piece against what carries it, and places are given by the centimetre. Common practice, no source. */
const CLAMPED: Mm = 10;

/**
 * K9 Shells with their hoops, cymbals, bodies of percussion and the seat must not stand in those of another piece. All are
 *    solid, a kick too, and cymbals hang at rest. A piece may stand against the one that holds it, up to 10 mm into it.
 */
export function pieceInPiece(first: BoxedPiece, second: BoxedPiece): readonly Standing[] {
  const p = first.placed.piece;
  const q = second.placed.piece;
  const allowed = carrierOf(p) === q.id || carrierOf(q) === p.id ? CLAMPED : 0;
  return worstOfEach(
    first.bodies.flatMap((one) =>
      second.bodies.flatMap((other): Standing[] => {
        if (!boundsMeet(one.bounds, other.bounds)) return [];
        const overlap = cylinderOverlap(one.solid, other.solid);
        if (!overlap || overlap.depth <= allowed) return [];
        const about = [p.id, q.id];
        return [{ code: 'piece-in-piece', about, place: overlap.at, overlap: overlap.depth }];
      }),
    ),
  );
}
