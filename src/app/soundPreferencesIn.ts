import type { SoundingKind } from '../report/sound.ts';
import {
  type SoundPart,
  type SoundPreferences,
  usualSoundPreferences,
} from '../session/soundPreferences.ts';

const parts: readonly SoundPart[] = [
  'close',
  'kick',
  'overheads',
  'timing',
  'pairs',
  'highPass',
  'figures',
];
const kinds: readonly SoundingKind[] = [
  'kick',
  'snare',
  'rackTom',
  'floorTom',
  'hiHat',
  'crash',
  'ride',
  'splash',
  'china',
  'percussion',
];
/** Drums whose fundamentals are kept, so that the text can't grow without end; the oldest go first. */
const MOST_DRUMS = 500;

/** Sound preferences from what was kept; whatever is missing or not understood is usual. */
export function soundPreferencesIn(kept: unknown): SoundPreferences {
  const one = <T>(key: string, choices: readonly T[], otherwise: T): T =>
    choices.find((choice) => choice === partOf(kept, key)) ?? otherwise;
  const air = partOf(kept, 'lastAir');
  const temperature = numberIn(partOf(air, 'temperature'), -30, 60);
  const humidity = numberIn(partOf(air, 'humidity'), 0, 100);
  const part =
    partOf(kept, 'part') === null ? null : one('part', parts, usualSoundPreferences.part);
  return {
    stageWash: numberIn(partOf(kept, 'stageWash'), 40, 130),
    shellLoss: numberIn(partOf(kept, 'shellLoss'), 0, 40),
    levels: numbersIn(partOf(kept, 'levels'), 60, 130, (key) => kinds.some((kind) => kind === key)),
    fundamentals: numbersIn(partOf(kept, 'fundamentals'), 20, 1000, (key) => key.includes('/')),
    lastAir: temperature === null || humidity === null ? null : { temperature, humidity },
    part,
  };
}

const partOf = (value: unknown, key: string): unknown =>
  typeof value === 'object' && value !== null ? Reflect.get(value, key) : undefined;

const numberIn = (value: unknown, low: number, high: number): number | null =>
  typeof value === 'number' && value >= low && value <= high ? value : null;

function numbersIn(
  value: unknown,
  low: number,
  high: number,
  known: (key: string) => boolean,
): Readonly<Record<string, number>> {
  if (typeof value !== 'object' || value === null) return {};
  const entries = Object.entries(value).flatMap(([key, one]): [string, number][] => {
    const number = numberIn(one, low, high);
    return known(key) && number !== null ? [[key, number]] : [];
  });
  return Object.fromEntries(entries.slice(-MOST_DRUMS));
}
