import { memo, useCallback, useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { Figure } from '../../report/figure.ts';
import type { Report } from '../../report/report.ts';
import type { PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import type { Standpoint } from '../../rig/standpoint.ts';
import type { Selection } from '../../session/selection.ts';
import type { Preferences } from '../../session/session.ts';
import { deckReach } from '../elevation/extent.ts';
import { elevationLabels } from '../labels/elevationWishes.ts';
import { FONTS } from '../labels/lettering.ts';
import { measureText } from '../labels/measureText.ts';
import type { Box } from '../labels/placeLabels.ts';
import type { Furniture } from '../labels/reserved.ts';
import { measureLabel } from '../labels/wishes.ts';
import type { MicFocus } from '../move/micFocus.ts';
import { type Palette, palettes } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { paintGround, paintHeights } from '../shapes/ground.ts';
import { paintMic } from '../shapes/mic.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintUprightPlayer } from '../shapes/player.ts';
import { paintMicBase, paintSolidPiece } from '../shapes/solids.ts';
import { paintUprightSwing } from '../shapes/swing.ts';
import type { Handle } from '../tools/handles.ts';
import type { KitView } from '../view/kitView.ts';
import type { ScreenPoint } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';
import { FedStage } from './FedStage.tsx';
import { FindingMark } from './FindingMark.tsx';
import { FocusDrawing } from './FocusDrawing.tsx';
import { Footer } from './Footer.tsx';
import { DeckFrame } from './Frames.tsx';
import { Ghosts } from './Ghosts.tsx';
import { Handles } from './Handles.tsx';
import { Highlight } from './Highlight.tsx';
import { PaintedLayer } from './PaintedLayer.ts';
import { PlacedLabels } from './PlacedLabels.tsx';
import { keyOf, type Moving } from './useMoving.ts';

/** What an elevation shows: report, figure and focus are the turned ones (rule E1). */
interface Props {
  readonly layout: Layout;
  readonly report: Report;
  readonly figure: Figure;
  readonly moving: Moving;
  readonly standpoint: Standpoint;
  readonly selection: Selection | null;
  readonly focus: MicFocus | null;
  readonly preferences: Preferences;
  readonly kitView: KitView;
  readonly highlighted: readonly Outline[];
  /** Where things are that are only shown elsewhere. */
  readonly ghosts: readonly Outline[];
  readonly handles: readonly Handle[];
  readonly covered: readonly Box[];
  readonly furniture: Furniture;
  /** Whether the plan, which has the legend, is not beside it. */
  readonly alone: boolean;
  readonly finding: { readonly key: string; readonly at: ScreenPoint } | null;
}

/** The drawing of an elevation, in the layers of the plan's. */
export function ElevationStage(props: Props) {
  const { kitView, preferences, focus, finding } = props;
  const { view } = kitView;
  const colours = palettes[preferences.theme];
  const kit = { report: props.report, figure: props.figure, moving: props.moving, colours };
  return (
    <FedStage size={view.size}>
      <PaintedLayer listening={false}>
        <Ground {...props} colours={colours} />
      </PaintedLayer>
      <PaintedLayer listening={false}>
        <DeckFrame view={view}>
          <StandingKit {...kit} part="still" />
        </DeckFrame>
      </PaintedLayer>
      <PaintedLayer listening={false}>
        <DeckFrame view={view}>
          <Highlight outlines={props.highlighted} colours={colours} />
          <Ghosts outlines={props.ghosts} colours={colours} />
          <StandingKit {...kit} part="moving" />
          {focus && (
            <FocusDrawing
              focus={focus}
              showSweep={preferences.showSweeps}
              paintSwing={paintUprightSwing}
              colours={colours}
            />
          )}
        </DeckFrame>
        <ElevationLabels {...props} colours={colours} />
        <Handles handles={props.handles} colours={colours} />
        {finding && <FindingMark mark={finding} colours={colours} />}
      </PaintedLayer>
    </FedStage>
  );
}

type WithColours<Names extends keyof Props> = Pick<Props, Names> & { readonly colours: Palette };

function Ground({
  layout: { deck, units },
  standpoint,
  kitView: { view },
  colours,
}: WithColours<'layout' | 'standpoint' | 'kitView'>) {
  const paintTheGround = useCallback(
    (pen: Pen) => paintGround(pen, { deck, ...deckReach(deck, standpoint) }),
    [deck, standpoint],
  );
  const paintTheHeights = useCallback(
    ({ canvas }: Pen) => paintHeights(canvas, { view, unit: units, font: FONTS.plain }, colours),
    [view, units, colours],
  );
  return (
    <>
      <Drawn paint={paintTheHeights} colours={colours} />
      <DeckFrame view={view}>
        <Drawn paint={paintTheGround} colours={colours} />
      </DeckFrame>
    </>
  );
}

/** Pieces and player from the back to the front, then the mics, which nothing hides. */
function StandingKit(
  props: WithColours<'report' | 'figure' | 'moving'> & { readonly part: 'still' | 'moving' },
) {
  const { report, figure, moving, part, colours } = props;
  const { pieces, mics } = report.rig;
  const isMine = (key: string): boolean => moving.has(key) === (part === 'moving');
  const sorted = useMemo(() => [...pieces].sort((a, b) => depthOf(a) - depthOf(b)), [pieces]);
  const mine = sorted.filter(({ piece }) => isMine(keyOf.piece(piece.id)));
  const seat = figure.neck.a.z;
  const paintThePlayer = useCallback((pen: Pen) => paintUprightPlayer(pen, figure), [figure]);
  const drawn = (placed: PlacedPiece) => (
    <SolidPiece key={placed.piece.id} placed={placed} colours={colours} />
  );
  return (
    <>
      {mine.filter((placed) => depthOf(placed) < seat).map(drawn)}
      {part === 'still' && <Drawn paint={paintThePlayer} colours={colours} />}
      {mine.filter((placed) => depthOf(placed) >= seat).map(drawn)}
      {mics
        .filter(({ mic }) => isMine(keyOf.mic(mic.id)))
        .map((placed) => (
          <SolidMic key={placed.mic.id} placed={placed} colours={colours} />
        ))}
    </>
  );
}

const depthOf = ({ shells, hardware }: PlacedPiece): number =>
  shells[0]?.centre.z ?? hardware[0]?.a.z ?? 0;

interface PieceProps {
  readonly placed: PlacedPiece;
  readonly colours: Palette;
}

const SolidPiece = memo(function SolidPiece({ placed, colours }: PieceProps) {
  const paint = useCallback((pen: Pen) => paintSolidPiece(pen, placed), [placed]);
  return <Drawn paint={paint} colours={colours} />;
});

interface MicProps {
  readonly placed: PlacedMic;
  readonly colours: Palette;
}

const SolidMic = memo(function SolidMic({ placed, colours }: MicProps) {
  const paint = useCallback(
    (pen: Pen) => {
      paintMicBase(pen, placed);
      paintMic(pen, placed);
    },
    [placed],
  );
  return <Drawn paint={paint} colours={colours} />;
});

function ElevationLabels(
  props: WithColours<
    | 'layout'
    | 'report'
    | 'selection'
    | 'kitView'
    | 'standpoint'
    | 'covered'
    | 'furniture'
    | 'alone'
    | 'focus'
  >,
) {
  const {
    layout,
    report,
    selection,
    kitView,
    standpoint,
    covered,
    furniture,
    alone,
    focus,
    colours,
  } = props;
  const labels = useMemo(() => {
    const lettered = { layout, report, selection, kitView, showRuns: false, measure: measureText };
    return [
      ...measureLabel(lettered, focus?.place ?? null),
      ...elevationLabels(lettered, standpoint, alone),
    ];
  }, [layout, report, selection, kitView, standpoint, alone, focus]);
  return (
    <>
      <PlacedLabels {...{ labels, report, kitView, covered, furniture, colours }} />
      <Footer view={kitView.view} unit={layout.units} legend={alone} colours={colours} />
    </>
  );
}
