import type { Capsule } from '../../geometry/capsule.ts';
import { listed } from '../../geometry/listed.ts';
import { type Vec2, vec } from '../../geometry/vector.ts';
import type { Pedal } from '../../layout/pieces/pedal.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import type { PlacedPiece } from '../placed.ts';

/** Common practice, no source. */
const PLATE_RADIUS: Mm = 15;
const TOE_HEIGHT: Mm = 60;

/**
 * P13 A pedal is a low plate from the heel to the toe, rising to 60 mm: a capsule along either edge and one between them.
 *     Its outline is the rectangle it covers, heel to toe.
 */
export function placePedal(piece: Pedal): PlacedPiece {
  const cosTurn = cosDeg(piece.turn);
  const sinTurn = sinDeg(piece.turn);
  const at = (forward: Mm, left: Mm): Vec2 => ({
    x: piece.x + forward * cosTurn - left * sinTurn,
    y: piece.y + forward * sinTurn + left * cosTurn,
  });
  const half = piece.width / 2;
  const bar = (left: Mm): Capsule => {
    const heel = at(PLATE_RADIUS, left);
    const toe = at(piece.length - PLATE_RADIUS, left);
    return {
      a: vec(heel.x, heel.y, PLATE_RADIUS),
      b: vec(toe.x, toe.y, TOE_HEIGHT),
      radius: PLATE_RADIUS,
    };
  };
  return {
    piece,
    shells: [],
    hoops: [],
    hardware: listed([-(half - PLATE_RADIUS), 0, half - PLATE_RADIUS], bar),
    footprints: [],
    outlines: [[at(0, -half), at(piece.length, -half), at(piece.length, half), at(0, half)]],
  };
}
