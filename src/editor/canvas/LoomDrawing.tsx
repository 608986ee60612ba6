import { useCallback } from 'react';
import type { Report } from '../../report/report.ts';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintBreakout, paintStretch, type RunWeight } from '../shapes/run.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly loom: Report['loom'];
  readonly selectedMic: string | null;
  readonly colours: Palette;
}

/**
 * All cables on the deck, and where they leave their bundles (inside the deck frame). One node: their layer is drawn whole whenever one of them is laid
 * anew, and sixty nodes cost as much as the lines on them.
 */
export function LoomDrawing({ loom, selectedMic, colours }: Props) {
  const paint = useCallback(
    (pen: Pen) => {
      for (const line of loom.stretches) paintStretch(pen, line, weightOf(line.mics, selectedMic));
      for (const { place, mics } of loom.breakouts) {
        paintBreakout(pen, place, mics.length, weightOf(mics, selectedMic));
      }
    },
    [loom, selectedMic],
  );
  return <Drawn paint={paint} colours={colours} />;
}

function weightOf(mics: readonly string[], selectedMic: string | null): RunWeight {
  if (selectedMic === null) return 'plain';
  return mics.includes(selectedMic) ? 'strong' : 'faint';
}
