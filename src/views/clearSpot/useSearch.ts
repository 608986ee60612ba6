import { useEffect } from 'react';
import type { Id } from '../../layout/fields.ts';
import { type Clearing, clearing, useClearing } from '../../session/clearing.ts';
import { leaveOffer } from '../../session/session.ts';
import { useClearSpots } from '../parts/useClearSpots.ts';

/** Whether a search was asked for from here: for this mic alone, or (null) for all that are in the way. */
const isAskedFor = ({ request }: Clearing, mic: Id | null): boolean =>
  mic === null ? request.whole : !request.whole && request.mics[0] === mic;

/**
 * The search that was asked for from here; null when none was. What is not finished or taken when this part of the screen goes away is given
 * up: nobody would see what comes of it.
 */
export function useSearch(mic: Id | null): Clearing | null {
  const spots = useClearSpots();
  const current = useClearing();
  useEffect(
    () => () => {
      const last = clearing.getState().current;
      if (!last || !isAskedFor(last, mic)) return;
      leaveOffer();
      spots.stop();
    },
    [mic, spots],
  );
  return current && isAskedFor(current, mic) ? current : null;
}
