import fc from 'fast-check';
import { squareRiser, startingKit } from '../../src/layout/catalogue/kits/startingKit.ts';
import { MIC_CLASSES } from '../../src/layout/catalogue/micClasses.ts';
import { STAND_CLASSES } from '../../src/layout/catalogue/standClasses.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';
import { isDrum, type Piece } from '../../src/layout/pieces/piece.ts';
import type { Support } from '../../src/layout/pieces/support.ts';
import type { Player } from '../../src/layout/player.ts';

/**
 * Random kits that pass the layout's own check: pieces of every kind within a player's reach or a little beyond, players of all
 * sizes and both lead hands, mics on clips, stands and plates. They are not good kits: things stand in each other.
 */

/** A number of tenths, so that shrinking ends at values a person can read. */
const tenths = (low: number, high: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(low * 10), max: Math.floor(high * 10) }).map((n) => n / 10);
const azimuth = fc.integer({ min: 0, max: 719 }).map((n) => n / 2);
/** Chooses an entry of a list that is not known yet. */
const choice = fc.nat({ max: 999 });

const freeSupport: fc.Arbitrary<Support> = fc.oneof(
  fc.record({
    kind: fc.constant('stand' as const),
    dx: tenths(-300, 300),
    dy: tenths(-300, 300),
    legs: fc.constantFrom(2 as const, 3 as const),
    spread: tenths(150, 350),
    turn: azimuth,
  }),
  fc.record({ kind: fc.constant('legs' as const), overhang: tenths(0, 80), turn: azimuth }),
);

const struck = {
  id: fc.constant(''),
  name: fc.constantFrom('One', 'Two', 'A <b>bold</b> name', 'Größe'),
  x: tenths(-900, 900),
  y: tenths(150, 1150),
  z: tenths(550, 1350),
  tilt: tenths(0, 35),
  tiltToward: azimuth,
  hands: fc.constantFrom('both', 'both', 'both', 'lead', 'right', 'left', 'none'),
};

const drum = fc.record({
  ...struck,
  kind: fc.constantFrom('snare', 'rackTom', 'floorTom'),
  diameter: tenths(200, 460),
  depth: tenths(120, 450),
  rim: fc.record({ height: tenths(0, 20), width: tenths(0, 15) }),
  support: freeSupport,
});
const cymbal = fc.record({
  ...struck,
  kind: fc.constantFrom('crash', 'ride', 'splash', 'china'),
  diameter: tenths(150, 600),
  support: freeSupport,
});
const hiHat = fc.record({
  ...struck,
  kind: fc.constant('hiHat'),
  diameter: tenths(250, 410),
  opening: tenths(0, 50),
  support: freeSupport.filter((support) => support.kind === 'stand'),
});
const percussion = fc.record({
  ...struck,
  kind: fc.constant('percussion'),
  diameter: tenths(50, 200),
  depth: tenths(50, 200),
  support: freeSupport,
});
const kick = fc.record({
  id: fc.constant(''),
  name: fc.constant('Kick'),
  kind: fc.constant('kick'),
  x: tenths(-200, 400),
  y: tenths(900, 1200),
  z: tenths(250, 350),
  turn: azimuth,
  rise: tenths(-5, 10),
  diameter: tenths(400, 660),
  depth: tenths(300, 500),
  rim: fc.record({ height: tenths(0, 40), width: tenths(0, 20) }),
  port: fc.option(
    fc.record({ diameter: tenths(80, 200), right: tenths(-120, 120), up: tenths(-120, 120) }),
  ),
  spurs: tenths(0, 150),
});
const pedal = fc.record({
  id: fc.constant(''),
  name: fc.constant('Pedal'),
  kind: fc.constant('pedal'),
  x: tenths(-400, 400),
  y: tenths(300, 650),
  turn: azimuth,
  length: tenths(200, 350),
  width: tenths(80, 150),
  plays: fc.constantFrom('kick', 'hiHat'),
  foot: fc.constantFrom('right', 'left'),
});
const throne: fc.Arbitrary<Piece> = fc.record({
  kind: fc.constant('throne' as const),
  id: fc.constant('throne'),
  name: fc.constant('Throne'),
  diameter: tenths(250, 400),
  legs: fc.constantFrom(3 as const, 4 as const, 5 as const),
  spread: tenths(200, 350),
  turn: azimuth,
});

/** A piece and, for some, which earlier piece holds it. */
const drawnPiece = fc.record({
  piece: fc.oneof(
    { weight: 4, arbitrary: drum },
    { weight: 3, arbitrary: cymbal },
    { weight: 1, arbitrary: hiHat },
    { weight: 1, arbitrary: percussion },
    { weight: 1, arbitrary: kick },
    { weight: 1, arbitrary: pedal },
  ) as fc.Arbitrary<Piece>,
  by: fc.option(choice, { freq: 4 }),
});

const player: fc.Arbitrary<Player> = fc.record({
  name: fc.constant('Someone'),
  stature: tenths(1450, 2000),
  seatHeight: tenths(420, 600),
  leadHand: fc.constantFrom('right', 'left'),
  hiHat: fc.constantFrom('either', 'crossed', 'open'),
  body: fc.record(
    { biacromialBreadth: tenths(320, 460), acromionRadiale: tenths(280, 380) },
    { requiredKeys: [] },
  ),
  stick: fc.record({
    length: tenths(350, 430),
    diameter: tenths(11, 17),
    butt: tenths(60, 140),
  }),
  strokeHeight: tenths(80, 450),
  lean: tenths(0, 400),
});

