import { describe, expect, it } from 'vitest';
import { usualHiHat } from '../../../src/layout/catalogue/defaults/usualPieces.ts';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { among, clip, cymbal, stand, tom } from './scenes.ts';

describe('K2: mics and booms in shells, hoops and cymbals', () => {
  it('a body that points down into the drum is as deep as its tip, as worked by hand', () => {
    // Pencil of 22 mm, tip 30 mm below a head at z 800: the tip of its axis is 41 mm above its lowest point... the deepest
    // point of the axis lies 11 mm above the tip, 19 mm under the head, and the radius adds 11: 30 mm.
    const tip = { x: 0, y: 3000, z: 770 };
    const [only, ...others] = among(
      [tom],
      [[stand({ base: { x: 700, y: 3000 }, tip, pitch: -90 })]],
    );
    expect(others).toEqual([]);
    expect(only).toMatchObject({ code: 'mic-in-shell', about: ['a', 'tom'] });
    expect(only?.overlap).toBeCloseTo(30, 3);
  });

  it('a boom through a cymbal is found, one that passes beside it is not', () => {
    // The boom lies level at z 1300 along the x axis, in the plane of a cymbal 400 mm wide, 9 mm thick either way.
    const across = (y: number) =>
      among([cymbal], [[stand({ base: { x: -450, y }, tip: { x: 500, y, z: 1300 } })]]);
    expect(
      across(3000)
        .map(({ code }) => code)
        .sort(),
    ).toContain('boom-through-piece');
    expect(across(3000 + 200 + 12)).toEqual([]);
  });

  it('a clip may touch its own drum with its arm, but its body may not lie in the hoop', () => {
    expect(among([tom], [[clip({}), 'compact-dynamic']])).toEqual([]);
    // Level, 5 mm above the head: a body of 38 mm lies 14 mm deep in the head and across the hoop.
    const [low] = among([tom], [[clip({ height: 5, pitch: 0 }), 'compact-dynamic']]);
    expect(low).toMatchObject({ code: 'mic-in-shell', about: ['a', 'tom'] });
  });

  it('a clip of another drum is in the way with its arm as well', () => {
    const other: Piece = { ...tom, id: 'other', y: 3305, z: 880 };
    const arms = among([tom, other], [[clip({}), 'compact-dynamic']]).filter(
      ({ code }) => code === 'boom-through-piece',
    );
    expect(arms.map(({ about }) => about)).toEqual([['a', 'other']]);
  });
});

describe('K10: the rise of a hi-hat', () => {
  const hat = (opening: number): Piece => ({
    ...usualHiHat('hat'),
    x: 0,
    y: 3000,
    z: 900,
    tilt: 0,
    opening,
  });
  // A thin pencil, level, its tip 60 mm inside the edge, its axis 45 mm over the closed top's edge plane.
  const between = (opening: number) => {
    const piece = hat(opening);
    if (piece.kind !== 'hiHat') throw new Error('a hi-hat was made');
    const tip = { x: piece.diameter / 2 - 60, y: 3000, z: 945 };
    return among([piece], [[stand({ base: { x: 900, y: 3000 }, tip, azimuth: 180, pitch: 0 })]]);
  };

  it('a mic that the top falls on is found though neither cymbal touches it', () => {
    expect(between(25)).toEqual([]);
    const codes = between(100).map(({ code, about }) => [code, ...about]);
    expect(codes).toContainEqual(['mic-in-shell', 'a', 'hat']);
  });
});

describe('K3: mics against stands', () => {
  it('a boom against the mast of a cymbal stand is found', () => {
    const held: Piece = {
      ...cymbal,
      z: 1600,
      support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 300, turn: 90 },
    };
    const crossing = among(
      [held],
      [[stand({ base: { x: -500, y: 3000 }, tip: { x: 350, y: 3000, z: 1200 } })]],
    );
    const codes = crossing.map(({ code }) => code);
    expect(codes).toContain('mic-against-stand');
  });
});
