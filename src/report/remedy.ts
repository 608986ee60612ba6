import { againstPlayerIn } from '../clearance/againstPlayer.ts';
import { motionOf, reachOf } from '../clearance/micClearance.ts';
import { STAND_CLASSES } from '../layout/catalogue/standClasses.ts';
import { moveMicBase, setMast, setStandClass } from '../layout/edit/mics.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { StandClass } from '../layout/mics/mount.ts';
import { type FeetTurn, freeTurn, turnedFeet } from '../rig/freeTurn.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { micOffDeck } from '../rig/standing/offDeck.ts';
import { standReach } from '../rig/standReach.ts';
import { FIRM, tippingOf } from '../rig/tipping.ts';
import { type BaseMove, baseIn } from './baseIn.ts';
import { isNoWorse } from './noWorse.ts';
import type { Finding, Report } from './report.ts';
import { takeWish, type WishedMove, wishedMove } from './wish.ts';

/** One change that ends a finding, offered and never imposed. */
export type Remedy =
  /** The mic on another class of stand; `follows`: its mast's height is let free for it. */
  | {
      readonly kind: 'stand';
      readonly mic: Id;
      readonly stand: StandClass;
      readonly follows: boolean;
    }
  | { readonly kind: 'turn'; readonly feet: FeetTurn }
  | BaseMove
  | WishedMove;

/** A clearance that is lower by less than this is the same: twice the search's tolerance. */
const SAME = 0.2;

/**
 * What ends a finding by one change:
 * Y1 a mic beyond its stand: the smallest class that reaches it from where the base stands, its mast left free where that must be;
 * Y2 feet that overlap: the smallest turn that frees one of the two, a mic's stand before a piece's, that brings the mic no nearer to
 *    what moves than it is, unless it stays clear;
 * Y3 a stand that may tip: the smallest turn that brings a leg under the boom far enough, under the same conditions.
 * Y7 a mic's stand over the deck's edge: the smallest turn that brings all feet onto the deck, else the base straight in with the tip kept,
 *    under the same conditions;
 * Y8 a mic that the drummer wishes elsewhere: there, as far as its mount allows (W1, W2).
 * Null where there is none. Made when it is asked for: too much work for every frame of a drag.
 */
export function remedyOf(finding: Finding, layout: Layout, report: Report): Remedy | null {
  const [main] = finding.about;
  switch (finding.code) {
    case 'mic-beyond-stand':
      return report.rig.mics.flatMap((placed) => servingStand(placed, main))[0] ?? null;
    case 'feet-overlap':
      return freedFeet(finding.about, layout, report);
    case 'stand-may-tip': {
      const firm = (placed: PlacedMic) => (tippingOf(placed)?.factor ?? 0) >= FIRM;
      const feet = main === undefined ? undefined : turnOf(main, layout, report, firm);
      return feet ? { kind: 'turn', feet } : null;
    }
    case 'base-off-deck':
      return main === undefined ? null : ontoDeck(main, layout, report);
    case 'mic-move-wished':
      return wishedMove(finding, layout);
    default:
      return null;
  }
}

/** The layout with a remedy taken. */
export function takeRemedy(layout: Layout, remedy: Remedy): Layout {
  if (remedy.kind === 'turn') return turnedFeet(layout, remedy.feet);
  if (remedy.kind === 'base') return moveMicBase(layout, remedy.mic, remedy.to);
  if (remedy.kind === 'wish') return takeWish(layout, remedy.mic, remedy.to);
  const { mic, stand, follows } = remedy;
  const changed = setStandClass(layout, mic, stand);
  return follows ? setMast(changed, mic, null) : changed;
}

function servingStand({ mic, stand }: PlacedMic, id: Id | undefined): readonly Remedy[] {
  const { mount } = mic;
  if (mic.id !== id || !stand || mount.kind !== 'stand') return [];
  return STAND_CLASSES.flatMap((spec): Remedy[] => {
    const reaches = (mast: number | null) =>
      standReach(spec, mount.base, stand.hold, mast).beyondReach === 0;
    const serving = { kind: 'stand', mic: mic.id, stand: spec.standClass } as const;
    if (reaches(mount.mast)) return [{ ...serving, follows: false }];
    return reaches(null) ? [{ ...serving, follows: true }] : [];
  });
}

function freedFeet(about: readonly Id[], layout: Layout, report: Report): Remedy | null {
  const isMic = (id: Id) => layout.mics.some((mic) => mic.id === id);
  const ranked = about
    .flatMap((id) => turnOf(id, layout, report) ?? [])
    .toSorted(
      (a, b) => Number(isMic(b.id)) - Number(isMic(a.id)) || Math.abs(a.by) - Math.abs(b.by),
    );
  const [feet] = ranked;
  return feet ? { kind: 'turn', feet } : null;
}

function ontoDeck(id: Id, layout: Layout, report: Report): Remedy | null {
  const isOn = (placed: PlacedMic) => micOffDeck(placed, layout.deck).length === 0;
  const feet = turnOf(id, layout, report, isOn);
  return feet
    ? { kind: 'turn', feet }
    : baseIn(layout, report.rig, id, noNearer(id, layout, report));
}

const turnOf = (
  id: Id,
  layout: Layout,
  report: Report,
  alsoServes: (placed: PlacedMic) => boolean = () => true,
): FeetTurn | undefined => {
  const serves = noNearer(id, layout, report);
  return freeTurn(layout, report.rig, id, (placed) => alsoServes(placed) && serves(placed));
};

/** Whether a mic that stands otherwise comes no nearer to what moves than it is, or stays clear, and no deeper into the player or a pedal. */
function noNearer(
  id: Id,
  layout: Layout,
  { clearances, rig }: Report,
): (placed: PlacedMic) => boolean {
  const now = clearances.find(({ mic }) => mic === id);
  const before = rig.mics.find(({ mic }) => mic.id === id);
  if (!now || !before) return () => true;
  const againstPlayer = againstPlayerIn(layout);
  const found = againstPlayer(before);
  const motion = motionOf(layout.player, layout.pieces);
  const least = Math.min(layout.margin, now.clearance) - SAME;
  return (placed) =>
    isNoWorse(found, againstPlayer(placed)) && reachOf(motion, placed).clearance >= least;
}
