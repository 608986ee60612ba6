import { memo, useCallback, useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { Figure } from '../../report/figure.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../../rig/placed.ts';
import type { Palette } from '../palette.ts';
import { paintBox } from '../shapes/box.ts';
import { paintFootprint } from '../shapes/footprint.ts';
import { paintMic } from '../shapes/mic.ts';
import type { Pen } from '../shapes/pen.ts';
import { drawingHeight, paintPiece } from '../shapes/piece.ts';
import { paintPlayer } from '../shapes/player.ts';
import { Drawn } from './Drawn.tsx';
import { KitFrame } from './Frames.tsx';
import { keyOf, type Moving } from './useMoving.ts';

interface Props {
  readonly rig: Rig;
  readonly box: Layout['box'];
  /** The inputs that are used. */
  readonly plugged: ReadonlySet<number>;
  readonly kit: Layout['deck']['kit'];
  /** The player, where it is drawn with this part. */
  readonly figure: Figure | null;
  readonly moving: Moving;
  /** Whether what moves is drawn, or what stands still. */
  readonly part: 'still' | 'moving';
  readonly colours: Palette;
}

/** Everything that stands on the deck, from the deck up, over the cables (inside the deck frame). Of what stands still nothing is done in a drag. */
export const KitDrawing = memo(function KitDrawing(props: Props) {
  const { rig, box, plugged, kit, figure, moving, part, colours } = props;
  const isMine = (key: string): boolean => moving.has(key) === (part === 'moving');
  const sorted = useMemo(
    () => [...rig.pieces].sort((a, b) => drawingHeight(a.piece) - drawingHeight(b.piece)),
    [rig.pieces],
  );
  const pieces = sorted.filter(({ piece }) => isMine(keyOf.piece(piece.id)));
  const mics = rig.mics.filter(({ mic }) => isMine(keyOf.mic(mic.id)));
  return (
    <>
      {isMine(keyOf.box) && <BoxDrawing box={box} plugged={plugged} colours={colours} />}
      <KitFrame kit={kit}>
        {pieces.map((placed) => (
          <PieceFeet key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        {mics.map((placed) => (
          <MicFeet key={placed.mic.id} placed={placed} colours={colours} />
        ))}
        {pieces.filter(isUnderPlayer).map((placed) => (
          <PieceDrawing key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        {figure && <PlayerDrawing figure={figure} colours={colours} />}
        {pieces.filter(isOverPlayer).map((placed) => (
          <PieceDrawing key={placed.piece.id} placed={placed} colours={colours} />
        ))}
        {mics.map((placed) => (
          <MicDrawing key={placed.mic.id} placed={placed} colours={colours} />
        ))}
      </KitFrame>
    </>
  );
});

const isUnderPlayer = ({ piece }: PlacedPiece): boolean => drawingHeight(piece) < 0;
const isOverPlayer = (placed: PlacedPiece): boolean => !isUnderPlayer(placed);

/** The inputs that are used. */
export function usePlugged(mics: Layout['mics']): ReadonlySet<number> {
  // As text: a mic that is dragged is a new mic, and stays plugged where it is.
  const inputs = mics.flatMap(({ input }) => (input === null ? [] : [input])).join(' ');
  return useMemo(() => new Set(inputs.split(' ').map(Number)), [inputs]);
}

type BoxProps = Pick<Props, 'box' | 'plugged' | 'colours'>;

function BoxDrawing({ box, plugged, colours }: BoxProps) {
  const paint = useCallback((pen: Pen) => paintBox(pen, box, plugged), [box, plugged]);
  return <Drawn paint={paint} colours={colours} />;
}

interface PlayerProps {
  readonly figure: Figure;
  readonly colours: Palette;
}

function PlayerDrawing({ figure, colours }: PlayerProps) {
  const paint = useCallback((pen: Pen) => paintPlayer(pen, figure), [figure]);
  return <Drawn paint={paint} colours={colours} />;
}

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
