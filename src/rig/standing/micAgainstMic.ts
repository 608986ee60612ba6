import { boundsMeet } from '../../geometry/bounds.ts';
import { capsuleToCapsule } from '../../geometry/capsuleContact.ts';
import type { MicPart } from '../placed.ts';
import type { BoxedMic, BoxedMicSolid } from './boxed.ts';
import { type Standing, worstOfEach } from './standing.ts';

/**
 * K5 Two mics and their mounts must stay off each other. Feet against feet are judged on the plan (K6), and where they are
 *    in the way, masts and feet are not told a second time.
 */
export function micAgainstMic(
  first: BoxedMic,
  second: BoxedMic,
  feetOverlap: boolean,
): readonly Standing[] {
  const about = [first.placed.mic.id, second.placed.mic.id];
  const told = (p: BoxedMicSolid, q: BoxedMicSolid): boolean =>
    feetOverlap ? low(p.part) && low(q.part) : p.part === 'base' && q.part === 'base';
  return worstOfEach(
    first.solids.flatMap((p) =>
      boundsMeet(p.bounds, second.bounds)
        ? second.solids
            .filter((q) => boundsMeet(p.bounds, q.bounds) && !told(p, q))
            .map((q): Standing => {
              const { gap, at } = capsuleToCapsule(p.solid, q.solid);
              return { code: 'mic-against-mic', about, place: at, overlap: -gap };
            })
        : [],
    ),
  );
}

const low = (part: MicPart): boolean => part === 'base' || part === 'mast';
