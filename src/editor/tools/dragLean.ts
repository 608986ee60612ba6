import { tiltPiece } from '../../layout/edit/pieces.ts';
import type { Struck } from '../../layout/pieces/piece.ts';
import { restOnStep } from './detent.ts';
import { type Drag, type Hold, turnedAbout } from './drag.ts';

/** How far on the screen the handle goes out for one degree of lean, px. */
export const PX_PER_DEGREE = 1.5;

/** Leans a playing surface: outward leans it more, round its centre changes where it leans to. */
export function dragLean(piece: Struck, hold: Hold): Drag {
  const reach = (spot: { readonly x: number; readonly y: number }): number =>
    Math.hypot(spot.x - piece.x, spot.y - piece.y) * hold.pxPerMm;
  return {
    label: `Lean ${piece.name}`,
    to(place) {
      const more = (reach(place.kit) - reach(hold.from.kit)) / PX_PER_DEGREE;
      const by = turnedAbout(piece, hold.from.kit, place.kit);
      const tilt = Math.max(0, restOnStep(piece.tilt, more));
      const toward = restOnStep(piece.tiltToward, by);
      return (layout) => tiltPiece(layout, piece.id, tilt, toward);
    },
  };
}
