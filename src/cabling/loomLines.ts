import { wayLength } from '../geometry/plan.ts';
import { type SharedStretch, sharedStretches } from '../geometry/sharedStretches.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Mm } from '../units/quantity.ts';
import type { Run } from './run.ts';

type Spot = Vec2<'deck'>;

/** A line of the loom and the mics whose cables lie in it, in the layout's order. Deck frame. */
export interface LoomStretch {
  /** Tells it from others with the same mics: 0 for the first of them. */
  readonly nth: number;
  readonly points: readonly Spot[];
  readonly length: Mm;
  readonly mics: readonly Id[];
}

/** A place where cables leave the bundle, as seen from the box: one group for every line but the thickest. */
export interface Breakout {
  /** Tells it from others with the same groups: 0 for the first of them. */
  readonly nth: number;
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
  const shared = sharedStretches(runs.map(({ route }) => route));
  const micsOf = (ways: readonly number[]): readonly Id[] =>
    ways.flatMap((way) => runs[way]?.mic ?? []);
  const stretches = shared.map(({ points, length, ways }) => ({
    points,
    length,
    mics: micsOf(ways),
  }));
  const breakouts = breakoutsOf(shared).map(({ place, ways, groups }) => ({
    place,
    mics: micsOf(ways),
    groups: groups.map(micsOf),
  }));
  return {
    stretches: keptIfEqual(
      numbered(stretches, ({ mics }) => mics),
      before?.stretches ?? [],
    ),
    breakouts: keptIfEqual(
      numbered(breakouts, ({ groups }) => groups.flat()),
      before?.breakouts ?? [],
    ),
    laid: shared.reduce((sum, { length }) => sum + length, 0),
    cable: runs.reduce((sum, { route }) => sum + wayLength(route), 0),
  };
}

/** With their places among those about the same mics. */
function numbered<Thing>(
  things: readonly Thing[],
  about: (thing: Thing) => readonly Id[],
): readonly (Thing & { readonly nth: number })[] {
  const counts = new Map<string, number>();
  return things.map((thing) => {
    const key = about(thing).join(' ');
    const nth = counts.get(key) ?? 0;
    counts.set(key, nth + 1);
    return { ...thing, nth };
  });
}

/** What is as it was, as the object that it was. */
function keptIfEqual<Thing>(now: readonly Thing[], before: readonly Thing[]): readonly Thing[] {
  const known = new Map(before.map((thing) => [JSON.stringify(thing), thing]));
  return now.map((thing) => known.get(JSON.stringify(thing)) ?? thing);
}

interface Parting {
  readonly place: Spot;
  readonly ways: readonly number[];
  readonly groups: readonly (readonly number[])[];
}

function breakoutsOf(stretches: readonly SharedStretch<'deck'>[]): readonly Parting[] {
  const at = new Map<string, { place: Spot; stretches: SharedStretch<'deck'>[] }>();
  for (const stretch of stretches) {
    for (const place of [stretch.points[0], stretch.points.at(-1)]) {
      if (!place) continue;
      const key = `${place.x},${place.y}`;
      const known = at.get(key) ?? { place, stretches: [] };
      at.set(key, known);
      known.stretches.push(stretch);
    }
  }
  return [...at.values()]
    .filter(({ stretches: met }) => met.length > 2)
    .map(({ place, stretches: met }) => {
      const thickFirst = met.map(({ ways }) => ways).sort((p, q) => q.length - p.length);
      return { place, ways: thickFirst[0] ?? [], groups: thickFirst.slice(1) };
    });
}
