import type { Layout } from '../../../src/layout/layout.ts';
import type { ClipMount, Mount, StandMount } from '../../../src/layout/mics/mount.ts';
import type { Cymbal } from '../../../src/layout/pieces/cymbal.ts';
import type { Drum } from '../../../src/layout/pieces/drum.ts';
import type { Kick } from '../../../src/layout/pieces/kick.ts';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { findStanding } from '../../../src/rig/standing/findStanding.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';
import { fivePiece, micOn } from '../kits.ts';

export const wideDeck: Layout['deck'] = {
  width: 20_000,
  depth: 20_000,
  height: 0,
  kit: { x: 0, y: 0, turn: 0 },
  stairs: [],
};

/** What is found among some pieces and mics on a deck of 20 x 20 m. Mics are called a, b and so on. */
export function among(
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

export const stand = (change: Partial<StandMount>): StandMount => ({
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

export const clip = (change: Partial<ClipMount>): ClipMount => ({
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
export const tom: Drum = {
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
export const cymbal: Cymbal = {
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
export const kick: Kick = {
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
