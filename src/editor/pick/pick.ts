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

/**
 * Everything a finger at `spot` can mean, the likeliest first, each thing once (rule P1):
 * small things right at the finger, the nearest first; lines that are touched; broad things touched, the highest first; then
 * what is only within the finger's width; then the ground. So the middle of a small drum means the drum and not its mic, and
 * a mic beside nothing can be met 22 px away.
 */
export function hitsAt(
  pickables: readonly Pickable[],
  spot: Vec2,
  pxPerMm: number,
): readonly Hit[] {
  const near = pickables
    .map((pickable) => ({ pickable, away: awayFrom(pickable.outline, spot) * pxPerMm }))
    .filter((hit) => hit.away <= REACH[hit.pickable.fineness])
    .sort((a, b) => classOf(a) - classOf(b) || withinClass(a, b));
  return near.filter(
    (hit, i) =>
      near.findIndex((other) => sameSelection(other.pickable.selection, hit.pickable.selection)) ===
      i,
  );
}

/** Px within which a line or a broad thing counts as touched, and a small thing as right at the finger. */
const TOUCHED = 4;
const AT_FINGER = 11;

function classOf({ pickable, away }: Hit): number {
  switch (pickable.fineness) {
    case 'fine':
      return away <= AT_FINGER ? 0 : 3;
    case 'line':
      return away <= TOUCHED ? 1 : 3;
    case 'broad':
      return away <= TOUCHED ? 2 : 3;
    case 'ground':
      return 4;
  }
}

const withinClass = (a: Hit, b: Hit): number =>
  classOf(a) === 2
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

/** What a drag from there takes hold of (rule P3): what is selected, if it is there; else the likeliest thing touched. */
export function grabbed(hits: readonly Hit[], selected: Selection | null): Hit | undefined {
  return (
    hits.find((hit) => sameSelection(hit.pickable.selection, selected)) ??
    hits.find((hit) => hit.away <= FINGER && hit.pickable.fineness !== 'ground')
  );
}
