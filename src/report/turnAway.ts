import { motionOf, reachOf } from '../clearance/micClearance.ts';
import type { Layout } from '../layout/layout.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingOf } from '../rig/standing/findStanding.ts';
import type { ClearanceRow, Report } from './report.ts';
import { micsStandingIn } from './standingIn.ts';

/** How far round the rim is looked, degrees: far enough to feel, near enough to keep what the mic hears. */
const STEP = 15;
/** More room by less than this is none: the search's tolerance on both sides, mm. */
const SAME = 0.2;

/** A turn of a clip round its rim that gives it more room. */
export interface TurnAway {
  /** Seen from above. */
  readonly way: 'clockwise' | 'anticlockwise';
  /** Degrees. */
  readonly by: number;
}

/**
 * A1 Which way round its rim a clip turns to more room from what moves: of 15 degrees either way the better, where that is better than now and the
 *    mic stands in no drum, cymbal, hardware or other mic there. Null where neither is, and for another mount. No search: it says how to begin.
 */
export function turnAway(
  { mic: id, clearance }: Pick<ClearanceRow, 'mic' | 'clearance'>,
  layout: Layout,
  { rig }: Pick<Report, 'rig'>,
): TurnAway | null {
  const mic = layout.mics.find((each) => each.id === id);
  if (mic?.mount.kind !== 'clip') return null;
  const { mount } = mic;
  const motion = motionOf(layout.player, layout.pieces);
  const standingOf = createStandingOf(rig, layout.deck);
  const tried = (['clockwise', 'anticlockwise'] as const).flatMap((way) => {
    const angle = (mount.angle + (way === 'clockwise' ? 360 - STEP : STEP)) % 360;
    const placed = placeMic({ ...mic, mount: { ...mount, angle } }, layout);
    const room = reachOf(motion, placed).clearance;
    const isFree =
      room > clearance + SAME &&
      standingOf(placed).every((one) => micsStandingIn(one).length === 0);
    return isFree ? [{ way, room }] : [];
  });
  const [best] = tried.toSorted((a, b) => b.room - a.room);
  return best ? { way: best.way, by: STEP } : null;
}
