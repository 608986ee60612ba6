import { movePiece, turnPiece } from '../../layout/edit/pieces.ts';
import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import { restOnCentre, restOnStep } from './detent.ts';
import { carried, type Drag, type Hold, turnedAbout } from './drag.ts';

/** Moves a piece over the plan, with what its hardware holds and what is clipped to it. Rests on the kit's centre line. */
export function dragPiece(piece: Piece, hold: Hold): Drag {
  const start = piece.kind === 'throne' ? { x: 0, y: 0 } : piece;
  return {
    label: `Move ${piece.name}`,
    to(place) {
      const by = carried({ x: 0, y: 0 }, hold, place);
      const x = piece.kind === 'throne' ? by.x : restOnCentre(start.x, by.x, hold.near);
      return (layout) => movePiece(layout, piece.id, { x, y: start.y + by.y });
    },
  };
}

/** Turns a piece about its centre (a pedal: its heel), with its feet and clips. Rests on steps of 5 degrees. */
export function dragTurn(piece: Piece, hold: Hold): Drag {
  const pivot = piece.kind === 'throne' ? { x: 0, y: 0 } : piece;
  const start = isStruck(piece) ? piece.tiltToward : piece.turn;
  return {
    label: `Turn ${piece.name}`,
    to(place) {
      const by = turnedAbout(pivot, hold.from.kit, place.kit);
      return (layout) => turnPiece(layout, piece.id, restOnStep(start, by) - start);
    },
  };
}
