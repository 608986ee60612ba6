import { type Vec3, vec } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import { energySum, toDecibels, toEnergy } from './decibels.ts';
import { levelAt } from './hearing.ts';
import { isCymbalSource, type Listener } from './listener.ts';
import { randomEnergyEfficiency } from './pattern.ts';
import type { Ear } from './radiation.ts';
import type { Source } from './source.ts';

/** The level of one cymbal. */
export interface CymbalLevel {
  readonly piece: Id;
  readonly level: Decibels;
}

/** How evenly cymbals are heard, by one overhead or by all together. */
export interface CymbalBalance {
  /** Every cymbal and the hi-hat, in the layout's order. */
  readonly cymbals: readonly CymbalLevel[];
  /** The loudest less the softest; 0 for fewer than two. */
  readonly spread: Decibels;
  /** Null without cymbals. */
  readonly loudest: Id | null;
  /** H33. */
  readonly overWash: Decibels;
}

export interface OverheadMic extends CymbalBalance {
  readonly mic: Id;
  /** Of its front over the highest cymbal's middle; null without cymbals. */
  readonly height: Mm | null;
  /** Null without a snare. */
  readonly snare: Decibels | null;
}

/** The snare in the outermost two overheads. */
export interface SnareBalance {
  /** Of the player. */
  readonly left: Id;
  readonly right: Id;
  /** At the right less at the left. */
  readonly level: Decibels;
}

/** What a set of overheads hears. */
export interface OverheadFigures {
  readonly mics: readonly OverheadMic[];
  /** H32 All overheads together. */
  readonly together: CymbalBalance;
  /** Null for fewer than two overheads or without a snare. */
  readonly balance: SnareBalance | null;
}

/** What overheads are judged by. */
export interface OverheadScene {
  readonly cymbals: readonly Source[];
  readonly snare: Source | undefined;
  /** Height of the highest cymbal's middle above the deck; null without cymbals. */
  readonly top: Mm | null;
  /** Level of the diffuse stage sound. */
  readonly wash: Decibels;
}

/** An overhead that need not be where its mic is. */
export interface OverheadEar {
  readonly mic: Id;
  readonly ear: Ear;
}

export function overheadScene(sources: readonly Source[], wash: Decibels): OverheadScene {
  const cymbals = sources.filter(isCymbalSource);
  const heights = cymbals.map(({ struck }) => struck.centre.z);
  const top = heights.length > 0 ? Math.max(...heights) : null;
  return { cymbals, snare: snareOf(sources), top, wash };
}

/** The snare by which overheads are placed and balanced: the first of the layout. */
export const snareOf = (sources: readonly Source[]): Source | undefined =>
  sources.find(({ piece }) => piece.kind === 'snare');

export const overheadEar = ({ id, ear }: Listener): OverheadEar => ({ mic: id, ear });

/** What a set of overheads hears. */
export const overheadFigures = (
  ears: readonly OverheadEar[],
  scene: OverheadScene,
): OverheadFigures =>
  combined(
    ears,
    ears.map((one) => overheadMic(one, scene)),
    scene,
  );

/**
 * H32 Overheads are added as energy, as they are when they are panned apart. `mics` tells what each of the ears hears.
 * H33 Level over wash: the mean energy of a cymbal over what the pattern takes of a diffuse field (level of the wash times the random energy
 *     efficiency, H6).
 */
export function combined(
  ears: readonly OverheadEar[],
  mics: readonly OverheadMic[],
  scene: OverheadScene,
): OverheadFigures {
  const washes = ears.map((one) => washIn(one.ear, scene));
  const together = scene.cymbals.map(({ piece }, i) => ({
    piece: piece.id,
    level: energySum(mics.flatMap(({ cymbals }) => cymbals[i]?.level ?? [])),
  }));
  return {
    mics,
    together: balanceOf(together, energySum(washes)),
    balance: snareBalance(ears, mics),
  };
}

/** The same mic at another height above the deck. */
export const raised = ({ mic, ear }: OverheadEar, z: Mm): OverheadEar => ({
  mic,
  ear: { ...ear, tip: vec(ear.tip.x, ear.tip.y, z) },
});

/** What one overhead hears. */
export function overheadMic({ mic, ear }: OverheadEar, scene: OverheadScene): OverheadMic {
  const cymbals = scene.cymbals.map((source) => ({
    piece: source.piece.id,
    level: levelAt(ear, source),
  }));
  return {
    mic,
    height: scene.top === null ? null : ear.tip.z - scene.top,
    ...balanceOf(cymbals, washIn(ear, scene)),
    snare: scene.snare ? levelAt(ear, scene.snare) : null,
  };
}

const washIn = ({ pattern }: Ear, { wash }: OverheadScene): Decibels =>
  wash + toDecibels(randomEnergyEfficiency(pattern));

function balanceOf(cymbals: readonly CymbalLevel[], wash: Decibels): CymbalBalance {
  const [loudest] = cymbals.toSorted((p, q) => q.level - p.level);
  const levels = cymbals.map(({ level }) => level);
  const mean = levels.reduce((sum, level) => sum + toEnergy(level), 0) / levels.length;
  return {
    cymbals,
    spread: levels.length > 1 ? Math.max(...levels) - Math.min(...levels) : 0,
    loudest: loudest?.piece ?? null,
    overWash: levels.length > 0 ? toDecibels(mean) - wash : Number.NEGATIVE_INFINITY,
  };
}

function snareBalance(
  ears: readonly OverheadEar[],
  mics: readonly OverheadMic[],
): SnareBalance | null {
  const across = ears
    .map((one, i) => ({ ...one, snare: mics[i]?.snare ?? null }))
    .toSorted((p, q) => rightward(p.ear.tip, q.ear.tip) || rightward(p.ear.axis, q.ear.axis));
  const [left, right] = [across[0], across.at(-1)];
  if (!left || !right || left === right || left.snare === null || right.snare === null) return null;
  return { left: left.mic, right: right.mic, level: right.snare - left.snare };
}

const rightward = (p: Vec3, q: Vec3): Mm => p.x - q.x;
