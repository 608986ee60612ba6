import fc from 'fast-check';
import { type Vec3, vec } from '../../src/geometry/vector.ts';
import { fivePieceOneRack } from '../../src/layout/catalogue/kits/fivePieceOneRack.ts';
import type { Drum } from '../../src/layout/pieces/drum.ts';
import type { Struck } from '../../src/layout/pieces/piece.ts';
import type { Player } from '../../src/layout/player.ts';
import { Arm, BUTT, ELBOW, GRIP, POSITION, TIP } from '../../src/player/arm.ts';
import type { Move } from '../../src/player/move.ts';

/** The player of the model's own figures: 1750 mm tall, seat at 500 mm, a stick of 406 mm, full strokes of 305 mm. */
export const { player: average } = fivePieceOneRack('average');

/** A level drum of 14 in with its head's centre at a point. */
export const levelDrum = (x: number, y: number, z: number): Drum => ({
  kind: 'snare',
  id: 'snare',
  name: 'Snare',
  x,
  y,
  z,
  tilt: 0,
  tiltToward: 270,
  hands: 'both',
  diameter: 355.6,
  depth: 140,
  rim: { height: 12, width: 10 },
  support: { kind: 'legs', overhang: 40, turn: 0 },
});

/** The same place struck as another kind of piece. */
export function asKind(kind: Struck['kind'], at: Drum): Struck {
  const { id, name, x, y, z, tilt, tiltToward, hands, diameter, support, depth, rim } = at;
  const shared = { id, name, x, y, z, tilt, tiltToward, hands, diameter };
  switch (kind) {
    case 'snare':
    case 'rackTom':
    case 'floorTom':
      return { kind, ...shared, depth, rim, support };
    case 'percussion':
      return { kind, ...shared, depth, support };
    case 'hiHat':
      return {
        kind,
        ...shared,
        opening: 10,
        support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 250, turn: 0 },
      };
    default:
      return { kind, ...shared, support };
  }
}

/** An arm with the two links given, mm. */
export const armOf = (upper: number, fore: number): Arm =>
  new Arm({
    ...average,
    body: { acromionRadiale: upper, radialeStylion: fore - 62, stylionToGripCentre: 62 },
  });

/** Players of all sizes the layout allows, the odd ones included. */
export const anyPlayer: fc.Arbitrary<Player> = fc
  .record({
    stature: fc.integer({ min: 1200, max: 2200 }),
    body: fc.record(
      {
        acromionRadiale: fc.integer({ min: 180, max: 500 }),
        radialeStylion: fc.integer({ min: 140, max: 400 }),
      },
      { requiredKeys: [] },
    ),
    strokeHeight: fc.integer({ min: 20, max: 600 }),
    stick: fc.record({
      length: fc.integer({ min: 250, max: 600 }),
      diameter: fc.integer({ min: 6, max: 40 }),
      butt: fc.integer({ min: 0, max: 240 }),
    }),
  })
  .map((own) => ({ ...average, ...own }));

/** A position with its points apart, hand space. */
export interface Points {
  readonly elbow: Vec3;
  readonly grip: Vec3;
  readonly butt: Vec3;
  readonly tip: Vec3;
}

const points = (row: Float64Array): Points => {
  const point = (i: number): Vec3 => vec(row[i] ?? 0, row[i + 1] ?? 0, row[i + 2] ?? 0);
  return { elbow: point(ELBOW), grip: point(GRIP), butt: point(BUTT), tip: point(TIP) };
};

/** Where a move is at a time. */
export function pointsAt(move: Move, t: number): Points {
  const row = new Float64Array(POSITION);
  move.write(t, row, 0);
  return points(row);
}

/** A row with only the grip in it. */
export function gripRow(grip: Vec3): Float64Array {
  const row = new Float64Array(POSITION);
  row.set([grip.x, grip.y, grip.z], GRIP);
  return row;
}

/** The elbow that belongs to a grip, hand space. */
export function elbowFor(arm: Arm, grip: Vec3): Vec3 {
  const row = gripRow(grip);
  arm.writeElbow(row, 0);
  return points(row).elbow;
}

export const shoulderOf = (arm: Arm): Vec3 => vec(arm.shoulderX, 0, arm.shoulderZ);
