import type { Id } from '../../layout/fields.ts';
import type { OpenLayout } from '../../session/session.ts';
import { useOpen } from '../parts/useOpen.ts';
import { capitalised, unbroken } from '../words/nameOf.ts';
import { useMovedSound } from './useSound.ts';
import { movedWords } from './words/movedWords.ts';

interface CostInSoundProps {
  readonly mic: Id;
  readonly before: OpenLayout;
}

/** What the place that is offered changes in what a mic hears, in one line; nothing for a mic that must hear nothing. */
export function CostInSound({ mic, before }: CostInSoundProps) {
  const { layout } = useOpen();
  const cost = useMovedSound(mic, before);
  if (!cost) return null;
  return <>{capitalised(unbroken(movedWords(cost, layout)))} (direct sound, an estimate).</>;
}
