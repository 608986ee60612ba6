import type { Layout } from '../../layout/layout.ts';
import type { RunRow } from '../../report/report.ts';
import { showLongLength } from '../../units/lengthText.ts';
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

/** Where a run is plugged: `Input 4`, or that it is not. */
export const inputWords = (input: number | null): string =>
  input === null ? 'Not plugged' : `Input ${input}`;

/** The cable that serves a run: `5.0 m cable`, or that none is long enough. */
export const stockWords = (run: RunRow, layout: Layout): string =>
  run.stock === null
    ? 'no cable left that reaches'
    : `${showLongLength(run.stock, layout.units)} cable`;

/** One line: `Input 4: Snare top, 3.4 m, 5.0 m cable`. */
export const runWords = (run: RunRow, layout: Layout): string =>
  `${inputWords(run.input)}: ${nameOf(layout, run.mic)}, ${showLongLength(run.total, layout.units)}, ${stockWords(run, layout)}`;
