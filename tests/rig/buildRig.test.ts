import { describe, expect, it } from 'vitest';
import { findMicClass } from '../../src/layout/catalogue/micClasses.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import type { Rig } from '../../src/rig/placed.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';
import { fivePiece, kits, micOn } from './kits.ts';

const standing = {
  kind: 'stand',
  stand: 'tripodMedium',
  base: { x: 0, y: 0 },
  turn: 0,
  mast: 700,
} as const;

function classOf(id: string): MicClass {
  const found = findMicClass(fivePiece, id);
  if (!found) throw new RangeError(`No class ${id}`);
  return found;
}

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

describe('buildRig at the limits of the layout', () => {
  /** Every number in a placed thing, however deep. */
  const numbersIn = (value: unknown): number[] =>
    typeof value === 'number'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(numbersIn)
        : [];
  const snare = { kind: 'clip', drum: 'snare', material: 'rubber' } as const;
  const atClutch = { x: 0, y: 0, z: 700 };
  const mounts: readonly Mount[] = [
    { ...snare, angle: 0, reach: 300, height: 5, pitch: 90 },
    { ...snare, angle: -360, reach: -60, height: 300, pitch: -10 },
    { ...standing, tip: atClutch, azimuth: 0, pitch: -90 },
    { ...standing, tip: { ...atClutch, x: 2 / 3 }, azimuth: 0, pitch: 0 },
    { kind: 'plateInKick', kick: 'kick', depth: 0 },
    { kind: 'plateOnDeck', x: 0, y: 0, turn: 0 },
  ];

  it('gives finite numbers for upright heads, steep kicks, mics at their clutch and the odd classes', () => {
    const odd = [15, 400].flatMap((length) =>
      (['end', 'side'] as const).map((address) => ({
        ...classOf('compact-dynamic'),
        id: `odd-${length}-${address}`,
        length,
        diameter: 150,
        address,
      })),
    );
    const layout = {
      ...fivePiece,
      ownClasses: odd,
      pieces: fivePiece.pieces.map((piece) =>
        piece.kind === 'kick'
          ? { ...piece, rise: 30 }
          : 'tilt' in piece
            ? { ...piece, tilt: 90 }
            : piece,
      ),
      mics: odd.flatMap(({ id }) => mounts.map((mount) => micOn(mount, id))),
    };
    const rig = buildRig(layout);
    expect(numbersIn([rig.mics, rig.pieces]).filter((value) => !Number.isFinite(value))).toEqual(
      [],
    );
    const found = findStanding(rig, layout.deck);
    expect(numbersIn(found).filter((value) => !Number.isFinite(value))).toEqual([]);
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

  it('gives the same list of pieces while only a mic changes, and of mics while only a piece does that none is on', () => {
    const build = createRigBuilder();
    const before = build(fivePiece);
    expect(build(changedMic(fivePiece, 3)).pieces).toBe(before.pieces);
    const again = build(fivePiece);
    expect(build(changedPiece(fivePiece, 'ride')).mics).toBe(again.mics);
  });

  it('has learnt nothing from a layout that it refused', () => {
    const build = createRigBuilder();
    build(fivePiece);
    const shifted = changedPiece(fivePiece, 'floor');
    const onStand = { ...standing, tip: { x: 0, y: 0, z: 700 }, azimuth: 0, pitch: 0 };
    const broken = { ...shifted, mics: [...shifted.mics, micOn(onStand, 'no such class')] };
    expect(() => build(broken)).toThrow(RangeError);
    expect(build(shifted)).toEqual(buildRig(shifted));
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
