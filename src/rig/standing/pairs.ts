import { type Bounds, boundsMeet } from '../../geometry/bounds.ts';
import { listed } from '../../geometry/listed.ts';
import type { Standing } from './standing.ts';

/** What is found of one thing or one pair. */
export type Found = readonly Standing[];

export const NOTHING: Found = [];

interface Bounded {
  readonly bounds: Bounds;
}

/** Measures only what comes near. */
export const near = <P extends Bounded, Q extends Bounded>(
  p: P,
  q: Q,
  measure: (p: P, q: Q) => Found,
): Found => (boundsMeet(p.bounds, q.bounds) ? measure(p, q) : NOTHING);

/** What is found of each first thing, against all that it is paired with, in their order. */
export type Pairs<P, Q> = (firsts: readonly P[], seconds: readonly Q[]) => readonly Found[];

/**
 * Measures every first thing against every second, or in a list with itself only against those `after` it. Remembers the last two lists: a pair
 * whose two things stand where they stood in them, the same objects, is not measured again. A table and no map by object: of a
 * thousand pairs few come near, and to look each of them up would cost more than the boxes.
 */
export function rememberedPairs<P extends Bounded, Q extends Bounded>(
  measure: (p: P, q: Q) => Found,
  { after }: { readonly after: boolean },
): Pairs<P, Q> {
  let last: Table<P, Q> = { firsts: [], seconds: [], rows: [] };
  return (firsts, seconds) => {
    const kept = listed(seconds, (second, j) => second === last.seconds[j]);
    const allKept = seconds.length === last.seconds.length && !kept.includes(false);
    const rows = listed(firsts, (first, i): Row => {
      const known = first === last.firsts[i] ? last.rows[i] : undefined;
      if (known && allKept) return known;
      const cells = listed(seconds, (second, j): Found => {
        if (after && j <= i) return NOTHING;
        return (kept[j] ? known?.cells[j] : undefined) ?? near(first, second, measure);
      });
      return { cells, found: cells.some(({ length }) => length > 0) ? cells.flat() : NOTHING };
    });
    last = { firsts, seconds, rows };
    return listed(rows, ({ found }) => found);
  };
}

interface Table<P, Q> {
  readonly firsts: readonly P[];
  readonly seconds: readonly Q[];
  readonly rows: readonly Row[];
}

/** What was found of one first thing: by the seconds, and altogether. */
interface Row {
  readonly cells: readonly Found[];
  readonly found: Found;
}
