import { memo, useCallback } from 'react';
import type { Breakout, LoomLine, Report } from '../../report/report.ts';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintBreakout, paintStretch, type RunWeight } from '../shapes/run.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly loom: Report['loom'];
  readonly selectedMic: string | null;
  readonly colours: Palette;
}

/** All cables on the deck, and where they leave their bundles (inside the deck frame). */
export const LoomDrawing = memo(function LoomDrawing({ loom, selectedMic, colours }: Props) {
  return (
    <>
      {loom.stretches.map((line) => (
        <LineDrawing
          key={line.key}
          line={line}
          weight={weightOf(line.mics, selectedMic)}
          colours={colours}
        />
      ))}
      {loom.breakouts.map((breakout) => (
        <BreakoutDrawing
          key={breakout.key}
          breakout={breakout}
          weight={weightOf(breakout.mics, selectedMic)}
          colours={colours}
        />
      ))}
    </>
  );
});

function weightOf(mics: readonly string[], selectedMic: string | null): RunWeight {
  if (selectedMic === null) return 'plain';
  return mics.includes(selectedMic) ? 'strong' : 'faint';
}

interface LineProps {
  readonly line: LoomLine;
  readonly weight: RunWeight;
  readonly colours: Palette;
}

const LineDrawing = memo(function LineDrawing({ line, weight, colours }: LineProps) {
  const paint = useCallback((pen: Pen) => paintStretch(pen, line, weight), [line, weight]);
  return <Drawn paint={paint} colours={colours} />;
});

interface BreakoutProps {
  readonly breakout: Breakout;
  readonly weight: RunWeight;
  readonly colours: Palette;
}

const BreakoutDrawing = memo(function BreakoutDrawing(props: BreakoutProps) {
  const { breakout, weight, colours } = props;
  const paint = useCallback(
    (pen: Pen) => paintBreakout(pen, breakout.place, breakout.mics.length, weight),
    [breakout, weight],
  );
  return <Drawn paint={paint} colours={colours} />;
});
