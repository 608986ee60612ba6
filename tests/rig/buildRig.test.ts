import { describe, expect, it } from 'vitest';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import type { Rig } from '../../src/rig/placed.ts';
import { fivePiece, kits } from './kits.ts';

const changedPiece = (layout: Layout, id: string): Layout => ({
  ...layout,
  pieces: layout.pieces.map((piece) =>
    piece.id === id && 'x' in piece ? { ...piece, x: piece.x + 10 } : piece,
  ),
});
const changedMic = (layout: Layout, index: number): Layout => ({
  ...layout,
  mics: layout.mics.map((mic, i) => (i === index ? { ...mic, name: 'Changed' } : mic)),
});
/** Ids of what is another object in the second rig. */
const placedAnew = (before: Rig, after: Rig): string[] => [
  ...after.pieces.filter((p) => !before.pieces.includes(p)).map(({ piece }) => piece.id),
  ...after.mics.filter((m) => !before.mics.includes(m)).map(({ mic }) => mic.id),
];

describe('buildRig', () => {
  it('places every piece and every mic, in the order of the layout', () => {
    for (const layout of kits) {
      const rig = buildRig(layout);
      expect(rig.pieces.map(({ piece }) => piece)).toEqual(layout.pieces);
      expect(rig.mics.map(({ mic }) => mic)).toEqual(layout.mics);
    }
  });
});

describe('createRigBuilder', () => {
  it('gives the same rig for the same data', () => {
    const build = createRigBuilder();
    expect(build(fivePiece)).toBe(build({ ...fivePiece }));
  });

  it('places only a changed mic anew', () => {
    const build = createRigBuilder();
    const before = build(fivePiece);
    expect(placedAnew(before, build(changedMic(fivePiece, 3)))).toEqual([fivePiece.mics[3]?.id]);
  });

  it('places a changed drum and the mics clipped to it anew, and nothing else', () => {
    const build = createRigBuilder();
    const before = build(fivePiece);
    const after = build(changedPiece(fivePiece, 'floor'));
    expect(placedAnew(before, after)).toEqual(['floor', 'mic-floor-tom']);
  });

  it('follows a change of what carries a drum, down which the cable goes', () => {
    const build = createRigBuilder();
    const before = build(fivePiece);
    expect(placedAnew(before, build(changedPiece(fivePiece, 'kick')))).toEqual([
      'kick',
      'mic-kick-plate',
      'mic-rack-1',
      'mic-rack-2',
    ]);
  });

  it('lifts the seat with the player, and only the seat', () => {
    const build = createRigBuilder();
    const before = build(fivePiece);
    const taller = { ...fivePiece, player: { ...fivePiece.player, seatHeight: 540 } };
    expect(placedAnew(before, build(taller))).toEqual(['throne']);
  });

  it('always gives what building from nothing gives', () => {
    const build = createRigBuilder();
    const changes = [
      fivePiece,
      changedMic(fivePiece, 0),
      changedPiece(fivePiece, 'snare'),
      { ...fivePiece, mics: fivePiece.mics.slice(2) },
      ...kits,
    ];
    for (const layout of changes) expect(build(layout)).toEqual(buildRig(layout));
  });
});
