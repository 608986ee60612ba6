import { useMemo } from 'react';
import type { Id } from '../../layout/fields.ts';
import {
  createSoundReporter,
  type MovedSound,
  type Sound,
  type SoundChange,
  type SoundChoices,
  USUAL_SOUND,
} from '../../report/sound.ts';
import { type OpenLayout, prefer, session, useSession } from '../../session/session.ts';
import type { SoundPreferences } from '../../session/soundPreferences.ts';
import { useOpen } from '../parts/useOpen.ts';
import { soundChoices } from './soundChoices.ts';

/** What is heard is computed only here, so that nobody pays for it while no part of it is shown. */
const reporter = createSoundReporter();

/** What the user said of the sound, with what is usual for the rest. The same object while nothing changes. */
export function useSoundChoices(): SoundChoices {
  const { layout } = useOpen();
  const kept = useSession((state) => state.preferences.sound);
  const { stageWash, shellLoss, levels, fundamentals } = kept;
  const { id } = layout;
  const { style } = layout.patch;
  return useMemo(
    () =>
      soundChoices(
        { stageWash, shellLoss, levels, fundamentals },
        { id, patch: { style } },
        USUAL_SOUND,
      ),
    [style, stageWash, shellLoss, levels, fundamentals, id],
  );
}

/** What the mics of the open layout hear. */
export function useSound(): Sound {
  const { layout, report } = useOpen();
  const choices = useSoundChoices();
  return useMemo(() => reporter.of(layout, report, choices), [layout, report, choices]);
}

/** What the last edit of every close mic did, the gesture under way counted. */
export function useSoundChanges(sound: Sound): readonly SoundChange[] {
  const { layout, report } = useOpen();
  const choices = useSoundChoices();
  const past = useSession((state) => state.history.past);
  const before = useSession((state) => state.gesture?.before);
  return useMemo(() => {
    const earlier = past.map((step) => step.layout);
    if (before) earlier.push(before);
    return reporter.changes({ layout, report, sound }, earlier, choices);
  }, [layout, report, sound, choices, past, before]);
}

/** What the open layout does to the sound of a mic that stood elsewhere before. */
export function useMovedSound(mic: Id, before: OpenLayout): MovedSound | undefined {
  const now = useOpen();
  const choices = useSoundChoices();
  return useMemo(() => reporter.moved(mic, { before, now }, choices), [mic, before, now, choices]);
}

/** Changes what the user said of the sound. */
export const preferSound = (change: Partial<SoundPreferences>): void =>
  prefer({ sound: { ...session.getState().preferences.sound, ...change } });
