import type { Layout } from '../layout.ts';
import type { Mic } from '../mics/mic.ts';
import { isCymbal, type Piece, type PieceKind } from '../pieces/piece.ts';
import { mapShared } from './change.ts';

/** The usual order of a festival patch: kick, snare, hi-hat, toms, cymbals, percussion, overheads last (common practice, no source). */
const kindOrder: readonly PieceKind[] = [
  'kick',
  'snare',
  'hiHat',
  'rackTom',
  'floorTom',
  'ride',
  'crash',
  'splash',
  'china',
  'percussion',
];
const OVERHEAD = kindOrder.length;
const UNKNOWN = OVERHEAD + 1;

/**
 * Plugs every mic into the box, numbered from 1 in the usual festival order; toms from small to large, else in the order in which
 * they are listed. Mics beyond the box's inputs are numbered on: that there are too many is for a finding to say.
 */
export function numberInputs(layout: Layout): Layout {
  const pieces = new Map(layout.pieces.map((piece) => [piece.id, piece]));
  const ranked = layout.mics
    .map((mic) => ({ mic, ...rankOf(mic, pieces) }))
    .toSorted((a, b) => a.rank - b.rank || a.size - b.size);
  const inputs = new Map(ranked.map(({ mic }, place) => [mic, place + 1]));
  const mics = mapShared(layout.mics, (mic) => {
    const input = inputs.get(mic) ?? null;
    return mic.input === input ? mic : { ...mic, input };
  });
  return mics === layout.mics ? layout : { ...layout, mics };
}

function rankOf(mic: Mic, pieces: ReadonlyMap<string, Piece>): { rank: number; size: number } {
  const heard = mic.hears.flatMap((id) => pieces.get(id) ?? []);
  const [source] = heard;
  if (!source) return { rank: UNKNOWN, size: 0 };
  const rung = heard.filter((piece) => isCymbal(piece) || piece.kind === 'hiHat');
  const over = mic.hears.length > 2 || rung.length > 1;
  if (over) return { rank: OVERHEAD, size: 0 };
  const rank = kindOrder.indexOf(source.kind);
  const tom = source.kind === 'rackTom' || source.kind === 'floorTom';
  return { rank: rank < 0 ? UNKNOWN : rank, size: tom ? source.diameter : 0 };
}
