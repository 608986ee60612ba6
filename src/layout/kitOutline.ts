import { isCymbal, type Piece } from './pieces/piece.ts';

const LOOKS = ['other', 'kick', 'drum', 'cymbal'] as const;

/** One piece as a small plan shows it, in the kit frame: round when it is as wide as long. Lengths in mm, `turn` in degrees. */
export interface PieceOutline {
  readonly look: (typeof LOOKS)[number];
  readonly x: number;
  readonly y: number;
  /** Across its direction. */
  readonly width: number;
  /** Along its direction; a pedal starts at (x, y), everything else has its middle there. */
  readonly length: number;
  readonly turn: number;
}

/** What a small plan of a kit shows, the lowest pieces first. For recognising, not for measuring. */
export const kitOutline = (pieces: readonly Piece[]): readonly PieceOutline[] =>
  pieces
    .map(outlineOf)
    .sort((a, b) => LOOKS.indexOf(a.look) - LOOKS.indexOf(b.look) || levelOf(a) - levelOf(b));

/** Pedals lie lower than the throne. */
const levelOf = ({ width, length }: PieceOutline): number => (width === length ? 1 : 0);

function outlineOf(piece: Piece): PieceOutline {
  if (piece.kind === 'throne') return round('other', { x: 0, y: 0, diameter: piece.diameter });
  const { x, y } = piece;
  if (piece.kind === 'pedal') {
    const { length, width, turn } = piece;
    return { look: 'other', x, y, width, length, turn };
  }
  if (piece.kind === 'kick') {
    const { depth, diameter, turn } = piece;
    return { look: 'kick', x, y, width: diameter, length: depth, turn };
  }
  return round(isCymbal(piece) || piece.kind === 'hiHat' ? 'cymbal' : 'drum', piece);
}

const round = (
  look: PieceOutline['look'],
  { x, y, diameter }: { readonly x: number; readonly y: number; readonly diameter: number },
): PieceOutline => ({ look, x, y, width: diameter, length: diameter, turn: 0 });

/** An outline as a short text, to be kept beside a stored layout: whole mm and degrees, `look x y width length turn;...`. */
export const outlineText = (outline: readonly PieceOutline[]): string =>
  outline
    .map(({ look, x, y, width, length, turn }) =>
      [LOOKS.indexOf(look), ...[x, y, width, length, turn].map(Math.round)].join(' '),
    )
    .join(';');

/** An outline from its text; what can't be read is left out. */
export const outlineIn = (text: string): readonly PieceOutline[] =>
  text.split(';').flatMap((part) => {
    const numbers = part.split(' ').map(Number);
    const [index = -1, x = 0, y = 0, width = 0, length = 0, turn = 0] = numbers;
    const look = LOOKS[index];
    if (look === undefined || numbers.length !== 6 || !numbers.every(Number.isFinite)) return [];
    return [{ look, x, y, width, length, turn }];
  });
