import type { Layout } from '../../layout/layout.ts';
import type { Report, RunRow } from '../../report/report.ts';
import { MM_PER_FOOT } from '../../units/inch.ts';
import { showCableLength, showLongLength } from '../../units/lengthText.ts';
import { nameOf } from './nameOf.ts';

const parts: Readonly<Record<RunRow['parts'][number]['what'], string>> = {
  boom: 'Along the boom',
  mast: 'Down the mast',
  arm: 'Along the clip arm',
  drum: "Down the drum's support",
  kick: 'Inside the kick to the port',
  shell: "Over the kick's shell to its spur",
  air: 'Hanging free',
  loopAtMic: 'Service loop at the mic',
  deck: 'Over the deck',
  edge: "Over the deck's edge",
  box: 'Up to the box',
  loopAtBox: 'Service loop at the box',
  dressing: 'Dressing allowance',
};

/** What one stretch of a run is: `Down the mast`. */
export const runPartWords = (what: RunRow['parts'][number]['what']): string => parts[what];

/** Less is not told: it would show as nothing. */
const LEAST_TOLD = 50;

/** Where a run is plugged: `Input 4`, or that it is not. */
export const inputWords = (input: number | null): string =>
  input === null ? 'Not plugged' : `Input ${input}`;

/** The cable that serves a run: `5 m cable`, `10 m + 5 m, joined`, or what has to be brought for it. */
export function stockWords({ carried, missing }: RunRow, { units }: Layout): string {
  const sum = (lengths: readonly number[]): string =>
    lengths.map((length) => showCableLength(length, units)).join(' + ');
  if (carried.length > 1) return `${sum(carried)}, joined`;
  if (carried.length === 1) return `${sum(carried)} cable`;
  return `missing: bring ${sum(missing)}${missing.length > 1 ? ', joined' : ''}`;
}

/** The same with what a carried cable has to spare: `5 m cable, 0.4 m spare`. It is cut, not rounded: there is never less. */
export function servedWords(run: RunRow, layout: Layout): string {
  const { carried, total } = run;
  if (carried.length === 0) return stockWords(run, layout);
  const spare = carried.reduce((left, length) => left + length, -total);
  const shown = showLongLength(cutLong(Math.max(0, spare), layout.units), layout.units);
  return `${stockWords(run, layout)}, ${shown} spare`;
}

/** A length cut to what `showLongLength` shows. */
const cutLong = (length: number, units: Layout['units']): number => {
  const step = units === 'mm' ? 100 : MM_PER_FOOT / 10;
  return Math.floor(length / step + 1e-9) * step;
};

/** How much of a run the loom adds: `0.3 m by the loom`; undefined where that is next to nothing. */
export const loomWords = ({ extra }: RunRow, { units }: Layout): string | undefined =>
  extra < LEAST_TOLD ? undefined : `${showLongLength(extra, units)} of it by the loom`;

/** What run and multicore do to the signal; undefined where it is not worth telling. */
export function signalWords({ total, electrical }: RunRow, layout: Layout): string | undefined {
  const { matters, loop, levelLoss, corner, lossAt20k } = electrical;
  if (matters.length === 0) return undefined;
  const length = showLongLength(total + layout.box.tail, layout.units);
  const facts = {
    loop: `loop resistance ${loop.toFixed(0)} Ω, ${levelLoss.toFixed(1)} dB less level`,
    corner: `3 dB down at ${(corner / 1000).toFixed(0)} kHz, ${lossAt20k.toFixed(1)} dB less at 20 kHz`,
  };
  const told = matters.map((fact) => facts[fact]).join('; ');
  return `With the multicore ${length}: ${told} (estimate for a usual mic cable).`;
}

/** What is missing from the stock: `2 more of 5 m, 1 more of 10 m`. */
export const missingWords = (
  missing: Report['stock']['missing'],
  { units }: Pick<Layout, 'units'>,
): string =>
  missing
    .map(({ length, count }) => `${count} more of ${showCableLength(length, units)}`)
    .join(', ');

/** The cables carried that are taken: `10 × 5 m, 4 × 7.5 m`. */
export const takenWords = (
  { totals }: Pick<Report, 'totals'>,
  { units }: Pick<Layout, 'units'>,
): string =>
  totals.stock.length === 0
    ? 'none'
    : totals.stock
        .map(({ length, count }) => `${count} × ${showCableLength(length, units)}`)
        .join(', ');

/** What the runs take in all and what is missing, for the foot of a schedule. */
export function cableSumWords(report: Pick<Report, 'totals' | 'stock'>, layout: Layout): string {
  const missing = missingWords(report.stock.missing, layout);
  const laid = showLongLength(report.totals.cable, layout.units);
  return `${laid} of cable in all. Stock cables taken: ${takenWords(report, layout)}. Missing: ${missing || 'none'}.`;
}

/** One line: `Input 4: Snare top, 3.4 m, 5 m cable, 1.5 m spare`. */
export const runWords = (run: RunRow, layout: Layout): string =>
  `${inputWords(run.input)}: ${nameOf(layout, run.mic)}, ${showLongLength(run.total, layout.units)}, ${servedWords(run, layout)}`;
