import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import { placeCymbal, placeHiHat } from './pieces/cymbalPiece.ts';
import { placeDrum, placePercussion } from './pieces/drumPiece.ts';
import { placeKick } from './pieces/kickPiece.ts';
import { placePedal } from './pieces/pedalPiece.ts';
import { placeThrone } from './pieces/thronePiece.ts';
import type { PlacedPiece } from './placed.ts';

/** A piece in space, kit frame. Only a throne takes anything from the layout beside the piece: the player's seat height. */
export function placePiece(piece: Piece, { player }: Pick<Layout, 'player'>): PlacedPiece {
  switch (piece.kind) {
    case 'snare':
    case 'rackTom':
    case 'floorTom':
      return placeDrum(piece);
    case 'kick':
      return placeKick(piece);
    case 'hiHat':
      return placeHiHat(piece);
    case 'crash':
    case 'ride':
    case 'splash':
    case 'china':
      return placeCymbal(piece);
    case 'percussion':
      return placePercussion(piece);
    case 'pedal':
      return placePedal(piece);
    case 'throne':
      return placeThrone(piece, player.seatHeight);
  }
}
