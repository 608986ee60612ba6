import { micStepsIn, type Swap, swapOf } from '../cabling/swap/swapSteps.ts';
import { type AgainstPlayerOf, againstPlayerIn } from '../clearance/againstPlayer.ts';
import { type Motion, motionOf, reachOf } from '../clearance/micClearance.ts';
import { standMountsAt } from '../layout/catalogue/offered/standMount.ts';
import { changeMount } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mic } from '../layout/mics/mic.ts';
import type { StandClass, StandMount } from '../layout/mics/mount.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import { placeMic } from '../rig/placeMic.ts';
import { createStandingFinder } from '../rig/standing/findStanding.ts';
import { FIRM, tippingOf } from '../rig/tipping.ts';
import { toDegrees, wrapDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import { type Analyst, createAnalyst } from './analyse.ts';
import { isNoWorse } from './noWorse.ts';
import type { Report } from './report.ts';

/** What lifting a drum out takes; null for what is no drum. */
export const swapIn = ({ rig }: Pick<Report, 'rig'>, drum: Id): Swap | null => swapOf(rig, drum);

/** The names under which screens use a swap and its steps. */
export type SwapPlan = Swap;
export type SwapRow = Swap['steps'][number];

/** A mic held in another way, so that fewer things must be undone before a drum comes out. */
export interface SwapOffer {
  readonly mic: Id;
  /** A boom instead of the rim clip, or the same stand on another side of its mic. */
  readonly kind: 'boomForClip' | 'boomTurned';
  readonly mount: StandMount;
  /** Things to undo when it is taken. */
  readonly steps: number;
}

/** Stands that can take the place of a clip, the smallest first. */
const STANDS: readonly StandClass[] = ['tripodLow', 'tripodMedium', 'roundBoom', 'tripodTall'];
/** How far round its mic a stand is tried, the smallest turn first. */
const TURNS: readonly Degrees[] = [15, 30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180].flatMap(
  (by) => (by === 180 ? [by] : [by, -by]),
);
/** A clearance that is lower by less than this is the same: twice the search's tolerance. */
const SAME: Mm = 0.2;

/**
 * For every mic that a swap lays hands on, the first other way of holding it that leaves fewer things to undo, the best offer first. The mic itself stays where it is and listens where it listens.
 *
 * Y4 A clip becomes a boom on the smallest stand whose base finds room; a boom that is in the way comes from another side, by the
 *    smallest turn of its base round the mic.
 * Y5 An offer is counted by the engine that counts the swap. It brings the mic no nearer to what moves than it is, unless it
 *    stays clear, and makes nothing else that is wrong with the mic worse; its stand reaches, and does not tip where it was firm.
 * Y6 The report on the layout with an offer taken has nothing more that must be solved, of anything: no cable loses its way to it.
 * Made when it is asked for: too much work for every frame of a drag.
 */
export function swapOffers(layout: Layout, report: Report, swap: Swap): readonly SwapOffer[] {
  const ground: Ground = {
    layout,
    report,
    swap,
    stepsOf: micStepsIn(report.rig, swap.drum),
    motion: motionOf(layout.player, layout.pieces),
    find: createStandingFinder(),
    againstPlayer: againstPlayerIn(layout),
    analyse: createAnalyst(),
    stops: stopsOf(report),
  };
  const laidHandsOn = new Set(swap.steps.map(({ about }) => about));
  return layout.mics
    .filter(({ id }) => laidHandsOn.has(id))
    .flatMap((mic) => offerFor(mic, ground) ?? [])
    .toSorted((a, b) => a.steps - b.steps);
}

/** The layout with an offer taken. */
export const takeSwapOffer = (layout: Layout, { mic, mount }: SwapOffer): Layout =>
  changeMount(layout, mic, () => mount);

interface Ground {
  readonly layout: Layout;
  readonly report: Report;
  readonly swap: Swap;
  readonly stepsOf: ReturnType<typeof micStepsIn>;
  readonly motion: Motion;
  readonly find: ReturnType<typeof createStandingFinder>;
  readonly againstPlayer: AgainstPlayerOf;
  readonly analyse: Analyst;
  readonly stops: ReadonlyMap<string, number>;
}

function offerFor(mic: Mic, ground: Ground): SwapOffer | undefined {
  const { layout, report, swap } = ground;
  const before = report.rig.mics.find((placed) => placed.mic.id === mic.id);
  if (!before) return undefined;
  const own = ground.stepsOf(before).length;
  for (const { kind, mount } of candidates(before, layout)) {
    const placed = placeMic({ ...mic, mount }, layout);
    const after = ground.stepsOf(placed).length;
    if (after >= own || !serves(before, placed, ground)) continue;
    const offer = { mic: mic.id, kind, mount, steps: swap.steps.length - own + after };
    if (stopsNoMore(offer, ground)) return offer;
  }
  return undefined;
}

type Candidate = Pick<SwapOffer, 'kind' | 'mount'>;

/** Made one after the other: mostly one of the first serves. */
function* candidates(placed: PlacedMic, layout: Layout): Generator<Candidate> {
  const { mount } = placed.mic;
  if (mount.kind === 'stand') {
    for (const by of TURNS) yield { kind: 'boomTurned', mount: turnedRound(mount, by) };
  }
  if (mount.kind !== 'clip') return;
  const { tip, axis, micClass } = placed;
  const level = Math.hypot(axis.x, axis.y);
  const azimuth = level < 1e-9 ? 270 : toDegrees(Math.atan2(axis.y, axis.x));
  const aim = { tip, azimuth, pitch: toDegrees(Math.atan2(axis.z, level)) };
  for (const stand of STANDS) {
    for (const by of [0, ...TURNS]) {
      const out = wrapDegrees(azimuth + 180 + by);
      for (const found of standMountsAt({ layout, micClass, stand }, aim, out)) {
        yield { kind: 'boomForClip', mount: found };
      }
    }
  }
}

/** A stand whose base has gone round the mic; its feet turn with it. */
function turnedRound(mount: StandMount, by: Degrees): StandMount {
  const { base, tip, turn } = mount;
  const angle = (by * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  const x = base.x - tip.x;
  const y = base.y - tip.y;
  return {
    ...mount,
    base: { x: Math.round(tip.x + cos * x - sin * y), y: Math.round(tip.y + sin * x + cos * y) },
    turn: Math.round(wrapDegrees(turn + by)),
  };
}

const withMic = (rig: Rig, placed: PlacedMic): Rig => ({
  ...rig,
  mics: rig.mics.map((each) => (each.mic.id === placed.mic.id ? placed : each)),
});

/** Y5 */
function serves(before: PlacedMic, after: PlacedMic, ground: Ground): boolean {
  const { layout, report, motion, find, againstPlayer } = ground;
  if ((after.stand?.beyondReach ?? 0) > 0) return false;
  const firm = Math.min(FIRM, tippingOf(before)?.factor ?? FIRM);
  if ((tippingOf(after)?.factor ?? FIRM) < firm) return false;
  const wrong = (of: Rig) =>
    find(of, layout.deck).filter(({ about }) => about.includes(after.mic.id));
  if (!isNoWorse(againstPlayer(before), againstPlayer(after))) return false;
  if (!isNoWorse(wrong(report.rig), wrong(withMic(report.rig, after)))) return false;
  const now = report.clearances.find(({ mic }) => mic === after.mic.id)?.clearance ?? 0;
  return reachOf(motion, after).clearance >= Math.min(layout.margin, now) - SAME;
}

/** Y6 Asked last, of what serves in every other way: it takes a report of its own. */
function stopsNoMore(offer: SwapOffer, { layout, analyse, stops }: Ground): boolean {
  const after = stopsOf(analyse(takeSwapOffer(layout, offer)));
  return [...after].every(([what, count]) => count <= (stops.get(what) ?? 0));
}

/** How often each kind of what must be solved is told of each thing. What else has a part in it may change. */
function stopsOf({ findings }: Pick<Report, 'findings'>): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { code, about, severity } of findings) {
    const what = `${code} ${about[0] ?? ''}`;
    if (severity === 'stop') counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  return counts;
}