const ownClass: fc.Arbitrary<MicClass> = fc.record({
  id: fc.constant('own-class'),
  name: fc.constant('My own'),
  length: tenths(30, 250),
  diameter: tenths(10, 90),
  address: fc.constantFrom('end', 'side'),
  patternA: fc.integer({ min: 0, max: 100 }).map((n) => n / 100),
  type: fc.constantFrom('dynamic', 'condenser', 'ribbon', 'boundary'),
  phantom: fc.boolean(),
  connector: fc.constantFrom('straight', 'rightAngle', 'thinCable'),
  mass: tenths(0.1, 2),
});

const stand = fc.record({
  kind: fc.constant('stand' as const),
  stand: fc.constantFrom(...STAND_CLASSES.map(({ standClass }) => standClass)),
  base: fc.record({ x: tenths(-1200, 1200), y: tenths(-400, 1700) }),
  turn: azimuth,
  mast: fc.option(tenths(300, 1700)),
  tip: fc.record({ x: tenths(-900, 900), y: tenths(100, 1400), z: tenths(150, 2000) }),
  azimuth,
  pitch: tenths(-90, 60),
});
const plateOnDeck = fc.record({
  kind: fc.constant('plateOnDeck' as const),
  x: tenths(-900, 900),
  y: tenths(600, 1700),
  turn: azimuth,
});
const clip = fc.record({
  kind: fc.constant('clip' as const),
  drum: choice,
  material: fc.constantFrom('rubber' as const, 'metal' as const),
  angle: azimuth,
  reach: tenths(-30, 120),
  height: tenths(10, 120),
  pitch: tenths(-10, 90),
});
const plateInKick = fc.record({
  kind: fc.constant('plateInKick' as const),
  kick: choice,
  depth: tenths(50, 350),
});

const drawnMic = fc.record({
  micClass: choice,
  hears: fc.array(choice, { maxLength: 4 }),
  mount: fc.oneof(
    { weight: 4, arbitrary: clip },
    { weight: 4, arbitrary: stand },
    { weight: 1, arbitrary: plateInKick },
    { weight: 1, arbitrary: plateOnDeck },
  ),
  input: fc.option(fc.integer({ min: 1, max: 16 })),
});
type DrawnMic = typeof drawnMic extends fc.Arbitrary<infer Drawn> ? Drawn : never;

const pick = <T>(list: readonly T[], chosen: number): T | undefined => list[chosen % list.length];

function named(drawn: readonly { piece: Piece; by: number | null }[]): Piece[] {
  return drawn.map(({ piece, by }, index) => {
    const own = { ...piece, id: `p${index + 1}` };
    const canBeHeld = 'support' in own && own.kind !== 'hiHat';
    return by === null || index === 0 || !canBeHeld
      ? own
      : { ...own, support: { kind: 'held' as const, by: `p${1 + (by % index)}` } };
  });
}

function micOf(drawn: DrawnMic, index: number, pieces: readonly Piece[], classes: string[]): Mic[] {
  const mount = mountOf(drawn.mount, pieces);
  const micClass = pick(classes, drawn.micClass);
  if (!mount || micClass === undefined) return [];
  const hears = [...new Set(drawn.hears.flatMap((chosen) => pick(pieces, chosen)?.id ?? []))];
  return [
    { id: `m${index + 1}`, name: `Mic ${index + 1}`, micClass, hears, mount, input: drawn.input },
  ];
}

function mountOf(drawn: DrawnMic['mount'], pieces: readonly Piece[]): Mount | undefined {
  if (drawn.kind === 'clip') {
    const holder = pick(pieces.filter(isDrum), drawn.drum);
    return holder && { ...drawn, drum: holder.id };
  }
  if (drawn.kind === 'plateInKick') {
    const holder = pick(
      pieces.filter((piece) => piece.kind === 'kick'),
      drawn.kick,
    );
    return holder && { ...drawn, kick: holder.id };
  }
  return drawn;
}

/** Any kit of the kind above. */
export const randomKit: fc.Arbitrary<Layout> = fc
  .record({
    throne: fc.option(throne, { freq: 10 }),
    pieces: fc.array(drawnPiece, { minLength: 2, maxLength: 14 }),
    mics: fc.array(drawnMic, { minLength: 1, maxLength: 8 }),
    player,
    own: fc.option(ownClass),
    margin: tenths(0, 100),
    kit: fc.record({ x: tenths(-300, 300), y: tenths(-900, -300), turn: azimuth }),
  })
  .map((drawn) => {
    const pieces = named(drawn.pieces);
    const ownClasses = drawn.own ? [drawn.own] : [];
    const classes = [...MIC_CLASSES, ...ownClasses].map(({ id }) => id);
    const kit = startingKit({
      id: 'random',
      name: 'Random kit',
      deck: { ...squareRiser, kit: drawn.kit },
      pieces: drawn.throne ? [drawn.throne, ...pieces] : pieces,
      mics: [],
      box: { x: -1130, y: -500, turn: 0, inputs: 12, tail: 15_000 },
    });
    const mics = drawn.mics.flatMap((mic, index) => micOf(mic, index, pieces, classes));
    return { ...kit, player: drawn.player, margin: drawn.margin, ownClasses, mics };
  });

/** The same kits every time for the same seed. */
export const seededKits = (count: number, seed: number): readonly Layout[] =>
  fc.sample(randomKit, { numRuns: count, seed });
