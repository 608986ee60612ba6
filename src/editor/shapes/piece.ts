import type { Piece } from '../../layout/pieces/piece.ts';
import { paintCymbal } from './cymbal.ts';
import { paintDrum } from './drum.ts';
import { paintHiHat } from './hiHat.ts';
import { paintKick } from './kick.ts';
import { paintPedal } from './pedal.ts';
import type { Pen } from './pen.ts';
import { paintPercussion } from './percussion.ts';
import { paintThrone } from './throne.ts';

/** A piece as its kind is drawn (kit frame, mm). */
export function paintPiece(pen: Pen, piece: Piece): void {
  switch (piece.kind) {
    case 'snare':
    case 'rackTom':
    case 'floorTom':
      paintDrum(pen, piece);
      return;
    case 'kick':
      paintKick(pen, piece);
      return;
    case 'hiHat':
      paintHiHat(pen, piece);
      return;
    case 'crash':
    case 'ride':
    case 'splash':
    case 'china':
      paintCymbal(pen, piece);
      return;
    case 'percussion':
      paintPercussion(pen, piece);
      return;
    case 'pedal':
      paintPedal(pen, piece);
      return;
    case 'throne':
      paintThrone(pen, piece);
      return;
  }
}

/** Drawn from the deck up: what stands on it, the kick, drums by height, cymbals by height. */
export function drawingHeight(piece: Piece): number {
  switch (piece.kind) {
    case 'pedal':
      return -2;
    case 'throne':
      return -1;
    case 'kick':
      return 0;
    case 'snare':
    case 'rackTom':
    case 'floorTom':
    case 'percussion':
      return piece.z;
    default:
      return CYMBALS_OVER_DRUMS + piece.z;
  }
}

/** Cymbals are see-through and lie over every drum, so that neither hides the other. */
const CYMBALS_OVER_DRUMS = 10_000;
