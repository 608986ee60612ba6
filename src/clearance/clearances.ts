import { listed } from '../geometry/listed.ts';
import type { Layout } from '../layout/layout.ts';
import type { Piece } from '../layout/pieces/piece.ts';
import type { Player } from '../layout/player.ts';
import { createPlaying } from '../player/moves.ts';
import type { PlacedMic } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import {
  type KnownReach,
  knownReachOf,
  type Motion,
  motionFrom,
  reachAgain,
} from './micClearance.ts';
import type { MicClearance, Verdict } from './nearest.ts';

/** Rule C3: clear from the margin up, tight from 0 to the margin, struck below 0. */
export function verdictOf(clearance: Mm, margin: Mm): Verdict {
  if (clearance < 0) return 'struck';
  return clearance < margin ? 'tight' : 'clear';
}

/**
 * Clearances of all mics, in their order. In a hurry, while something is dragged, only moves that changed are looked at again where that is
 * enough: as near to the exact minimum as ever, but perhaps up to TOLERANCE from what a fresh search says.
 */
export type Clearances = (
  layout: Layout,
  mics: readonly PlacedMic[],
  inHurry?: boolean,
) => readonly MicClearance[];

interface Kept extends KnownReach {
  /** Found in a hurry: not what a fresh search says. */
  readonly hurried: boolean;
}

/**
 * Clearances that are computed again only for what changed: the motion when the kit or the player did, a mic when its solids did. Same
 * input, same answer at rest; the memory only saves time.
 */
export function createClearances(): Clearances {
  const motionFor = createMotion();
  let before = new WeakMap<PlacedMic, Kept>();
  let now = before;
  let motion: Motion | undefined;
  const reachFor = (to: Motion, placed: PlacedMic, inHurry: boolean): Kept => {
    const same = now.get(placed);
    if (same && (inHurry || !same.hurried)) return same;
    const last = inHurry ? before.get(placed) : undefined;
    const found = last ? reachAgain(to, placed, last) : knownReachOf(to, placed);
    return { ...found, hurried: last !== undefined };
  };
  return (layout, mics, inHurry = false) => {
    const next = motionFor(layout);
    if (next !== motion) {
      // Only what is known of the motion just before can be gone on from.
      before = now;
      now = new WeakMap();
      motion = next;
    }
    return listed(mics, (placed) => {
      const kept = reachFor(next, placed, inHurry);
      now.set(placed, kept);
      const { reach } = kept;
      return { mic: placed.mic.id, verdict: verdictOf(reach.clearance, layout.margin), ...reach };
    });
  };
}

interface Kit {
  readonly player: Player;
  readonly pieces: readonly Piece[];
}

/** The motion of a layout, kept while its kit and player stay the same. */
export function createMotion(): (kit: Kit) => Motion {
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
