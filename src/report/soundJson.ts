import type { Layout } from '../layout/layout.ts';
import type { Report } from './report.ts';
import {
  createSoundReporter,
  LEFT_OUT_OF_SOUND,
  type LeftOut,
  type MusicStyle,
  type Sound,
  type SoundChoices,
  USUAL_SOUND,
} from './sound.ts';

/** A value as JSON holds it: numbers rounded to 0.001, those that are not finite null. */
export type Plain<T> = T extends number
  ? number | null
  : T extends string | boolean | null
    ? T
    : T extends readonly (infer Entry)[]
      ? readonly Plain<Entry>[]
      : { readonly [Key in keyof T]: Plain<T[Key]> };

/**
 * What the mics hear, with the layout's style of music and otherwise the usual choices of the report. dB, mm, ms, Hz, degrees; points in the kit frame. A number that
 * has no finite value is null, as the isolation of a mic without neighbours.
 */
export interface SoundJson {
  readonly estimate: 'direct sound in a free field';
  readonly leavesOut: readonly LeftOut[];
  readonly style: MusicStyle;
  readonly stageWash: number;
  readonly shellLoss: number;
  readonly levels: Plain<SoundChoices['levels']>;
  readonly air: Plain<Sound['air']>;
  readonly hearing: Plain<Sound['hearing']>;
  readonly close: Plain<Sound['close']>;
  readonly kicks: Plain<Sound['kicks']>;
  readonly overheads: Plain<Sound['overheads']>;
  readonly timing: Plain<Sound['timing']>;
  readonly pairs: Plain<Sound['pairs']>;
  readonly highPasses: Plain<Sound['highPasses']>;
}

/** What is heard in a layout as plain JSON. */
export function soundJson(layout: Layout, report: Report): SoundJson {
  const choices = { ...USUAL_SOUND, style: layout.patch.style };
  const { style, stageWash, shellLoss, levels } = choices;
  const sound = createSoundReporter().of(layout, report, choices);
  return {
    estimate: 'direct sound in a free field',
    leavesOut: LEFT_OUT_OF_SOUND,
    style,
    stageWash,
    shellLoss,
    levels: plain(levels),
    air: plain(sound.air),
    hearing: plain(sound.hearing),
    close: plain(sound.close),
    kicks: plain(sound.kicks),
    overheads: plain(sound.overheads),
    timing: plain(sound.timing),
    pairs: plain(sound.pairs),
    highPasses: plain(sound.highPasses),
  };
}

/** The value with every number as JSON holds it. */
export function plain<T>(value: T): Plain<T> {
  const text = JSON.stringify(value, (_, one: unknown) =>
    typeof one === 'number' ? held(one) : one,
  );
  return JSON.parse(text);
}

/** To 0.001, never -0; null where it is not finite. */
const held = (value: number): number | null =>
  Number.isFinite(value) ? Math.round(value * 1000) / 1000 + 0 : null;
