import type { Vec2 } from '../../geometry/vector.ts';
import { type Selection, sameSelection } from '../../session/selection.ts';
import { awayFrom } from './outline.ts';
import type { Fineness, Pickable } from './pickables.ts';

/** One thing under a finger. */
export interface Hit {
  readonly pickable: Pickable;
  /** How far the finger is from what is seen, px. */
  readonly away: number;
}

/** Half of the least touch target (44 px): what lies within it of the finger can be meant. */
export const FINGER = 22;

/** How near the finger must come to each fineness, px. */
const REACH: Readonly<Record<Fineness, number>> = {
  fine: FINGER,
  line: 10,
  broad: 12,
  ground: 14,
};

/** A part of a thing under a finger, with its class (rule P1). */
interface Touch extends Hit {
  readonly rank: number;
}

/**
 * Everything a finger at `spot` can mean, the likeliest first, each thing once (rule P1):
 * small things right at the finger, the nearest first; lines that are touched; broad things touched, the highest first; then
 * what is only within the finger's width; then what lies on the floor below a broad thing touched; then the ground. So the
 * middle of a small drum means the drum and not its mic, a mic beside nothing can be met 22 px away, and a stand's base or a
 * cable below a cymbal never comes before the cymbal that hides it.
 */
export const hitsAt = (
  pickables: readonly Pickable[],
  spot: Vec2,
  pxPerMm: number,
): readonly Hit[] => eachOnce(touchesAt(pickables, spot, pxPerMm));

/** All parts under a finger, the likeliest first. */
export function touchesAt(
  pickables: readonly Pickable[],
  spot: Vec2,
  pxPerMm: number,
): readonly Hit[] {
  const near = pickables
    .map((pickable) => ({ pickable, away: awayFrom(pickable.outline, spot) * pxPerMm }))
    .filter((hit) => hit.away <= REACH[hit.pickable.fineness]);
  const isCovered = near.some(
    ({ pickable, away }) => pickable.fineness === 'broad' && pickable.height > 0 && away <= TOUCHED,
  );
  return near
    .map((hit): Touch => ({ ...hit, rank: rankOf(hit, isCovered) }))
    .sort((a, b) => a.rank - b.rank || withinRank(a, b));
}

const eachOnce = (hits: readonly Hit[]): readonly Hit[] =>
  hits.filter(
    (hit, i) =>
      hits.findIndex((other) => sameSelection(other.pickable.selection, hit.pickable.selection)) ===
      i,
  );

/** Px within which a line or a broad thing counts as touched, and a small thing as right at the finger. */
const TOUCHED = 4;
const AT_FINGER = 11;

function rankOf({ pickable, away }: Hit, isCovered: boolean): number {
  if (isCovered && pickable.isOnFloor) return 4;
  switch (pickable.fineness) {
    case 'fine':
      return away <= AT_FINGER ? 0 : 3;
    case 'line':
      return away <= TOUCHED ? 1 : 3;
    case 'broad':
      return away <= TOUCHED ? 2 : 3;
    case 'ground':
      return 5;
  }
}

const withinRank = (a: Touch, b: Touch): number =>
  a.rank === 2
    ? b.pickable.height - a.pickable.height || a.away - b.away
    : a.away - b.away || b.pickable.height - a.pickable.height;

/**
 * What a tap selects (rule P2): the likeliest thing; tapped again on the same spot, the next one, round and round; nothing
 * where nothing is.
 */
export function tapped(
  hits: readonly Hit[],
  selected: Selection | null,
  again: boolean,
): Selection | null {
  const at = again ? hits.findIndex((hit) => sameSelection(hit.pickable.selection, selected)) : -1;
  return hits[(at + 1) % Math.max(1, hits.length)]?.pickable.selection ?? null;
}

/**
 * What a drag from there takes hold of (rule P3): what is selected, if it is there; else the likeliest thing touched. What can't
 * be dragged (a cable, the player) gives way to what can.
 */
export function grabbed(
  touches: readonly Hit[],
  selected: Selection | null,
  canDrag: (pickable: Pickable) => boolean,
): Hit | undefined {
  const held = touches.filter(({ pickable }) => canDrag(pickable));
  return (
    held.find((hit) => sameSelection(hit.pickable.selection, selected)) ??
    held.find((hit) => hit.pickable.fineness !== 'ground')
  );
}
