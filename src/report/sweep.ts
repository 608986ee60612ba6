import type { Movement } from '../clearance/nearest.ts';
import { type Vec3, vec } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { Arm, BUTT, ELBOW, GRIP, POSITION, TIP } from '../player/arm.ts';
import { mirrored, type Side, signOf } from '../player/hands.ts';
import type { Move } from '../player/move.ts';
import { playingOf } from '../player/moves.ts';
import type { Mm } from '../units/quantity.ts';

/** One position of an arm with its stick in a move; kit frame, mm. `at` runs from 0 to 1 over the move. */
export interface ArmPosition {
  readonly at: number;
  readonly elbow: Vec3;
  readonly grip: Vec3;
  readonly butt: Vec3;
  readonly tip: Vec3;
}

/** Radii of an arm's parts: the stick and forearm are capsules, the hand a ball about the grip. */
export type ArmRadii = Readonly<Record<Arm['parts'][number]['name'], Mm>>;

/** The way an arm goes in one move, evenly spaced in time, for drawing. */
export interface Sweep {
  readonly hand: Side;
  readonly positions: readonly ArmPosition[];
  readonly radii: ArmRadii;
}

/** The arm's way in a stroke or a travel, in `steps` + 1 positions; null for legs and cymbals, which have no way. */
export function sweepOf(layout: Layout, movement: Movement, steps: number): Sweep | null {
  const move = moveOf(layout, movement);
  if (!move) return null;
  const positions = Array.from({ length: steps + 1 }, (_, step) => positionOf(move, step / steps));
  return { hand: move.side, positions, radii: radiiOf(layout) };
}

/** The arm at one moment of a stroke or a travel; null for legs and cymbals. */
export function armAt(layout: Layout, movement: Movement, at: number): ArmPosition | null {
  const move = moveOf(layout, movement);
  return move ? positionOf(move, at) : null;
}

export function radiiOf({ player }: Pick<Layout, 'player'>): ArmRadii {
  const radius = new Map(new Arm(player).parts.map((part) => [part.name, part.radius]));
  const of = (name: keyof ArmRadii): Mm => radius.get(name) ?? 0;
  return { stick: of('stick'), hand: of('hand'), forearm: of('forearm') };
}

function moveOf({ player, pieces }: Layout, movement: Movement): Move | undefined {
  if (movement.kind === 'leg' || movement.kind === 'swing') return undefined;
  const [from, on] =
    movement.kind === 'stroke' ? [null, movement.on] : [movement.from, movement.to];
  const ends = pieces.filter(({ id }) => id === on || id === from);
  return playingOf(player, ends).moves.find(
    (one) => one.side === movement.hand && one.on === on && one.from === from,
  );
}

function positionOf(move: Move, at: number): ArmPosition {
  const row = new Float64Array(POSITION);
  move.write(at, row, 0);
  const point = (i: number): Vec3 =>
    mirrored(vec(row[i] ?? 0, row[i + 1] ?? 0, row[i + 2] ?? 0), signOf(move.side));
  return { at, elbow: point(ELBOW), grip: point(GRIP), butt: point(BUTT), tip: point(TIP) };
}
