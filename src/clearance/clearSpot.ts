import { tidy } from '../layout/edit/tidy.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { ClipFamily } from './clearSpotClip.ts';
import type { SpotChange } from './clearSpotCost.ts';
import type { ClearSpotFamily, Freedom } from './clearSpotFamily.ts';
import { SpotJudge } from './clearSpotJudge.ts';
import { type SpotProgress, searchSpots } from './clearSpotSearch.ts';
import { StandFamily } from './clearSpotStand.ts';
import type { FoundSpot, SpotScene } from './clearSpotTrial.ts';
import { type Motion, reachOf } from './micClearance.ts';
import { UNBOUNDED } from './searchBounds.ts';
import { Sieve } from './sieve.ts';

/** Where a mic would be clear. */
export interface ClearSpot {
  readonly kind: 'spot';
  /** The mic there; nothing but its mount is another. */
  readonly mic: Mic;
  /** By how much each number of its mount changes, mm or degrees; those that stay are left out. */
  readonly by: Readonly<Partial<Record<Freedom['name'], number>>>;
  readonly change: SpotChange;
  /** What the change costs, mm (rule N3). */
  readonly cost: Mm;
  /** There, mm; at or above the margin. */
  readonly clearance: Mm;
  /** Whether it is known that no change is much cheaper (rule N5); else it is the cheapest that was found. */
  readonly proven: boolean;
}

/**
 * Why there is none. `clear`: the mic is clear where it is, stands in nothing and is not too near to the player. `none-within-reach`: no change that the rules allow clears it. `none-found`: the search came to
 * the end of its budget without one, and without knowing that there is none. `fixed`: a plate is not moved. `unknown`: there is no such mic.
 */
export interface NoClearSpot {
  readonly kind: 'none';
  readonly reason: 'clear' | 'none-within-reach' | 'none-found' | 'fixed' | 'unknown';
  /** The widest margin with which it has a clear spot, as far as was seen, mm (rule N7); only where something was looked for, and where it may stand anywhere. */
  readonly most?: Mm;
  /** The other mics that stood in the way of some place that was looked at: while none of them moves, looking again finds nothing new. */
  readonly hinderedBy?: readonly Id[];
}

export type ClearSpotAnswer = ClearSpot | NoClearSpot;

/** A layout with all that follows from it. */
export interface ClearScene {
  readonly motion: Motion;
  readonly layout: Layout;
  readonly rig: Rig;
}

/**
 * The smallest change that clears a mic that is tight or struck, stands in a drum, a cymbal, their hardware or another mic, or is in or too near to the player, while it keeps its aim (rules N1 to N9), step by step: it
 * tells now and then how far it is, and can be left at any time. Same input, same answer.
 */
export function* clearSpotSteps(
  { motion, layout, rig }: ClearScene,
  micId: Id,
): Generator<SpotProgress, ClearSpotAnswer> {
  const now = rig.mics.find(({ mic }) => mic.id === micId);
  if (!now) return { kind: 'none', reason: 'unknown' };
  const { margin } = layout;
  const judge = new SpotJudge(layout, rig, now);
  const isClear = reachOf(motion, now).clearance >= margin;
  if (isClear && !judge.mustLeave) return { kind: 'none', reason: 'clear' };
  const family = familyOf(layout, now, judge);
  if (!family) return { kind: 'none', reason: 'fixed' };
  const scene: SpotScene = {
    family,
    sieve: new Sieve(motion),
    now,
    margin,
    clearanceOf: (solids, enough = UNBOUNDED.enough) =>
      reachOf(motion, { solids }, { ...UNBOUNDED, enough }).clearance,
    barred: ({ mount }) => judge.depthAt(mount),
    playerRoom: ({ mount }) => judge.roomAt(mount),
    standsFirst: isClear,
  };
  const { found, ended, most } = yield* searchSpots(scene);
  if (found) return answerOf(family, now.mic, found, ended);
  return {
    kind: 'none',
    reason: ended ? 'none-within-reach' : 'none-found',
    ...(most !== undefined && { most }),
    hinderedBy: layout.mics
      .map(({ id }) => id)
      .filter((id) => id !== micId && judge.hinderedBy.has(id)),
  };
}

/** {@link clearSpotSteps} at one go. */
export function clearSpot(motion: Motion, layout: Layout, rig: Rig, micId: Id): ClearSpotAnswer {
  const steps = clearSpotSteps({ motion, layout, rig }, micId);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

function familyOf(
  layout: Layout,
  { mic, micClass }: PlacedMic,
  judge: SpotJudge,
): ClearSpotFamily | undefined {
  const { mount } = mic;
  const side = layout.player.leadHand === 'right' ? 1 : -1;
  if (mount.kind === 'stand') {
    const heard = layout.pieces.find(({ id }) => id === mic.hears[0]);
    return new StandFamily({ mic, mount, micClass, heard, side });
  }
  if (mount.kind !== 'clip') return undefined;
  const drum = layout.pieces.find(({ id }) => id === mount.drum);
  return drum && isDrum(drum)
    ? new ClipFamily({
        mount,
        micClass,
        drum,
        side,
        standsIn: judge.standsIn,
        overHead: judge.overHead(drum.id),
      })
    : undefined;
}

function answerOf(family: ClearSpotFamily, mic: Mic, found: FoundSpot, proven: boolean): ClearSpot {
  const { values, spot, change, cost, clearance } = found;
  const by = Object.fromEntries(
    family.freedoms.flatMap(({ name }, k) => (values[k] ? [[name, tidy(values[k])]] : [])),
  );
  return { kind: 'spot', mic: { ...mic, mount: spot.mount }, by, change, cost, clearance, proven };
}
