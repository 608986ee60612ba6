import { describe, expect, it } from 'vitest';
import type { Layout } from '../../../src/layout/layout.ts';
import type { ClipMount, Mount, StandMount } from '../../../src/layout/mics/mount.ts';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { findStanding } from '../../../src/rig/standing/findStanding.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';
import { fivePiece, micOn } from '../kits.ts';

const wideDeck: Layout['deck'] = {
  width: 20_000,
  depth: 20_000,
  height: 0,
  kit: { x: 0, y: 0, turn: 0 },
  stairs: [],
};

/** What is found among some pieces and mics on a deck of 20 x 20 m. Mics are called a, b and so on. */
function among(
  pieces: readonly Piece[],
  mounts: readonly (readonly [mount: Mount, micClass?: string])[],
  deck = wideDeck,
): readonly Standing[] {
  const mics = mounts.map(([mount, micClass], i) => ({
    ...micOn(mount, micClass),
    id: String.fromCharCode(97 + i),
  }));
  return findStanding(buildRig({ ...fivePiece, pieces: [...pieces], mics }), deck);
}

const stand = (change: Partial<StandMount>): StandMount => ({
  kind: 'stand',
  stand: 'tripodTall',
  base: { x: 0, y: 0 },
  turn: 90,
  mast: null,
  tip: { x: 500, y: 0, z: 1300 },
  azimuth: 0,
  pitch: 0,
  ...change,
});

const clip = (change: Partial<ClipMount>): ClipMount => ({
  kind: 'clip',
  drum: 'tom',
  material: 'rubber',
  angle: 90,
  reach: 30,
  height: 45,
  pitch: 35,
  ...change,
});

/** A level tom without a stand: head at z 800, radius 150, 200 deep, hoop 10 wide and high. */
const tom: Piece = {
  kind: 'rackTom',
  id: 'tom',
  name: 'Tom',
  x: 0,
  y: 3000,
  z: 800,
  tilt: 0,
  tiltToward: 270,
  hands: 'both',
  diameter: 300,
  depth: 200,
  rim: { height: 10, width: 10 },
  support: { kind: 'held', by: 'nothing' },
};

/** A level cymbal in the air at z 1300. */
const cymbal: Piece = {
  kind: 'crash',
  id: 'crash',
  name: 'Crash',
  x: 0,
  y: 3000,
  z: 1300,
  tilt: 0,
  tiltToward: 270,
  hands: 'both',
  diameter: 400,
  support: { kind: 'held', by: 'nothing' },
};

/** A kick lying toward +y, front head at y = 3200, radius 280, with a port of 120 mm in its middle at z 300. */
const kick: Piece = {
  kind: 'kick',
  id: 'kick',
  name: 'Kick',
  x: 0,
  y: 3000,
  z: 300,
  turn: 90,
  rise: 0,
  diameter: 560,
  depth: 400,
  rim: { height: 0, width: 0 },
  port: { diameter: 120, right: 0, up: 0 },
  spurs: 100,
};

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

describe('K4: a kick with a port', () => {
  const into = (z: number, depth: number): StandMount =>
    stand({
      stand: 'tripodLow',
      base: { x: 0, y: 3700 },
      turn: 90,
      tip: { x: 0, y: 3200 - depth, z },
      azimuth: 270,
    });

  it('lets a mic through its port and stand inside', () => {
    expect(among([kick], [[into(300, 60), 'kick-dynamic']])).toEqual([]);
  });

  it('finds one that meets the edge of the port, by the difference worked by hand', () => {
    // A body of 80 mm in a port of 120 has 20 mm to spare on every side; 35 mm off centre it overlaps by 15.
    const [only] = among([kick], [[into(335, 60), 'kick-dynamic']]).filter(
      ({ code }) => code === 'mic-in-shell',
    );
    expect(only?.overlap).toBeCloseTo(15, 0);
  });

  it('finds one that reaches the batter head', () => {
    const [only] = among(
      [{ ...kick, depth: 150 }],
      [
        [
          stand({ ...into(300, 0), tip: { x: 0, y: 2920, z: 300 }, base: { x: 0, y: 3500 } }),
          'kick-dynamic',
        ],
      ],
    ).filter(({ code }) => code === 'mic-in-shell');
    // The head is at 3000 - 75 = 2925, the tip 5 mm behind it.
    expect(only?.about).toEqual(['a', 'kick']);
    expect(only?.overlap).toBeCloseTo(5, 3);
  });

  it('finds one that goes in without a port', () => {
    const closed = { ...kick, port: null };
    expect(among([closed], [[into(300, 60), 'kick-dynamic']])[0]).toMatchObject({
      code: 'mic-in-shell',
      about: ['a', 'kick'],
    });
  });

  it('a plate lies in it without being in its way, and cannot come into one without a port', () => {
    const plate: Mount = { kind: 'plateInKick', kick: 'kick', depth: 220 };
    expect(among([kick], [[plate, 'boundary-plate']])).toEqual([]);
    expect(among([{ ...kick, port: null }], [[plate, 'boundary-plate']])[0]?.code).toBe(
      'mic-in-shell',
    );
  });
});

describe('K5: mics against mics', () => {
  it('two bodies that share a place overlap by as much as worked by hand', () => {
    // Parallel pencils of 22 mm, 15 mm apart: 7 mm.
    const at = (y: number, baseY: number) =>
      stand({ base: { x: -200, y: baseY }, tip: { x: 500, y, z: 1300 }, mast: 1600 });
    const [only, ...others] = among([], [[at(0, -500)], [at(15, 515)]]);
    expect(only).toMatchObject({ code: 'mic-against-mic', about: ['a', 'b'] });
    expect(only?.overlap).toBeCloseTo(7, 3);
    expect(others).toEqual([]);
    expect(among([], [[at(0, -500)], [at(40, 540)]])).toEqual([]);
  });
});

