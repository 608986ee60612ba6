import { gatherWays } from '../geometry/gatherWays.ts';
import { listed } from '../geometry/listed.ts';
import { createPlaceNumbers } from '../geometry/placeNumbers.ts';
import { wayLength } from '../geometry/plan.ts';
import { isSameList } from '../geometry/remembered.ts';
import type { Place, Tangents } from '../geometry/tangents.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { GatherWeights, WayToGather } from '../geometry/wayTree.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import type { Floors, LaidWay, WayLeg } from './layWay.ts';
import { type LoomLines, linesOf } from './loomLines.ts';
import type { CableRouting } from './routeRuns.ts';
import type { Run } from './run.ts';
import { runAlong } from './runParts.ts';

type Spot = Vec2<'deck'>;

/** How cables are gathered. */
export interface LoomSettings {
  /** From 0 (every cable takes its own shortest way) to 1 (as little laid way as can be). */
  readonly neatness: number;
  /** How long a cable's way over the floor may become, by its own shortest way. */
  readonly longest: number;
  /** While something is dragged: a loom that keeps the same rules but is not tried so long to be improved. */
  readonly inHurry?: boolean;
}

/** How much longer than its own shortest a way may become. Common practice, no source. */
const USUAL_LONGEST = 1.3;

/** A run as it lies in the loom. */
export interface LoomedRun {
  readonly run: Run;
  /** Its length on its own shortest way, and what the loom adds. */
  readonly shortest: Mm;
  readonly extra: Mm;
}

export interface Loom extends LoomLines {
  /** In the layout's order. */
  readonly runs: readonly LoomedRun[];
}

/** Even the neatest loom prefers the shorter of two equally neat ones. */
const LEAST_EACH = 0.02;

/** Gathers the runs of a layout; takes its rig, its routing, and settings where they are not the layout's own. */
export type GatherLoom = (
  layout: Layout,
  rig: Rig,
  routing: CableRouting,
  settings?: LoomSettings,
) => Loom;

/** The runs of one layout gathered into bundles, as {@link createLoom} does it. */
export const loomOf: GatherLoom = (layout, rig, routing, settings) =>
  createLoom()(layout, rig, routing, settings);

/**
 * Gathers the runs of one layout after another into bundles; what no change touches is kept from the last call.
 *
 * M1 With neatness n, what is made least is n times the laid way (each line once) plus 1 - n times the cable over the floor.
 * M2 No way over the floor becomes longer than `longest` times the run's own shortest.
 * M3 Gathered cables keep off everything that single ones keep off (W1), the player's foot space first of all. A run for which
 *    there is no such way keeps its own; so does the part of one that leads out of what it starts in (W3).
 * M4 Cables for a box beside the deck gather on the deck up to where all go over its edge, and again below.
 * M5 In front of the box each cable leaves for its own input, at most along the row of inputs.
 */
export function createLoom(): GatherLoom {
  let last: Gathered | undefined;
  let lines:
    | { readonly routes: Routes; readonly mics: string; readonly drawn: LoomLines }
    | undefined;
  const kept = new Map<Id, KeptRun>();
  return (layout, rig, routing, settings = settingsOf(layout)) => {
    const routes =
      last && isSameGathering(last, routing, settings)
        ? last.routes
        : keptWhereEqual(routesIn(routing, settings), last?.routes ?? []);
    last = { ways: routing.ways, floors: routing.floors, settings, routes };
    const runs = routes.flatMap((route, i): LoomedRun[] => {
      const placed = rig.mics[i];
      const way = routing.ways[i];
      if (!placed || !way) return [];
      const run = runOf(kept, placed, { ...way, route }, layout);
      const shortest = routing.runs[i]?.total ?? run.total;
      return [{ run, shortest, extra: run.total - shortest }];
    });
    const mics = runs.map(({ run }) => run.mic).join(' ');
    if (lines?.routes !== routes || lines.mics !== mics) {
      lines = {
        routes,
        mics,
        drawn: linesOf(
          listed(runs, ({ run }) => run),
          lines?.drawn,
        ),
      };
    }
    return { runs, ...lines.drawn };
  };
}

/** What a layout says. */
export const settingsOf = ({ cabling: { neatness } }: Layout, inHurry = false): LoomSettings => ({
  neatness,
  longest: USUAL_LONGEST,
  inHurry,
});

