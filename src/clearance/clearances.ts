import type { Layout } from '../layout/layout.ts';
import { createPlaying } from '../player/moves.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { type Motion, motionFrom, type Reach, reachOf } from './micClearance.ts';
import type { MicClearance, Verdict } from './nearest.ts';

/** Rule C3: clear from the margin up, tight from 0 to the margin, struck below 0. */
export function verdictOf(clearance: Mm, margin: Mm): Verdict {
  if (clearance < 0) return 'struck';
  return clearance < margin ? 'tight' : 'clear';
}

/** Clearances of all mics, in their order. */
export type Clearances = (layout: Layout, mics: readonly PlacedMic[]) => readonly MicClearance[];

/**
 * Clearances that are computed again only for what changed: the motion when the kit or the player did, a mic when its solids did. Same
 * input, same answer; the memory only saves time.
 */
export function createClearances(): Clearances {
  const motionFor = createMotion();
  let known = new WeakMap<PlacedMic, Reach>();
  let knownFor: Motion | undefined;
  return (layout, mics) => {
    const motion = motionFor(layout);
    if (motion !== knownFor) known = new WeakMap();
    knownFor = motion;
    return mics.map((placed) => {
      const reach = known.get(placed) ?? reachOf(motion, placed);
      known.set(placed, reach);
      return { mic: placed.mic.id, verdict: verdictOf(reach.clearance, layout.margin), ...reach };
    });
  };
}

/** The motion of a layout, kept while its kit and player stay the same. */
export function createMotion(): (layout: Pick<Layout, 'player' | 'pieces'>) => Motion {
  const playingFor = createPlaying();
  let last:
    | { readonly player: unknown; readonly pieces: unknown; readonly motion: Motion }
    | undefined;
  return ({ player, pieces }) => {
    if (last?.player !== player || last.pieces !== pieces) {
      const playing = playingFor(player, pieces);
      const before = last?.player === player ? last.motion : undefined;
      last = { player, pieces, motion: motionFrom(playing, player, pieces, before) };
    }
    return last.motion;
  };
}
