import type { Id } from '../../layout/fields.ts';
import type { SoundChoices } from '../../report/sound.ts';
import { drumKey, type SoundPreferences } from '../../session/soundPreferences.ts';

type Said = Pick<SoundPreferences, 'style' | 'stageWash' | 'levels' | 'fundamentals'>;

/** What one layout's sound is computed with: what the user said, and what is usual for the rest. */
export function soundChoices(said: Said, layout: Id, usual: SoundChoices): SoundChoices {
  const own = drumKey(layout, '');
  const fundamentals = Object.entries(said.fundamentals).flatMap(([key, hertz]) =>
    key.startsWith(own) ? [[key.slice(own.length), hertz] as const] : [],
  );
  return {
    levels: { ...usual.levels, ...said.levels },
    pieceLevels: usual.pieceLevels,
    fundamentals: Object.fromEntries(fundamentals),
    stageWash: said.stageWash ?? usual.stageWash,
    style: said.style ?? usual.style,
  };
}
