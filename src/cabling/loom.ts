import { gatherWays } from '../geometry/gatherWays.ts';
import { wayLength } from '../geometry/plan.ts';
import { type SharedStretch, sharedStretches } from '../geometry/sharedStretches.ts';
import type { Place, Tangents } from '../geometry/tangents.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { GatherWeights, WayToGather } from '../geometry/wayTree.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import type { Floors, WayLeg } from './layWay.ts';
import type { CableRouting } from './routeRuns.ts';
import type { Run } from './run.ts';
import { runAlong } from './runParts.ts';
import { serveRuns } from './serveRuns.ts';

type Spot = Vec2<'deck'>;

/** How cables are gathered. */
export interface LoomSettings {
  /** From 0 (every cable takes its own shortest way) to 1 (as little laid way as can be). */
  readonly neatness: number;
  /** How long a cable's way over the floor may become, by its own shortest way. */
  readonly longest: number;
}

/** Common practice, no source. */
export const USUAL_LOOM: LoomSettings = { neatness: 0.5, longest: 1.3 };

/** A run as it lies in the loom. */
export interface LoomedRun {
  readonly run: Run;
  /** Its length on its own shortest way, and what the loom adds. */
  readonly shortest: Mm;
  readonly extra: Mm;
}

/** A line of the loom and the mics whose cables lie in it, in the layout's order. Deck frame. */
export interface LoomStretch {
  readonly points: readonly Spot[];
  readonly length: Mm;
  readonly mics: readonly Id[];
}

/** A place where cables leave the bundle, as seen from the box: one group for every line but the thickest. */
export interface Breakout {
  readonly place: Spot;
  readonly groups: readonly (readonly Id[])[];
}

export interface Loom {
  /** In the layout's order. */
  readonly runs: readonly LoomedRun[];
  readonly stretches: readonly LoomStretch[];
  readonly breakouts: readonly Breakout[];
  /** All ways over the floor: each line once, and with every cable in it counted. */
  readonly laid: Mm;
  readonly cable: Mm;
}

/** Even the neatest loom prefers the shorter of two equally neat ones. */
const LEAST_EACH = 0.02;

/**
 * The runs of a layout gathered into bundles. Takes the routing of the same layout and rig.
 *
 * M1 With neatness n, what is made least is n times the laid way (each line once) plus 1 - n times the cable over the floor.
 * M2 No way over the floor becomes longer than `longest` times the run's own shortest.
 * M3 Gathered cables keep off everything that single ones keep off (W1), the player's foot space first of all. A run for which
 *    there is no such way keeps its own; so does the part of one that leads out of what it starts in (W3).
 * M4 Cables for a box beside the deck gather on the deck up to where all go over its edge, and again below.
 * M5 In front of the box each cable leaves for its own input, at most along the row of inputs.
 */
export function loomOf(
  layout: Layout,
  rig: Rig,
  routing: CableRouting,
  { neatness, longest }: LoomSettings = USUAL_LOOM,
): Loom {
  const weights = { each: Math.max(LEAST_EACH, 1 - neatness), once: neatness };
  const routes = routing.ways.map(({ route }) => [...route]);
  if (neatness > 0) {
    for (const floor of ['stage', 'deck'] as const) {
      for (const { run, leg, points } of gatheredOn(floor, routing, { weights, longest })) {
        routes[run]?.splice(leg.first, leg.last - leg.first + 1, ...points);
      }
    }
  }
  const laid = routes.flatMap((route, i): Run[] => {
    const [placed, way] = [rig.mics[i], routing.ways[i]];
    return placed && way ? [runAlong(placed, { ...way, route }, layout)] : [];
  });
  const runs = serveRuns(laid, layout.cabling.stock).map((run, i): LoomedRun => {
    const shortest = routing.runs[i]?.total ?? run.total;
    return { run, shortest, extra: run.total - shortest };
  });
  return { runs, ...drawn(laid) };
}

interface Gathering {
  readonly weights: GatherWeights;
  readonly longest: number;
}

/** A run's part on one floor, as it lies in the loom. */
interface GatheredLeg {
  readonly run: number;
  readonly leg: WayLeg;
  readonly points: readonly Spot[];
}

function gatheredOn(
  floor: keyof Floors,
  { ways, floors }: CableRouting,
  { weights, longest }: Gathering,
): GatheredLeg[] {
  const legs = ways.flatMap((way, run) =>
    way.legs.filter((leg) => leg.floor === floor).map((leg) => ({ run, leg, way })),
  );
  if (legs.length < 2) return [];
  const tangents = floors[floor].tangents();
  const ends = new Map<string, Place<'deck'>>();
  const sources = legs.map(({ leg, way }): WayToGather<'deck'> => {
    const points = way.route.slice(leg.first, leg.last + 1);
    const free = floors[floor].freeAt(leg.from);
    const own = placesOf(points, { tangents, free, ends });
    return { own, most: longest * wayLength(points) };
  });
  const gathered = gatherWays(tangents, sources, weights);
  return legs.map(({ run, leg }, i) => ({ run, leg, points: gathered[i] ?? [] }));
}

interface Floor {
  readonly tangents: Tangents<'deck'>;
  readonly free: ReadonlySet<number>;
  /** Ends that several ways share are one place. */
  readonly ends: Map<string, Place<'deck'>>;
}

function placesOf(points: readonly Spot[], { tangents, free, ends }: Floor): Place<'deck'>[] {
  return points.map((point, i) => {
    if (i === 0 && points.length > 1) return tangents.place(point, free);
    if (i < points.length - 1) return tangents.place(point);
    const key = `${point.x},${point.y}`;
    const end = ends.get(key) ?? tangents.place(point);
    ends.set(key, end);
    return end;
  });
}

function drawn(runs: readonly Run[]): Omit<Loom, 'runs'> {
  const shared = sharedStretches(runs.map(({ route }) => route));
  const micsOf = (ways: readonly number[]): readonly Id[] =>
    ways.flatMap((way) => runs[way]?.mic ?? []);
  const stretches = shared.map(({ points, length, ways }) => ({
    points,
    length,
    mics: micsOf(ways),
  }));
  return {
    stretches,
    breakouts: breakoutsOf(shared).map(({ place, groups }) => ({
      place,
      groups: groups.map(micsOf),
    })),
    laid: shared.reduce((sum, { length }) => sum + length, 0),
    cable: runs.reduce((sum, { route }) => sum + wayLength(route), 0),
  };
}

function breakoutsOf(
  stretches: readonly SharedStretch<'deck'>[],
): { readonly place: Spot; readonly groups: readonly (readonly number[])[] }[] {
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
      return { place, groups: thickFirst.slice(1) };
    });
}
