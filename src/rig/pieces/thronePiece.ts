import { vec } from '../../geometry/vector.ts';
import type { Throne } from '../../layout/pieces/throne.ts';
import type { Mm } from '../../units/quantity.ts';
import { baseCapsules, legsFootprint } from '../feet.ts';
import type { PlacedPiece } from '../placed.ts';

/** Common practice, no source. */
const SEAT_THICKNESS: Mm = 80;
const POST_RADIUS: Mm = 18;
const HUB_RADIUS: Mm = 30;
const LEG_HEIGHT: Mm = 200;

/** P14 A throne stands at the origin: a round seat whose top is at the player's seat height, on a post with legs. */
export function placeThrone(piece: Throne, seatHeight: Mm): PlacedPiece {
  const under = seatHeight - SEAT_THICKNESS;
  const footprint = legsFootprint({
    ...piece,
    hub: { x: 0, y: 0 },
    hubRadius: HUB_RADIUS,
    legHeight: Math.min(LEG_HEIGHT, under),
  });
  return {
    piece,
    shells: [
      {
        centre: vec(0, 0, seatHeight - SEAT_THICKNESS / 2),
        axis: vec(0, 0, 1),
        radius: piece.diameter / 2,
        halfHeight: SEAT_THICKNESS / 2,
      },
    ],
    hoops: [],
    hardware: [
      { a: vec(0, 0, POST_RADIUS), b: vec(0, 0, under), radius: POST_RADIUS },
      ...baseCapsules(footprint),
    ],
    footprints: [footprint],
    outlines: [],
  };
}
