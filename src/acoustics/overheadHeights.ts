import type { Id } from '../layout/fields.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import {
  combined,
  type OverheadEar,
  type OverheadFigures,
  type OverheadMic,
  type OverheadScene,
  overheadMic,
  raised,
} from './overheads.ts';

/** What overheads hear from one height. */
export interface HeightRow {
  /** Over the highest cymbal's middle. */
  readonly height: Mm;
  /** H32, all overheads together. */
  readonly spread: Decibels;
  readonly overWash: Decibels;
  /** Of the snare, right less left; null as in the balance. */
  readonly balance: Decibels | null;
  /** Each overhead for itself. */
  readonly mics: readonly {
    readonly mic: Id;
    readonly spread: Decibels;
    readonly overWash: Decibels;
  }[];
}

export interface OverheadHeights {
  readonly rows: readonly HeightRow[];
  /** H35; null without overheads or with fewer than two cymbals. */
  readonly enough: Mm | null;
}

/** H34 Heights over the cymbals that are tried. */
const LOWEST: Mm = 400;
const HIGHEST: Mm = 1500;
const STEP: Mm = 50;

/** H35 What the ear hardly notices. */
const NO_GAIN: Decibels = 0.5;

/** The heights that are tried, over the highest cymbal's middle. */
const heights = Array.from({ length: (HIGHEST - LOWEST) / STEP + 1 }, (_, i) => LOWEST + i * STEP);

/** What one overhead hears from each of the heights; empty without cymbals. */
export function heightProfile(one: OverheadEar, scene: OverheadScene): readonly OverheadMic[] {
  const { top } = scene;
  if (top === null) return [];
  return heights.map((height) => overheadMic(raised(one, top + height), scene));
}

/**
 * H34 All overheads at the same height over the highest cymbal's middle, 400 to 1500 mm, each over its spot and looking where
 *     it looks. `profiles` tells what each of the ears hears from there.
 * H35 More height stops helping at the lowest height from which no greater one makes the spread smaller by more than half a dB.
 */
export function overheadHeights(
  ears: readonly OverheadEar[],
  scene: OverheadScene,
  profiles = ears.map((one) => heightProfile(one, scene)),
): OverheadHeights {
  if (ears.length === 0 || scene.cymbals.length === 0) return { rows: [], enough: null };
  const rows = heights.map((height, i) => {
    const mics = profiles.flatMap((profile) => profile[i] ?? []);
    return heightRow(height, combined(ears, mics, scene));
  });
  return { rows, enough: scene.cymbals.length > 1 ? enoughOf(rows) : null };
}

function heightRow(height: Mm, { mics, together, balance }: OverheadFigures): HeightRow {
  return {
    height,
    spread: together.spread,
    overWash: together.overWash,
    balance: balance?.level ?? null,
    mics: mics.map(({ mic, spread, overWash }) => ({ mic, spread, overWash })),
  };
}

function enoughOf(rows: readonly HeightRow[]): Mm | null {
  const found = rows.find(({ spread }, i) =>
    rows.slice(i + 1).every((higher) => spread - higher.spread <= NO_GAIN),
  );
  return found?.height ?? null;
}
