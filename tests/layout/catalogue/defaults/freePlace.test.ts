import { describe, expect, it } from 'vitest';
import { newPiece } from '../../../../src/layout/catalogue/defaults/newPiece.ts';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { addPiece } from '../../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import type { PieceKind } from '../../../../src/layout/pieces/piece.ts';
import { buildRig } from '../../../../src/rig/buildRig.ts';
import { findStanding } from '../../../../src/rig/standing/findStanding.ts';

const kinds: readonly PieceKind[] = [
  'snare',
  'hiHat',
  'rackTom',
  'floorTom',
  'crash',
  'ride',
  'splash',
  'china',
  'percussion',
];

/** What the standing check finds about a new piece. */
function found(kind: PieceKind, layout: Layout): readonly string[] {
  const piece = newPiece(kind, layout);
  const grown = addPiece(layout, piece);
  const id = grown.pieces.at(-1)?.id ?? '';
  return findStanding(buildRig(grown), grown.deck)
    .filter(({ about }) => about.includes(id))
    .filter(({ code }) => code === 'feet-overlap' || code === 'piece-in-piece')
    .map(({ code, about }) => `${kind} ${code} ${about.join()}`);
}

describe('a new piece', () => {
  it.each(STARTING_KITS.map(({ key, make }) => [key, make(key)] as const))(
    'stands free on %s: its feet and its shell',
    (_, layout) => {
      for (const kind of kinds) expect(found(kind, layout)).toEqual([]);
    },
  );

  it('stands free beside four more of its kind', () => {
    for (const { make } of STARTING_KITS.slice(0, 3)) {
      let layout = make('kit');
      for (let i = 0; i < 4; i += 1) {
        expect(found('splash', layout)).toEqual([]);
        layout = addPiece(layout, newPiece('splash', layout));
      }
    }
  });

  it('is put where it is least in the way when a small deck has no room', () => {
    const start = STARTING_KITS[0]?.make('kit');
    if (!start) throw new Error('no kit');
    const small = { ...start, deck: { ...start.deck, width: 1300, depth: 1300 } };
    const full = Array.from({ length: 12 }).reduce<Layout>(
      (layout) => addPiece(layout, newPiece('floorTom', layout)),
      small,
    );
    expect(full.pieces).toHaveLength(small.pieces.length + 12);
  });
});
