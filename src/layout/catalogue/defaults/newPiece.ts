import { freshId } from '../../edit/ids.ts';
import { mirroredPiece } from '../../edit/mirror.ts';
import type { Layout } from '../../layout.ts';
import type { Piece, PieceKind } from '../../pieces/piece.ts';
import { freePlace } from './freePlace.ts';
import { offsets } from './room.ts';
import { heldBy, usualHiHatPedal, usualPedal, usualPiece } from './usualPieces.ts';

const stems: Readonly<Record<PieceKind, string>> = {
  kick: 'kick',
  snare: 'snare',
  rackTom: 'rack',
  floorTom: 'floor',
  hiHat: 'hi-hat',
  crash: 'crash',
  ride: 'ride',
  splash: 'splash',
  china: 'china',
  percussion: 'percussion',
  pedal: 'pedal',
  throne: 'throne',
};

/**
 * A new piece of a kind, ready for `addPiece`: of usual size, with a name and id of its own, where such a piece usually
 * stands (mirrored for a left-handed player) or at the nearest free place. Rack toms and small percussion hang on the kick
 * when there is one.
 */
export function newPiece(kind: PieceKind, layout: Layout): Piece {
  const id = freshId(layout, stems[kind]);
  const usual = carried(kind === 'pedal' ? nextPedal(layout, id) : usualPiece(kind, id), layout);
  const handed = layout.player.leadHand === 'left' ? mirroredPiece(usual) : usual;
  return { ...nearestFree(handed, layout), name: freshName(layout, usual.name) };
}

/** A copy of a piece with a name and id of its own, at the nearest free place. Not for a throne: there is only one. */
export function copyOfPiece(piece: Piece, layout: Layout): Piece {
  const copy = { ...piece, id: freshId(layout, piece.id), name: freshName(layout, piece.name) };
  return nearestFree(copy, layout);
}

/** The next free name: `Crash`, then `Crash 2`, `Crash 3`. */
export function freshName(layout: Layout, name: string): string {
  const taken = new Set([...layout.pieces, ...layout.mics].map((thing) => thing.name));
  if (!taken.has(name)) return name;
  const bare = name.replace(/ \d+$/, '').slice(0, 70);
  let count = 2;
  while (taken.has(`${bare} ${count}`)) count += 1;
  return `${bare} ${count}`;
}

/** Where else a second or third piece of a kind usually stands; a right-handed kit. */
const alternatives: Partial<
  Record<PieceKind, readonly { readonly x: number; readonly y: number }[]>
> = {
  snare: [{ x: -650, y: 330 }],
  rackTom: [
    { x: 405, y: 780 },
    { x: -270, y: 830 },
  ],
  floorTom: [
    { x: 800, y: 90 },
    { x: 830, y: 110 },
  ],
  crash: [
    { x: 560, y: 1000 },
    { x: -20, y: 1080 },
  ],
  splash: [
    { x: 215, y: 1000 },
    { x: -120, y: 1000 },
  ],
  china: [{ x: 1050, y: 520 }],
};

function nearestFree(piece: Piece, layout: Layout): Piece {
  if (piece.kind === 'throne') return piece;
  const side = layout.player.leadHand === 'left' ? -1 : 1;
  const usualSpots = (alternatives[piece.kind] ?? []).map(({ x, y }) => ({ x: side * x, y }));
  const spots = [
    { x: piece.x, y: piece.y },
    ...usualSpots,
    ...offsets.map((offset) => ({ x: piece.x + side * offset.x, y: piece.y + offset.y })),
  ];
  return freePlace(piece, spots, layout);
}

function carried(piece: Piece, layout: Layout): Piece {
  const kick = layout.pieces.find((entry) => entry.kind === 'kick');
  return kick && (piece.kind === 'rackTom' || piece.kind === 'percussion')
    ? { ...piece, support: heldBy(kick.id) }
    : piece;
}

/** The kick's pedal first, then the hi-hat's, then a second kick pedal for the left foot. */
function nextPedal(layout: Layout, id: string): Piece {
  const pedals = layout.pieces.filter((piece) => piece.kind === 'pedal');
  const kickPedal = usualPedal(id);
  if (!pedals.some(({ plays }) => plays === 'kick')) return kickPedal;
  if (!pedals.some(({ plays }) => plays === 'hiHat')) return usualHiHatPedal(id);
  return { ...kickPedal, x: -190, foot: 'left' };
}
