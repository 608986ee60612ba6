import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { earOf, hear } from '../../src/acoustics/hearing.ts';
import { type Listener, listenerOf } from '../../src/acoustics/listener.ts';
import { type Source, sourceOf } from '../../src/acoustics/source.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import type { Mount } from '../../src/layout/mics/mount.ts';
import type { Piece } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fivePiece } from '../rig/kits.ts';

/** Sources and listeners of a layout, as `createAcoustics` makes them. */
export function heardIn(layout: Layout): {
  readonly sources: readonly Source[];
  readonly listeners: readonly Listener[];
} {
  const rig = buildRig(layout);
  const sources = rig.pieces.flatMap((placed) => sourceOf(placed, DEFAULT_CHOICES) ?? []);
  const listeners = rig.mics.map((placed) =>
    listenerOf(placed, sources, (source, shell) => hear(earOf(placed), source, shell)),
  );
  return { sources, listeners };
}

/** The entry of a list that a test needs, or a clear failure. */
export function only<T>(entry: T | undefined, what = 'entry'): T {
  if (entry === undefined) throw new RangeError(`No such ${what}`);
  return entry;
}

/** A source by its piece's id. */
export const sourceIn = (sources: readonly Source[], id: string): Source =>
  only(
    sources.find(({ piece }) => piece.id === id),
    id,
  );

/** A mic of a class and name on a mount. */
export const micAt = (
  id: string,
  hears: readonly string[],
  mount: Mount,
  micClass = 'pencil-condenser',
): Mic => ({ id, name: id, micClass, hears: [...hears], mount, input: null });

/** A stand mount that puts the front of a mic at a point, looking in a direction. */
export const standAt = (
  [x, y, z]: readonly [number, number, number],
  [azimuth, pitch]: readonly [number, number],
): Extract<Mount, { kind: 'stand' }> => ({
  kind: 'stand',
  stand: 'tripodTall',
  base: { x: x + 400, y },
  turn: 90,
  mast: null,
  tip: { x, y, z },
  azimuth,
  pitch,
});

/** A class of our own that differs from the pencil condenser in its pattern alone. */
export const classWith = (id: string, patternA: number): MicClass => ({
  id,
  name: id,
  length: 130,
  diameter: 22,
  address: 'end',
  patternA,
  type: 'condenser',
  phantom: true,
  connector: 'straight',
  mass: 0.12,
});

export const omniClass = classWith('small-omni', 1);

/** A layout with these pieces and mics only. */
export const sceneOf = (
  pieces: readonly Piece[],
  mics: readonly Mic[],
  ownClasses: readonly MicClass[] = [omniClass],
): Layout => ({ ...fivePiece, pieces: [...pieces], mics: [...mics], ownClasses: [...ownClasses] });

/** The smallest percussion there is: all but a point source. */
export const smallSource = (id: string, [x, y, z]: readonly [number, number, number]): Piece => ({
  kind: 'percussion',
  id,
  name: id,
  x,
  y,
  z,
  tilt: 0,
  tiltToward: 0,
  hands: 'both',
  diameter: 30,
  depth: 30,
  support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 200, turn: 90 },
});
