import { describe, expect, test } from 'vitest';
import { newPiece } from '../../../../src/layout/catalogue/defaults/newPiece.ts';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { mirrorKit } from '../../../../src/layout/edit/mirror.ts';
import { addPiece } from '../../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import type { PieceKind } from '../../../../src/layout/pieces/piece.ts';
import { checkLayout } from '../../../../src/layout/read.ts';
import { buildRig } from '../../../../src/rig/buildRig.ts';

const kitOf = (key: string): Layout => {
  const kit = STARTING_KITS.find((entry) => entry.key === key);
  if (!kit) throw new Error(`no kit ${key}`);
  return kit.make(key);
};
const kinds: readonly PieceKind[] = [
  'kick',
  'pedal',
  'snare',
  'hiHat',
  'pedal',
  'rackTom',
  'floorTom',
  'crash',
  'ride',
  'splash',
  'china',
  'percussion',
];
const grown = (layout: Layout): Layout =>
  kinds.reduce((kit, kind) => addPiece(kit, newPiece(kind, kit)), layout);

describe('on an empty deck', () => {
  const kit = grown(kitOf('empty-deck'));

  test('one of every kind makes a kit that passes its own check', () => {
    expect(checkLayout(kit)).toEqual({ ok: true, layout: kit });
    expect(kit.pieces).toHaveLength(kinds.length + 1);
  });

  test('no two shells stand in each other on the plan at the same height', () => {
    const cans = buildRig(kit).pieces.flatMap(({ piece, shells }) =>
      piece.kind === 'kick' ? [] : shells.map((shell) => ({ id: piece.id, ...shell })),
    );
    for (const a of cans) {
      for (const b of cans) {
        if (a.id >= b.id) continue;
        const level = Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y);
        const upright = Math.abs(a.centre.z - b.centre.z);
        const apart =
          level >= a.radius + b.radius ||
          upright >= a.halfHeight * a.axis.z + b.halfHeight * b.axis.z;
        expect([a.id, b.id, apart]).toEqual([a.id, b.id, true]);
      }
    }
  });

  test('the first pedal is the kick’s, the second the hi-hat’s', () => {
    const pedals = kit.pieces.flatMap((piece) => (piece.kind === 'pedal' ? [piece] : []));
    expect(pedals.map(({ plays, foot }) => [plays, foot])).toEqual([
      ['kick', 'right'],
      ['hiHat', 'left'],
    ]);
  });

  test('a rack tom hangs on the kick, when there is one', () => {
    expect(kit.pieces.find(({ kind }) => kind === 'rackTom')).toMatchObject({
      support: { kind: 'held', by: 'kick' },
    });
    expect(newPiece('rackTom', kitOf('empty-deck'))).toMatchObject({ support: { kind: 'stand' } });
  });
});

test('for a left-handed player everything is put on the other side', () => {
  // A mirrored kit stays where it is on the deck: only in the deck's middle are its edges as near.
  const empty = kitOf('empty-deck');
  const centred = { ...empty, deck: { ...empty.deck, kit: { ...empty.deck.kit, x: 0 } } };
  const left = grown(mirrorKit(centred));
  expect(mirrorKit(left).pieces).toEqual(grown(centred).pieces);
});

test('names and ids are each used once', () => {
  const kit = grown(kitOf('large-kit'));
  const added = kit.pieces.slice(-kinds.length);
  expect(new Set(kit.pieces.map(({ id }) => id)).size).toBe(kit.pieces.length);
  expect(added.find(({ kind }) => kind === 'crash')?.name).toBe('Crash');
  expect(added.find(({ kind }) => kind === 'kick')?.name).toBe('Kick 2');
});
