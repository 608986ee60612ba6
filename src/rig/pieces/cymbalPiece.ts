import type { Cylinder } from '../../geometry/cylinder.ts';
import { along, vec } from '../../geometry/vector.ts';
import type { Cymbal } from '../../layout/pieces/cymbal.ts';
import type { HiHat } from '../../layout/pieces/hiHat.ts';
import type { Mm } from '../../units/quantity.ts';
import type { PlacedPiece } from '../placed.ts';
import { type Surface, surfaceOf } from '../surface.ts';
import { type Carrier, pieceStand } from './pieceStand.ts';
import { shellLegs } from './shellLegs.ts';

/** Common practice, no source. */
const HALF_THICKNESS: Mm = 3;
const TILTER_BELOW: Mm = 40;
const STEM_RADIUS: Mm = 6;
const ROD_ABOVE: Mm = 80;

/**
 * P7 A cymbal at rest is a disc 6 mm thick in its edge plane. Its bow and bell are not modelled.
 * P8 Its stand holds it by a stem 40 mm long below its centre. Legs stand as on a drum.
 */
export function placeCymbal(piece: Cymbal): PlacedPiece {
  const surface = surfaceOf(piece);
  return {
    piece,
    shells: [disc(surface, 0)],
    hoops: [],
    ...carrierOf(piece, surface),
    outlines: [],
  };
}

function carrierOf({ support }: Cymbal, { centre, normal, radius }: Surface): Carrier {
  if (support.kind === 'held') return { hardware: [], footprints: [] };
  if (support.kind === 'legs') return shellLegs(support, centre, radius);
  const tilter = along(centre, normal, -TILTER_BELOW);
  const { hardware, footprints } = pieceStand(support, centre, tilter);
  return { hardware: [...hardware, { a: tilter, b: centre, radius: STEM_RADIUS }], footprints };
}

/**
 * P9 A hi-hat is two discs: the lower touches the closed edge plane from below, the upper rises from it by the opening. A
 *    mast carries the lower; the rod goes on through both to 80 mm above the upper.
 */
export function placeHiHat(piece: HiHat): PlacedPiece {
  const surface = surfaceOf(piece);
  const lower = disc(surface, -HALF_THICKNESS);
  const upper = disc(surface, HALF_THICKNESS + piece.opening);
  const { hardware, footprints } = pieceStand(piece.support, surface.centre, lower.centre);
  const rod = {
    a: lower.centre,
    b: along(upper.centre, surface.normal, ROD_ABOVE),
    radius: STEM_RADIUS,
  };
  return {
    piece,
    shells: [upper, lower],
    hoops: [],
    hardware: [...hardware, rod],
    footprints,
    outlines: [],
  };
}

const disc = ({ centre, normal, radius }: Surface, above: Mm): Cylinder => ({
  centre: above === 0 ? centre : along(centre, normal, above),
  axis: vec(normal.x, normal.y, normal.z),
  radius,
  halfHeight: HALF_THICKNESS,
});
