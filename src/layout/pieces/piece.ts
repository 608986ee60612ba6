import { z } from 'zod';
import { type Cymbal, cymbalSchema } from './cymbal.ts';
import { type Drum, drumSchema } from './drum.ts';
import { type HiHat, hiHatSchema } from './hiHat.ts';
import { type Kick, kickSchema } from './kick.ts';
import { type Pedal, pedalSchema } from './pedal.ts';
import { type Percussion, percussionSchema } from './percussion.ts';
import { type Throne, throneSchema } from './throne.ts';

/** Anything that belongs to the kit. */
export const pieceSchema = z.discriminatedUnion('kind', [
  drumSchema,
  kickSchema,
  hiHatSchema,
  cymbalSchema,
  percussionSchema,
  pedalSchema,
  throneSchema,
]);
export type Piece = Drum | Kick | HiHat | Cymbal | Percussion | Pedal | Throne;
export type PieceKind = Piece['kind'];
/** A piece that hands strike. */
export type Struck = Drum | HiHat | Cymbal | Percussion;

export const isStruck = (piece: Piece): piece is Struck =>
  piece.kind !== 'kick' && piece.kind !== 'pedal' && piece.kind !== 'throne';
export const isDrum = (piece: Piece): piece is Drum =>
  piece.kind === 'snare' || piece.kind === 'rackTom' || piece.kind === 'floorTom';
export const isCymbal = (piece: Piece): piece is Cymbal =>
  piece.kind === 'crash' ||
  piece.kind === 'ride' ||
  piece.kind === 'splash' ||
  piece.kind === 'china';
