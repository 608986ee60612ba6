import type { CableCount } from '../cabling/cableCount.ts';
import { type Difference, differences } from '../layout/differences.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mm } from '../units/quantity.ts';
import { compareKits, type KitChanges } from './compareKits.ts';
import type { Finding, Report, RunRow } from './report.ts';

/** A layout with its report. */
export interface Analysed {
  readonly layout: Layout;
  readonly report: Report;
}

/** One cable that is not as it was. Lengths in mm; null where there is no such run, or no stock that serves it; joined cables as one. */
export interface RunChange {
  readonly mic: Id;
  readonly name: string;
  readonly before: Mm | null;
  readonly after: Mm | null;
  readonly stockBefore: Mm | null;
  readonly stockAfter: Mm | null;
  /** The stock cable that served it before does not reach any more. */
  readonly tooShort: boolean;
}

/** What differs between two layouts, whatever they are: two revisions of one, or one and what was started from it. */
export interface Comparison {
  readonly kit: KitChanges;
  /** By the findings' keys, each list worst first. */
  readonly gained: readonly Finding[];
  readonly lost: readonly Finding[];
  readonly runs: readonly RunChange[];
  /** What has to be brought because the stock carried does not serve every run, shortest first. */
  readonly missing: {
    readonly before: readonly CableCount[];
    readonly after: readonly CableCount[];
  };
  /** Fields of name, venue, deck, box, cabling and margin that are not the same: `deck.width`, `venue.temperature`. */
  readonly stage: readonly Difference[];
}

/** Runs whose lengths differ by less have the same length. */
const SAME: Mm = 0.5;

/** Everything that changed from one layout to another. Pure; both reports must be of their layouts. */
export function compareLayouts(before: Analysed, after: Analysed): Comparison {
  return {
    kit: compareKits(
      { parts: before.layout, rig: before.report.rig },
      { parts: after.layout, rig: after.report.rig },
    ),
    gained: notIn(after.report.findings, before.report.findings),
    lost: notIn(before.report.findings, after.report.findings),
    runs: runChanges(before, after),
    missing: { before: before.report.stock.missing, after: after.report.stock.missing },
    stage: differences(stageOf(before.layout), stageOf(after.layout)),
  };
}

function notIn(findings: readonly Finding[], others: readonly Finding[]): readonly Finding[] {
  const known = new Set(others.map(({ key }) => key));
  return findings.filter(({ key }) => !known.has(key));
}

/** In the order of the second layout's mics, then those that are gone. */
function runChanges(before: Analysed, after: Analysed): readonly RunChange[] {
  const was = new Map(before.report.runs.map((run) => [run.mic, run]));
  const is = new Map(after.report.runs.map((run) => [run.mic, run]));
  const names = new Map(
    [...before.layout.mics, ...after.layout.mics].map(({ id, name }) => [id, name]),
  );
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((mic) => {
    const first = was.get(mic);
    const second = is.get(mic);
    const stockBefore = carriedFor(first);
    const stockAfter = carriedFor(second);
    const change: RunChange = {
      mic,
      name: names.get(mic) ?? mic,
      before: first?.total ?? null,
      after: second?.total ?? null,
      stockBefore,
      stockAfter,
      tooShort: second !== undefined && (stockBefore ?? Number.POSITIVE_INFINITY) < second.total,
    };
    const same =
      first !== undefined &&
      second !== undefined &&
      Math.abs(first.total - second.total) < SAME &&
      stockBefore === stockAfter;
    return same ? [] : [change];
  });
}

function carriedFor(run: RunRow | undefined): Mm | null {
  if (run === undefined || run.carried.length === 0) return null;
  return run.carried.reduce((sum, length) => sum + length, 0);
}

const stageOf = ({ name, venue, deck, box, cabling, margin }: Layout) => ({
  name,
  venue,
  deck,
  box,
  cabling,
  margin,
});
