import { fromInches } from '../../../units/inch.ts';
import type { Id } from '../../fields.ts';
import type { Cymbal } from '../../pieces/cymbal.ts';
import type { Drum } from '../../pieces/drum.ts';
import type { HiHat } from '../../pieces/hiHat.ts';
import type { Kick } from '../../pieces/kick.ts';
import type { Pedal } from '../../pieces/pedal.ts';
import type { Percussion } from '../../pieces/percussion.ts';
import type { Piece, PieceKind } from '../../pieces/piece.ts';
import type { Support } from '../../pieces/support.ts';
import type { Throne } from '../../pieces/throne.ts';

/**
 * One usual piece of each kind, where it usually stands on a right-handed kit. Sizes, heights, tilts and feet are common
 * practice, from memory, inside the ranges that set-up guides give; every number can be changed.
 */

/** Toward the player. */
const PLAYER = 270;

/** A kick's shell stands this far off the deck on its spurs. */
const KICK_LIFT = 25;

/** A tripod of the piece's own: hub under its centre, or `dx`, `dy` away from it. */
export const onStand = (spread: number, turn: number, dx = 0, dy = 0): Support => ({
  kind: 'stand',
  dx,
  dy,
  legs: 3,
  spread,
  turn,
});

export const heldBy = (by: Id): Support => ({ kind: 'held', by });

/** The port cut into the front head: 5 in, low and off centre. */
export const usualPort = { diameter: fromInches(5), right: 100, up: -100 };

/** Height of a kick's centre when its shell stands on its spurs. */
export const kickHeight = (diameter: number): number => diameter / 2 + KICK_LIFT;

export const usualKick = (id: Id): Kick => ({
  kind: 'kick',
  id,
  name: 'Kick',
  x: 150,
  y: 1060,
  z: kickHeight(fromInches(22)),
  turn: 90,
  rise: 0,
  diameter: fromInches(22),
  depth: fromInches(18),
  rim: { height: 20, width: 12 },
  port: usualPort,
  spurs: 110,
});

export const usualSnare = (id: Id): Drum => ({
  kind: 'snare',
  id,
  name: 'Snare',
  x: -70,
  y: 440,
  z: 660,
  tilt: 4,
  tiltToward: PLAYER,
  hands: 'both',
  diameter: fromInches(14),
  depth: fromInches(5.5),
  rim: { height: 12, width: 10 },
  support: onStand(220, 255),
});

export const usualRackTom = (id: Id): Drum => ({
  kind: 'rackTom',
  id,
  name: 'Rack tom',
  x: 60,
  y: 800,
  z: 840,
  tilt: 12,
  tiltToward: PLAYER,
  hands: 'both',
  diameter: fromInches(12),
  depth: fromInches(8),
  rim: { height: 10, width: 8 },
  support: onStand(280, 90),
});

export const usualFloorTom = (id: Id): Drum => ({
  kind: 'floorTom',
  id,
  name: 'Floor tom',
  x: 510,
  y: 400,
  z: 650,
  tilt: 3,
  tiltToward: 218,
  hands: 'both',
  diameter: fromInches(16),
  depth: fromInches(16),
  rim: { height: 10, width: 8 },
  support: { kind: 'legs', overhang: 45, turn: 90 },
});

export const usualHiHat = (id: Id): HiHat => ({
  kind: 'hiHat',
  id,
  name: 'Hi-hat',
  x: -430,
  y: 580,
  z: 860,
  tilt: 0,
  tiltToward: PLAYER,
  hands: 'both',
  diameter: fromInches(14),
  opening: 25,
  support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 250, turn: 20 },
});

const cymbalAt = (id: Id, shape: Pick<Cymbal, 'kind' | 'name' | 'x' | 'y' | 'z'>): Cymbal => ({
  ...shape,
  id,
  tilt: 15,
  tiltToward: PLAYER,
  hands: 'both',
  diameter: fromInches(16),
  support: onStand(300, 90),
});

export const usualCrash = (id: Id): Cymbal => ({
  ...cymbalAt(id, { kind: 'crash', name: 'Crash', x: -350, y: 900, z: 1130 }),
  tiltToward: 291,
  support: onStand(300, 30, -210, 220),
});

export const usualRide = (id: Id): Cymbal => ({
  ...cymbalAt(id, { kind: 'ride', name: 'Ride', x: 650, y: 720, z: 960 }),
  tiltToward: 228,
  hands: 'lead',
  diameter: fromInches(20),
  support: onStand(320, 30, 160, 70),
});

export const usualSplash = (id: Id): Cymbal => ({
  ...cymbalAt(id, { kind: 'splash', name: 'Splash', x: 150, y: 960, z: 1100 }),
  diameter: fromInches(10),
});

export const usualChina = (id: Id): Cymbal => ({
  ...cymbalAt(id, { kind: 'china', name: 'China', x: 950, y: 560, z: 1200 }),
  tiltToward: 210,
  diameter: fromInches(18),
});

export const usualPercussion = (id: Id): Percussion => ({
  kind: 'percussion',
  id,
  name: 'Cowbell',
  x: 150,
  y: 900,
  z: 900,
  tilt: 15,
  tiltToward: PLAYER,
  hands: 'both',
  diameter: fromInches(3),
  depth: fromInches(6),
  support: onStand(260, 90),
});

export const usualPedal = (id: Id): Pedal => ({
  kind: 'pedal',
  id,
  name: 'Kick pedal',
  x: 150,
  y: 520,
  turn: 90,
  length: 300,
  width: 100,
  plays: 'kick',
  foot: 'right',
});

/** The hi-hat's own pedal, in front of the usual hi-hat. */
export const usualHiHatPedal = (id: Id): Pedal => ({
  ...usualPedal(id),
  name: 'Hi-hat pedal',
  x: -285,
  y: 330,
  turn: 120,
  length: 260,
  plays: 'hiHat',
  foot: 'left',
});

export const usualThrone = (id: Id): Throne => ({
  kind: 'throne',
  id,
  name: 'Throne',
  diameter: 330,
  legs: 3,
  spread: 260,
  turn: PLAYER,
});

const usual: Readonly<Record<PieceKind, (id: Id) => Piece>> = {
  kick: usualKick,
  snare: usualSnare,
  rackTom: usualRackTom,
  floorTom: usualFloorTom,
  hiHat: usualHiHat,
  crash: usualCrash,
  ride: usualRide,
  splash: usualSplash,
  china: usualChina,
  percussion: usualPercussion,
  pedal: usualPedal,
  throne: usualThrone,
};

/** A usual piece of a kind, where it usually stands. */
export const usualPiece = (kind: PieceKind, id: Id): Piece => usual[kind](id);
