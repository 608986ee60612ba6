import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { SoundChoices } from '../../report/sound.ts';
import { drumKey, type SoundPreferences } from '../../session/soundPreferences.ts';

type Said = Pick<SoundPreferences, 'stageWash' | 'shellLoss' | 'levels' | 'fundamentals'>;

/** What one layout's sound is computed with: its style of music, what the user said, and what is usual for the rest. */
export function soundChoices(
  said: Said,
  { id, patch }: { readonly id: Id; readonly patch: Pick<Layout['patch'], 'style'> },
  usual: SoundChoices,
): SoundChoices {
  const own = drumKey(id, '');
  const fundamentals = Object.entries(said.fundamentals).flatMap(([key, hertz]) =>
    key.startsWith(own) ? [[key.slice(own.length), hertz] as const] : [],
  );
  return {
    levels: { ...usual.levels, ...said.levels },
    pieceLevels: usual.pieceLevels,
    fundamentals: Object.fromEntries(fundamentals),
    stageWash: said.stageWash ?? usual.stageWash,
    shellLoss: said.shellLoss ?? usual.shellLoss,
    style: patch.style,
  };
}
