import { listed } from '../geometry/listed.ts';
import { isSameList } from '../geometry/remembered.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { PlacedMic, Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import {
  type ElectricalFacts,
  electricalFacts,
  SOURCE_IMPEDANCE,
  USUAL_LOAD,
} from './electrical.ts';
import { createLoom, type Loom, type LoomedRun, settingsOf } from './loom.ts';
import type { Obstacle } from './obstacle.ts';
import { createCableRouter } from './routeRuns.ts';
import type { Run } from './run.ts';
import {
  FOOT_SIZES,
  METRIC_SIZES,
  planStock,
  type ServedRun,
  type StockPlan,
} from './stockPlan.ts';

/** One cable as it lies in the loom, and what serves it. */
export interface CableRun extends Run {
  /** Its length on its own shortest way, and what the loom adds to that. */
  readonly shortest: Mm;
  readonly extra: Mm;
  /** The stock cables that serve it: one, or two that are joined, the longer first; none where none that is left would do. */
  readonly carried: readonly Mm[];
  /** Else what has to be brought for it: one, or more that are joined. */
  readonly missing: readonly Mm[];
  /** What the run and the multicore after it do to its signal. */
  readonly electrical: ElectricalFacts;
}

/** All cables of a layout. */
export interface Cables {
  /** What they keep off. */
  readonly obstacles: readonly Obstacle[];
  /** In the layout's order. */
  readonly runs: readonly CableRun[];
  readonly loom: Omit<Loom, 'runs'>;
  readonly stock: Omit<StockPlan, 'runs'>;
}

/** The cables of a layout as they are laid: routed, gathered, and served from the stock carried. */
export const cablesOf = (layout: Layout, rig: Rig): Cables => createCables()(layout, rig);

/** Lays the cables of a layout; in a hurry the loom is not tried so long to be improved. */
export type LayCables = (layout: Layout, rig: Rig, inHurry?: boolean) => Cables;

/** The cables of one layout after another; what no change touches is kept from the last call, objects included. */
export function createCables(): LayCables {
  const route = createCableRouter();
  const gather = createLoom();
  let known = new Map<Id, KnownCable>();
  return (layout, rig, inHurry) => {
    const routing = route(layout, rig);
    const { runs, ...loom } = gather(layout, rig, routing, settingsOf(layout, inHurry));
    const needs = listed(runs, ({ run: { mic, total } }) => ({ mic, total }));
    const sizes = layout.units === 'mm' ? METRIC_SIZES : FOOT_SIZES;
    const { runs: served, ...stock } = planStock(needs, layout.cabling.stock, sizes);
    const all = runs.flatMap((looped, i): KnownCable[] => {
      const placed = rig.mics[i];
      const cable = served[i];
      if (!placed || !cable) return [];
      const from = {
        run: looped.run,
        micClass: placed.micClass,
        box: layout.box,
        venue: layout.venue,
      };
      const before = known.get(looped.run.mic);
      if (before && isSameFrom(before, from) && servesTheSame(before.cable, looped, cable)) {
        return [before];
      }
      const now = cableRun(looped, cable, signalOf(from));
      return [{ ...from, cable: keptIfEqual(now, before?.cable) }];
    });
    known = new Map(all.map((entry) => [entry.run.mic, entry]));
    return { obstacles: routing.obstacles, runs: listed(all, ({ cable }) => cable), loom, stock };
  };
}

/** What a cable is made from, but for what serves it. */
interface CableSource {
  readonly run: Run;
  readonly micClass: PlacedMic['micClass'];
  readonly box: Layout['box'];
  readonly venue: Layout['venue'];
}

interface KnownCable extends CableSource {
  readonly cable: CableRun;
}

const isSameFrom = (p: CableSource, q: CableSource): boolean =>
  p.run === q.run && p.micClass === q.micClass && p.box === q.box && p.venue === q.venue;

const servesTheSame = (
  before: CableRun,
  { shortest }: LoomedRun,
  { carried, missing }: ServedRun,
): boolean =>
  before.shortest === shortest &&
  isSameList(before.carried, carried) &&
  isSameList(before.missing, missing);

const cableRun = (
  { run, shortest, extra }: LoomedRun,
  { carried, missing }: ServedRun,
  electrical: ElectricalFacts,
): CableRun => ({ ...run, shortest, extra, carried, missing, electrical });

const signalOf = ({ run, micClass, box, venue }: CableSource): ElectricalFacts =>
  electricalFacts({
    length: run.total + box.tail,
    source: SOURCE_IMPEDANCE[micClass.type],
    load: USUAL_LOAD,
    temperature: venue.temperature,
  });

/** A run that is as it was, as the object that it was. */
const keptIfEqual = (now: CableRun, before: CableRun | undefined): CableRun =>
  before?.route === now.route &&
  before.parts === now.parts &&
  before.input === now.input &&
  before.through === now.through &&
  before.shortest === now.shortest &&
  before.electrical.corner === now.electrical.corner &&
  before.electrical.loop === now.electrical.loop &&
  isSameList(before.carried, now.carried) &&
  isSameList(before.missing, now.missing)
    ? before
    : now;
