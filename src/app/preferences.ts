import { type Id, idField } from '../layout/fields.ts';
import {
  type Drawing,
  initialState,
  type Preferences,
  prefer,
  session,
} from '../session/session.ts';
import { soundPreferencesIn } from './soundPreferencesIn.ts';

const KEY = 'strokespace.preferences';
const standard = initialState.preferences;
const drawings: readonly Drawing[] = ['plan', 'front', 'side', 'planAndFront', 'planAndSide'];

/** Takes over what was preferred last time, and keeps every change from now on. Without storage it stays as it is. */
export function keepPreferences(storage: () => Storage): void {
  prefer(readPreferences(readText(storage)));
  session.subscribe(({ preferences }, before) => {
    if (preferences === before.preferences) return;
    try {
      storage().setItem(KEY, JSON.stringify(preferences));
    } catch {
      // Refused or full: preferences are no work, and hold while the page is open.
    }
  });
}

function readText(storage: () => Storage): string {
  try {
    return storage().getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

/** Preferences from a text; whatever is missing or not understood is standard. */
export function readPreferences(text: string): Preferences {
  const kept = parsed(text);
  const one = <T>(key: keyof Preferences, choices: readonly T[], otherwise: T): T =>
    choices.find((choice) => choice === Reflect.get(kept, key)) ?? otherwise;
  const flags = [true, false] as const;
  return {
    theme: one('theme', ['dark', 'light'], standard.theme),
    seenFrom: one('seenFrom', ['house', 'player'], standard.seenFrom),
    showSweeps: one('showSweeps', flags, standard.showSweeps),
    showRuns: one('showRuns', flags, standard.showRuns),
    showZone: one('showZone', flags, standard.showZone),
    showFloor: one('showFloor', flags, standard.showFloor),
    drawing: one('drawing', drawings, standard.drawing),
    sound: soundPreferencesIn(Reflect.get(kept, 'sound')),
    strikesOver: idsIn(Reflect.get(kept, 'strikesOver')),
  };
}

const idsIn = (value: unknown): readonly Id[] =>
  Array.isArray(value) ? value.filter((id) => idField.safeParse(id).success) : [];

function parsed(text: string): object {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? value : {};
  } catch {
    return {};
  }
}