type Routes = readonly (readonly Spot[])[];

/** What routes were gathered from. */
interface Gathered {
  readonly ways: CableRouting['ways'];
  readonly floors: Floors;
  readonly settings: LoomSettings;
  readonly routes: Routes;
}

const isSameGathering = (
  { ways, floors, settings }: Gathered,
  now: CableRouting,
  { neatness, longest, inHurry }: LoomSettings,
): boolean =>
  settings.neatness === neatness &&
  settings.longest === longest &&
  settings.inHurry === inHurry &&
  // Without neatness nothing but the ways counts.
  (neatness === 0 || floors === now.floors) &&
  isSameList(ways, now.ways);

/** Routes that are as they were, as the objects they were. */
const keptWhereEqual = (now: Routes, before: Routes): Routes =>
  listed(now, (route, i) => {
    const old = before[i];
    const isEqual =
      old?.length === route.length &&
      old.every((p, k) => p.x === route[k]?.x && p.y === route[k].y);
    return isEqual ? old : route;
  });

function routesIn(routing: CableRouting, settings: LoomSettings): Routes {
  const { neatness, longest, inHurry = false } = settings;
  if (neatness === 0) return listed(routing.ways, ({ route }) => route);
  const weights = { each: Math.max(LEAST_EACH, 1 - neatness), once: neatness };
  const routes = listed(routing.ways, ({ route }) => [...route]);
  for (const floor of ['stage', 'deck'] as const) {
    for (const { run, leg, points } of gatheredOn(floor, routing, { weights, longest, inHurry })) {
      routes[run]?.splice(leg.first, leg.last - leg.first + 1, ...points);
    }
  }
  return routes;
}

/** A run with what it was made from. */
interface KeptRun {
  readonly placed: PlacedMic;
  readonly way: LaidWay;
  readonly layout: Layout;
  readonly run: Run;
}

function runOf(kept: Map<Id, KeptRun>, placed: PlacedMic, way: LaidWay, layout: Layout): Run {
  const known = kept.get(placed.mic.id);
  const isSame =
    known?.placed === placed &&
    known.way.route === way.route &&
    known.way.edges === way.edges &&
    known.way.through === way.through &&
    known.layout.cabling === layout.cabling &&
    known.layout.deck === layout.deck;
  if (isSame) return known.run;
  const run = runAlong(placed, way, layout);
  kept.set(placed.mic.id, { placed, way, layout, run });
  return run;
}

interface Gathering {
  readonly weights: GatherWeights;
  readonly longest: number;
  readonly inHurry: boolean;
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
  { weights, longest, inHurry }: Gathering,
): GatheredLeg[] {
  const legs = ways.flatMap((way, run) =>
    way.legs.filter((leg) => leg.floor === floor).map((leg) => ({ run, leg, way })),
  );
  if (legs.length < 2) return [];
  const tangents = floors[floor].tangents();
  const ends = new Map<number, Place<'deck'>>();
  const numberOf = createPlaceNumbers<'deck'>();
  const sources = listed(legs, ({ leg, way }): WayToGather<'deck'> => {
    const points = way.route.slice(leg.first, leg.last + 1);
    const free = floors[floor].freeAt(leg.from);
    const own = placesOf(points, { tangents, free, ends, numberOf });
    return { own, most: longest * wayLength(points) };
  });
  const gathered = gatherWays(tangents, sources, weights, inHurry);
  return listed(legs, ({ run, leg }, i) => ({ run, leg, points: gathered[i] ?? [] }));
}

interface Floor {
  readonly tangents: Tangents<'deck'>;
  readonly free: ReadonlySet<number>;
  /** Ends that several ways share are one place. */
  readonly ends: Map<number, Place<'deck'>>;
  readonly numberOf: (place: Spot) => number;
}

function placesOf(
  points: readonly Spot[],
  { tangents, free, ends, numberOf }: Floor,
): Place<'deck'>[] {
  return listed(points, (point, i) => {
    if (i === 0 && points.length > 1) return tangents.place(point, free);
    if (i < points.length - 1) return tangents.place(point);
    const key = numberOf(point);
    const end = ends.get(key) ?? tangents.place(point);
    ends.set(key, end);
    return end;
  });
}
