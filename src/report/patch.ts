import { DEFAULT_CHOICES } from '../acoustics/choices.ts';
import { earOf, hear } from '../acoustics/hearing.ts';
import { highPasses } from '../acoustics/highPass.ts';
import { listenerOf } from '../acoustics/listener.ts';
import { sourceOf } from '../acoustics/source.ts';
import { counted } from '../cabling/cableCount.ts';
import type { Layout } from '../layout/layout.ts';
import type { CableRow } from '../patch/csv/cableTable.ts';
import { type InputRow, inputList } from '../patch/inputList.ts';
import { type CheckStep, lineCheck } from '../patch/lineCheck/lineCheck.ts';
import { type PullLine, pullList } from '../patch/pull/pullList.ts';
import { type StrikeLine, strikeList } from '../patch/pull/ticks.ts';
import type { HighPassRange } from '../patch/starts.ts';
import type { Rig } from '../rig/placed.ts';
import type { Report } from './report.ts';

/** From plan to patch: what is plugged, taken and checked. */
export interface PatchReport {
  readonly rows: readonly InputRow[];
  /** One for each row. */
  readonly steps: readonly CheckStep[];
  readonly pull: readonly PullLine[];
  /** The pull list with its ticks, and what went out and is no longer on it. */
  readonly strike: readonly StrikeLine[];
  /** In the order of the box inputs, what is not plugged last. */
  readonly cables: readonly CableRow[];
}

/** The patch of a layout with its report. Nothing of it is computed until it is asked for. */
export function patchReport(layout: Layout, report: Report): PatchReport {
  const { patch } = layout;
  const rows = inputList(report.rig, patch, startsOf(report.rig, patch.style));
  const pull = pullList(layout, patch, {
    cables: counted(report.runs.flatMap(({ carried, missing }) => [...carried, ...missing])),
    sandbags: report.findings.filter(({ code }) => code === 'stand-may-tip').length,
  });
  return {
    rows,
    steps: lineCheck(rows, patch.lineCheck),
    pull,
    strike: strikeList(pull, patch.ticks),
    cables: cableRows(rows, report),
  };
}

/** Where each mic's high-pass starts (H39, H40), without computing what else is heard. */
function startsOf(rig: Rig, style: Layout['patch']['style']): readonly HighPassRange[] {
  const sources = rig.pieces.flatMap((placed) => sourceOf(placed, DEFAULT_CHOICES) ?? []);
  const listeners = rig.mics.map((placed) => {
    const ear = earOf(placed);
    return listenerOf(placed, sources, (source) => hear(ear, source));
  });
  return highPasses(listeners, style);
}

function cableRows(rows: readonly InputRow[], { runs, findings }: Report): readonly CableRow[] {
  const toCover = new Set(
    findings
      .filter(({ code }) => code === 'lane-crossed' || code === 'stairs-crossed')
      .flatMap(({ about }) => about),
  );
  const unplugged = Number.POSITIVE_INFINITY;
  return runs
    .toSorted((a, b) => (a.input ?? unplugged) - (b.input ?? unplugged) || 0)
    .map(({ mic, input, total, extra, parts, carried, missing, through }) => {
      const row = rows.find((each) => each.mic === mic);
      return {
        channel: row?.channel ?? null,
        input,
        name: row?.name ?? mic,
        parts,
        extra,
        length: total,
        stock: carried,
        missing,
        notes: [
          ...(through.length > 0 ? ['no free way'] : []),
          ...(toCover.has(mic) ? ['cover it'] : []),
        ],
      };
    });
}
