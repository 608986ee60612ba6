import { describe, expect, it } from 'vitest';
import { outsideOutline } from '../../src/geometry/planSegments.ts';
import { length } from '../../src/geometry/vector.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { PlacedPiece } from '../../src/rig/placed.ts';
import { placePiece } from '../../src/rig/placePiece.ts';
import { fivePiece, kits } from './kits.ts';
import { pieceText } from './mirrored.ts';

const placed = (layout: Layout): PlacedPiece[] =>
  layout.pieces.map((piece) => placePiece(piece, layout));

function placedPiece(id: string, change: object = {}): PlacedPiece {
  const piece = fivePiece.pieces.find((entry) => entry.id === id);
  if (!piece) throw new RangeError(`No piece ${id}`);
  return placePiece({ ...piece, ...change }, fivePiece);
}

describe('placePiece', () => {
  it('gives exactly mirrored solids, feet and outlines for a mirrored kit', () => {
    for (const layout of kits) {
      const mirrored = placed(mirrorKit(layout)).map((piece) => pieceText(piece, 1));
      expect(mirrored).toEqual(placed(layout).map((piece) => pieceText(piece, -1)));
    }
  });

  it('keeps every solid on or above the deck, to a millimetre', () => {
    for (const piece of kits.flatMap(placed)) {
      for (const { a, b, radius } of piece.hardware) {
        expect(Math.min(a.z, b.z) - radius, piece.piece.id).toBeGreaterThan(-1);
      }
    }
  });

  it('P4: a drum is as deep below its head as it is nominally, along its axis', () => {
    const [shell] = placedPiece('rack-2').shells;
    const drum = fivePiece.pieces.find(({ id }) => id === 'rack-2');
    if (!shell || drum?.kind !== 'rackTom') throw new Error('no rack tom');
    expect(shell.halfHeight * 2).toBe(drum.depth);
    expect(shell.centre.x + shell.axis.x * shell.halfHeight).toBeCloseTo(drum.x, 9);
    expect(shell.centre.z + shell.axis.z * shell.halfHeight).toBeCloseTo(drum.z, 9);
    expect(length(shell.axis)).toBeCloseTo(1, 12);
  });

  it('P5: a hoop stands beyond each head and outside the shell, and is left out where it has no size', () => {
    const { shells, hoops } = placedPiece('snare', { tilt: 0 });
    expect(hoops).toHaveLength(2);
    expect(hoops[0]?.innerRadius).toBe(shells[0]?.radius);
    expect(hoops[0]?.outerRadius).toBe((shells[0]?.radius ?? 0) + 10);
    // 12 mm high on a head at 660: from 660 to 672.
    expect(hoops[0]?.centre.z).toBeCloseTo(666, 9);
    expect(hoops[0]?.halfHeight).toBe(6);
    expect(placedPiece('snare', { rim: { height: 0, width: 10 } }).hoops).toEqual([]);
  });

  it('P1, P2, P6: a stand under a drum is a mast; beside it, an arm leads to the shell', () => {
    const support = { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 220, turn: 90 };
    const under = placedPiece('snare', { tilt: 0, support });
    // Mast and three legs; the mast ends at the underside of the shell: 660 - 139.7.
    expect(under.hardware).toHaveLength(4);
    expect(under.hardware[0]?.b.z).toBeCloseTo(520.3, 9);
    const beside = placedPiece('snare', { tilt: 0, support: { ...support, dx: 300 } });
    expect(beside.hardware).toHaveLength(5);
    expect(beside.hardware[1]?.b).toEqual(beside.shells[0]?.centre);
    // It reaches out 300 and so rises 150 to the shell's middle, at 660 - 69.85.
    expect(beside.hardware[0]?.b.z).toBeCloseTo(440.15, 9);
  });

  it('P3: legs on a shell stand outside it by the overhang, each a footprint of its own without legs to a hub', () => {
    const { footprints, hardware } = placedPiece('floor', {
      tilt: 0,
      support: { kind: 'legs', overhang: 45, turn: 30 },
    });
    const drum = fivePiece.pieces.find(({ id }) => id === 'floor');
    if (drum?.kind !== 'floorTom') throw new Error('no floor tom');
    expect(footprints).toHaveLength(3);
    expect(hardware).toHaveLength(3);
    for (const { hub, feet } of footprints) {
      expect(feet).toEqual([]);
      expect(Math.hypot(hub.x - drum.x, hub.y - drum.y)).toBeCloseTo(drum.diameter / 2 + 45, 9);
    }
  });

  it('F1, F2: three feet at turn + 120 k; two legs 90 degrees apart, centred on the turn', () => {
    const feet = (legs: 2 | 3) =>
      placedPiece('hi-hat', {
        support: { kind: 'stand', dx: 0, dy: 0, legs, spread: 200, turn: 90 },
      }).footprints.flatMap(({ hub, feet: tips }) =>
        tips.map((tip) => Math.round((Math.atan2(tip.y - hub.y, tip.x - hub.x) * 180) / Math.PI)),
      );
    expect(feet(3).sort((p, q) => p - q)).toEqual([-150, -30, 90]);
    expect(feet(2).sort((p, q) => p - q)).toEqual([45, 135]);
  });

  it('P7: a cymbal is a thin disc about its centre, of its own radius', () => {
    const { shells } = placedPiece('ride');
    const ride = fivePiece.pieces.find(({ id }) => id === 'ride');
    if (ride?.kind !== 'ride') throw new Error('no ride');
    expect(shells).toHaveLength(1);
    expect(shells[0]).toMatchObject({
      centre: { x: ride.x, y: ride.y, z: ride.z },
      radius: ride.diameter / 2,
      halfHeight: 3,
    });
  });

  it('P8: a stand holds a cymbal by a stem 40 mm long, square to it, below its centre', () => {
    const support = { kind: 'stand', dx: 150, dy: -80, legs: 3, spread: 300, turn: 10 };
    for (const tilt of [0, 12, 30]) {
      const { shells, hardware } = placedPiece('ride', { tilt, tiltToward: 200, support });
      const stem = hardware.at(-1);
      const [disc] = shells;
      if (!stem || !disc) throw new Error('expected a stem and a cymbal');
      expect(stem.b).toEqual(disc.centre);
      const [dx, dy, dz] = [stem.b.x - stem.a.x, stem.b.y - stem.a.y, stem.b.z - stem.a.z];
      expect(dx).toBeCloseTo(40 * disc.axis.x, 9);
      expect(dy).toBeCloseTo(40 * disc.axis.y, 9);
      expect(dz).toBeCloseTo(40 * disc.axis.z, 9);
      expect(dz).toBeGreaterThan(0);
    }
  });

  it('P9: the cymbals of a hi-hat touch when closed and stand apart by the opening', () => {
    const open = (opening: number) => {
      const [upper, lower] = placedPiece('hi-hat', { tilt: 0, opening }).shells;
      return (
        (upper?.centre.z ?? 0) -
        (upper?.halfHeight ?? 0) -
        (lower?.centre.z ?? 0) -
        (lower?.halfHeight ?? 0)
      );
    };
    expect(open(0)).toBeCloseTo(0, 9);
    expect(open(30)).toBeCloseTo(30, 9);
  });

  it('P10: a kick lies along its turn with its front lifted by its rise, its centre the middle of the shell', () => {
    const kick = fivePiece.pieces.find(({ id }) => id === 'kick');
    if (kick?.kind !== 'kick') throw new Error('no kick');
    // Turn 90 faces the audience (+y); cos 60 and sin 30 are a half.
    const [lifted] = placedPiece('kick', { turn: 90, rise: 30 }).shells;
    expect(lifted?.axis.x).toBeCloseTo(0, 12);
    expect(lifted?.axis.y).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(lifted?.axis.z).toBeCloseTo(0.5, 12);
    const [turned] = placedPiece('kick', { turn: 30, rise: 0 }).shells;
    expect(turned?.axis.x).toBeCloseTo(Math.sqrt(3) / 2, 12);
    expect(turned?.axis.y).toBeCloseTo(0.5, 12);
    for (const shell of [lifted, turned]) {
      expect(shell?.centre).toEqual({ x: kick.x, y: kick.y, z: kick.z });
      expect(2 * (shell?.halfHeight ?? 0)).toBeCloseTo(kick.depth, 9);
    }
  });

  it('P11, P12: a kick lies along its turn; its spurs stand outside its outline, on the deck', () => {
    const { shells, footprints, outlines } = placedPiece('kick');
    expect(shells[0]?.axis.y).toBe(1);
    expect(footprints).toHaveLength(2);
    const [outline] = outlines;
    if (!outline) throw new Error('no outline');
    for (const { hub, hubRadius } of footprints) {
      expect(outsideOutline(outline, hub)).toBeGreaterThan(hubRadius);
    }
    // 22 x 18 in with hoops 12 mm wide and 20 mm high.
    const xs = outline.map(({ x }) => x);
    const ys = outline.map(({ y }) => y);
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(558.8 + 24, 9);
    expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(457.2 + 40, 9);
  });

  it('P13: a pedal lies inside its outline, from heel to toe', () => {
    const { outlines, hardware, piece } = placedPiece('pedal-kick');
    const [outline] = outlines;
    if (!outline || piece.kind !== 'pedal') throw new Error('no pedal');
    for (const { a, b, radius } of hardware) {
      expect(outsideOutline(outline, a)).toBeLessThanOrEqual(-radius + 1e-9);
      expect(outsideOutline(outline, b)).toBeLessThanOrEqual(-radius + 1e-9);
    }
  });

  it('P14: the top of the seat is at the seat height of the player', () => {
    const throne = fivePiece.pieces.find(({ kind }) => kind === 'throne');
    if (!throne) throw new Error('no throne');
    const player = { ...fivePiece.player, seatHeight: 560 };
    const [seat] = placePiece(throne, { player }).shells;
    expect((seat?.centre.z ?? 0) + (seat?.halfHeight ?? 0)).toBe(560);
  });
});