describe('K6, K7: feet', () => {
  const withTurn = (x: number, turn: number) =>
    stand({ base: { x, y: 0 }, turn, tip: { x, y: 600, z: 1400 }, azimuth: 90 });
  const feet = (standing: readonly Standing[]) =>
    standing.filter(({ code }) => code === 'feet-overlap');

  it('legs that point at each other cross or meet; turned between each other they do not', () => {
    // Legs of 330 mm, hubs 600 mm apart: two legs on one line reach 60 mm past each other.
    expect(feet(among([], [[withTurn(0, 0)], [withTurn(600, 180)]]))).toHaveLength(1);
    expect(feet(among([], [[withTurn(0, 180)], [withTurn(600, 0)]]))).toEqual([]);
  });

  it('a crossing is as deep as the shorter end past it, as worked by hand', () => {
    // Leg of the first along +x to 330. The second's hub at (200, 230), leg along -y to (200, -100): they cross at (200, 0),
    // 130 and 100 mm before their feet. With half a leg's thickness (8): 108.
    const second = stand({
      base: { x: 200, y: 230 },
      turn: 270,
      tip: { x: 200, y: 830, z: 1400 },
      azimuth: 90,
    });
    const [only] = feet(among([], [[withTurn(0, 0)], [second]]));
    expect(only?.overlap).toBeCloseTo(108, 6);
    expect(only?.place.x).toBeCloseTo(200, 9);
    expect(only?.place.y).toBeCloseTo(0, 9);
  });

  it('a leg on a round base is found, by the depth worked by hand', () => {
    // A disc of 165 mm at 450: a leg of 330 with half its thickness 8 reaches 330 - 285 + 8 = 53 mm onto it.
    const disc = stand({
      stand: 'roundBoom',
      base: { x: 450, y: 0 },
      tip: { x: 450, y: 500, z: 1250 },
      azimuth: 90,
    });
    const [only] = feet(among([], [[withTurn(0, 0)], [disc]]));
    expect(only?.overlap).toBeCloseTo(53, 6);
  });

  it('a leg on a pedal is found; a pedal is not in the way of the hi-hat it plays', () => {
    const pedal: Piece = {
      kind: 'pedal',
      id: 'pedal',
      name: 'Pedal',
      x: 250,
      y: -40,
      turn: 90,
      length: 300,
      width: 100,
      plays: 'hiHat',
      foot: 'left',
    };
    const hiHat: Piece = {
      kind: 'hiHat',
      id: 'hats',
      name: 'Hi-hat',
      x: 0,
      y: 0,
      z: 900,
      tilt: 0,
      tiltToward: 270,
      hands: 'both',
      diameter: 350,
      opening: 20,
      support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 260, turn: 0 },
    };
    expect(feet(among([pedal], [[withTurn(0, 0)]]))[0]?.about).toEqual(['a', 'pedal']);
    expect(feet(among([pedal, hiHat], []))).toEqual([]);
    expect(feet(among([{ ...pedal, plays: 'kick' }, hiHat], []))).toHaveLength(1);
  });

  it('a leg may stand under the flank of a kick as far as it fits', () => {
    const floor = (x: number): Piece => ({
      ...cymbal,
      x,
      z: 1300,
      support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 300, turn: 180 },
    });
    // The foot of a leg toward -x stands at x - 300, on the deck; the shell is 20 mm above it at its lowest, 131 at x = 230.
    expect(feet(among([kick, floor(500)], []))).toEqual([]);
    expect(feet(among([kick, floor(330)], []))).toHaveLength(1);
  });
});

describe('K8: off the deck', () => {
  const deck = { ...wideDeck, width: 2000, depth: 2000 };

  it('tells how far the worst foot stands out, as worked by hand', () => {
    // Legs of 330 with half their thickness: a base at 700 with a leg toward the edge at 1000 stands 38 mm out.
    const at = (x: number) =>
      stand({ base: { x, y: 0 }, turn: 0, tip: { x: x - 500, y: 0, z: 1300 } });
    const [only] = among([], [[at(700)]], deck);
    expect(only).toMatchObject({ code: 'base-off-deck', about: ['a'] });
    expect(only?.overlap).toBeCloseTo(38, 9);
    expect(among([], [[at(660)]], deck)).toEqual([]);
  });

  it('turns and moves with the kit on its deck', () => {
    const turned = { ...deck, kit: { x: 0, y: 300, turn: 90 } };
    const at = (x: number) =>
      stand({ base: { x, y: 0 }, turn: 0, tip: { x: x - 500, y: 0, z: 1300 } });
    // The leg toward +x of the kit points to +y of the deck, from 300 + 400: it stands 38 mm out.
    expect(among([], [[at(400)]], turned)[0]?.overlap).toBeCloseTo(38, 9);
  });

  it('tells of pieces by their feet; a cymbal may hang over the edge', () => {
    const support = {
      kind: 'stand' as const,
      dx: -300,
      dy: 0,
      legs: 3 as const,
      spread: 250,
      turn: 90,
    };
    const over: Piece = { ...cymbal, x: 950, y: 0, support };
    expect(among([over], [], deck)).toEqual([]);
    const out: Piece = { ...over, support: { ...support, dx: 0 } };
    expect(among([out], [], deck)[0]).toMatchObject({ code: 'piece-off-deck', about: ['crash'] });
  });
});
