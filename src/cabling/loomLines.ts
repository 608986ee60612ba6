import { listed } from '../geometry/listed.ts';
import { createPlaceNumbers } from '../geometry/placeNumbers.ts';
import { wayLength } from '../geometry/plan.ts';
import { type SharedStretch, sharedStretches } from '../geometry/sharedStretches.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import type { Run } from './run.ts';

type Spot = Vec2<'deck'>;

/** A line of the loom and the mics whose cables lie in it, in the layout's order. Deck frame. */
export interface LoomStretch {
  /** Tells it from all others: its mics, and a number where several have the same. */
  readonly key: string;
  readonly points: readonly Spot[];
  readonly length: Mm;
  readonly mics: readonly Id[];
  /** Whether no cable in it has a way that keeps clear of everything: it is where they would go, not a plan. */
  readonly hasNoWay: boolean;
}

/** A place where cables leave the bundle, as seen from the box: one group for every line but the thickest. */
export interface Breakout {
  /** Tells it from all others: its groups, and a number where several have the same. */
  readonly key: string;
  readonly place: Spot;
  /** All whose cables are in the bundle there. */
  readonly mics: readonly Id[];
  readonly groups: readonly (readonly Id[])[];
}

/** A loom as it is drawn. */
export interface LoomLines {
  readonly stretches: readonly LoomStretch[];
  readonly breakouts: readonly Breakout[];
  /** All ways over the floor: each line once, and with every cable in it counted. */
  readonly laid: Mm;
  readonly cable: Mm;
}

/** The lines in which runs lie; those that are as they were are the objects that they were. */
export function linesOf(runs: readonly Run[], before: LoomLines | undefined): LoomLines {
  const shared = sharedStretches(listed(runs, ({ route }) => route));
  const micsOf = (ways: readonly number[]): readonly Id[] => {
    const mics: Id[] = [];
    for (const way of ways) {
      const run = runs[way];
      if (run) mics.push(run.mic);
    }
    return mics;
  };
  const keys = createKeys();
  const stretches = listed(shared, ({ points, length, ways }) => {
    const mics = micsOf(ways);
    const hasNoWay = ways.every((way) => (runs[way]?.through.length ?? 0) > 0);
    return { key: keys(mics.join(' ')), points, length, mics, hasNoWay };
  });
  const breakouts = breakoutsOf(shared).map(({ place, ways, groups }) => {
    const named = listed(groups, micsOf);
    const key = keys(named.map((mics) => mics.join(' ')).join(', '));
    return { key, place, mics: micsOf(ways), groups: named };
  });
  return {
    stretches: keptWhere(
      stretches,
      before?.stretches,
      (p, q) => p.hasNoWay === q.hasNoWay && isSameWay(p.points, q.points),
    ),
    breakouts: keptWhere(
      breakouts,
      before?.breakouts,
      (p, q) => isSameWay([p.place], [q.place]) && p.mics.join(' ') === q.mics.join(' '),
    ),
    laid: shared.reduce((sum, { length }) => sum + length, 0),
    cable: runs.reduce((sum, { route }) => sum + wayLength(route), 0),
  };
}

/** Makes texts different from each other, by numbers from the second of each on. */
function createKeys(): (text: string) => string {
  const counts = new Map<string, number>();
  return (text) => {
    const nth = counts.get(text) ?? 0;
    counts.set(text, nth + 1);
    return nth === 0 ? text : `${text} ${nth + 1}`;
  };
}

/** What is as it was, as the object that it was. */
function keptWhere<Thing extends { readonly key: string }>(
  now: readonly Thing[],
  before: readonly Thing[] | undefined,
  isSame: (p: Thing, q: Thing) => boolean,
): readonly Thing[] {
  const known = new Map(before?.map((thing) => [thing.key, thing]));
  return listed(now, (thing) => {
    const old = known.get(thing.key);
    return old && isSame(old, thing) ? old : thing;
  });
}

const isSameWay = (p: readonly Spot[], q: readonly Spot[]): boolean =>
  p.length === q.length && p.every(({ x, y }, i) => x === q[i]?.x && y === q[i]?.y);

interface Parting {
  readonly place: Spot;
  readonly ways: readonly number[];
  readonly groups: readonly (readonly number[])[];
}

function breakoutsOf(stretches: readonly SharedStretch<'deck'>[]): readonly Parting[] {
  const numberOf = createPlaceNumbers<'deck'>();
  const at = new Map<number, { place: Spot; stretches: SharedStretch<'deck'>[] }>();
  for (const stretch of stretches) {
    for (const place of [stretch.points[0], stretch.points.at(-1)]) {
      if (!place) continue;
      const key = numberOf(place);
      const known = at.get(key) ?? { place, stretches: [] };
      at.set(key, known);
      known.stretches.push(stretch);
    }
  }
  return [...at.values()]
    .filter(({ stretches: met }) => met.length > 2)
    .map(({ place, stretches: met }) => {
      const thickFirst = listed(met, ({ ways }) => ways).sort((p, q) => q.length - p.length);
      return { place, ways: thickFirst[0] ?? [], groups: thickFirst.slice(1) };
    });
}
