import { memo, useCallback, useMemo, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import { createFigures } from '../../report/figure.ts';
import type { Report, RunRow } from '../../report/report.ts';
import type { PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import type { Palette } from '../palette.ts';
import { paintBox } from '../shapes/box.ts';
import { paintFootprint } from '../shapes/footprint.ts';
import { paintMic } from '../shapes/mic.ts';
import type { Pen } from '../shapes/pen.ts';
import { drawingHeight, paintPiece } from '../shapes/piece.ts';
import { paintPlayer } from '../shapes/player.ts';
import { paintRun, type RunWeight } from '../shapes/run.ts';
import { Drawn } from './Drawn.tsx';
import { KitFrame } from './Frames.tsx';

interface Props {
  readonly layout: Layout;
  readonly report: Report;
  readonly showRuns: boolean;
  readonly selectedMic: string | null;
  readonly colours: Palette;
}

/** Everything that stands on the deck, from the deck up (inside the deck frame). */
export function KitDrawing({ layout, report, showRuns, selectedMic, colours }: Props) {
  const { rig } = report;
  const pieces = useMemo(
    () => [...rig.pieces].sort((a, b) => drawingHeight(a.piece) - drawingHeight(b.piece)),
    [rig.pieces],
  );
  const plugged = useMemo(
    () => new Set(layout.mics.flatMap(({ input }) => (input === null ? [] : [input]))),
    [layout.mics],
  );
  const paintTheBox = useCallback(
    (pen: Pen) => paintBox(pen, layout.box, plugged),
    [layout.box, plugged],
  );
  const [figureIn] = useState(createFigures);
  const figure = figureIn(layout);
  const paintThePlayer = useCallback((pen: Pen) => paintPlayer(pen, figure), [figure]);
  return (
    <>
      {showRuns &&
        report.runs.map((run) => (
          <RunDrawing
            key={run.mic}
            run={run}
            weight={selectedMic === null ? 'plain' : run.mic === selectedMic ? 'strong' : 'faint'}
            colours={colours}
          />
        ))}
      <Drawn paint={paintTheBox} colours={colours} />
      <KitFrame kit={layout.deck.kit}>
        {pieces.map((placed) => (
          <PieceFeet key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        {rig.mics.map((placed) => (
          <MicFeet key={placed.mic.id} placed={placed} colours={colours} />
        ))}
        {pieces.filter(isUnderPlayer).map((placed) => (
          <PieceDrawing key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        <Drawn paint={paintThePlayer} colours={colours} />
        {pieces.filter(isOverPlayer).map((placed) => (
          <PieceDrawing key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        {rig.mics.map((placed) => (
          <MicDrawing key={placed.mic.id} placed={placed} colours={colours} />
        ))}
      </KitFrame>
    </>
  );
}

const isUnderPlayer = ({ piece }: PlacedPiece): boolean => drawingHeight(piece) < 0;
const isOverPlayer = (placed: PlacedPiece): boolean => !isUnderPlayer(placed);

interface RunProps {
  readonly run: RunRow;
  readonly weight: RunWeight;
  readonly colours: Palette;
}

const RunDrawing = memo(function RunDrawing({ run, weight, colours }: RunProps) {
  const paint = useCallback((pen: Pen) => paintRun(pen, run.route, weight), [run.route, weight]);
  return <Drawn paint={paint} colours={colours} />;
});

interface PieceProps {
  readonly placed: PlacedPiece;
  readonly colours: Palette;
}

const PieceFeet = memo(function PieceFeet({ placed, colours }: PieceProps) {
  const paint = useCallback(
    (pen: Pen) => {
      for (const footprint of placed.footprints) {
        paintFootprint(pen, footprint, pen.colours.hardware);
      }
    },
    [placed],
  );
  return <Drawn paint={paint} colours={colours} />;
});

const PieceDrawing = memo(function PieceDrawing({ placed, colours }: PieceProps) {
  const paint = useCallback((pen: Pen) => paintPiece(pen, placed.piece), [placed]);
  return <Drawn paint={paint} colours={colours} />;
});

interface MicProps {
  readonly placed: PlacedMic;
  readonly colours: Palette;
}

const MicFeet = memo(function MicFeet({ placed, colours }: MicProps) {
  const paint = useCallback(
    (pen: Pen) => {
      if (placed.stand) paintFootprint(pen, placed.stand.footprint, pen.colours.micStand);
    },
    [placed],
  );
  return <Drawn paint={paint} colours={colours} />;
});

const MicDrawing = memo(function MicDrawing({ placed, colours }: MicProps) {
  const paint = useCallback((pen: Pen) => paintMic(pen, placed), [placed]);
  return <Drawn paint={paint} colours={colours} />;
});
