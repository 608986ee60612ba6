import { useCallback, useMemo, useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import { createFigures, isUnderfoot } from '../../report/figure.ts';
import type { FloorReport } from '../../report/floor.ts';
import type { Finding } from '../../report/report.ts';
import type { RingOfMic, RingPlace } from '../../report/ring.ts';
import type { ForbiddenZone } from '../../report/zone.ts';
import type { PlanMarks } from '../../session/patchView.ts';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout, Preferences } from '../../session/session.ts';
import { markBoxes, markedPlaces } from '../labels/markedPlaces.ts';
import type { Box } from '../labels/placeLabels.ts';
import type { Furniture } from '../labels/reserved.ts';
import { ringBoxes } from '../labels/ringWishes.ts';
import type { MicFocus } from '../move/micFocus.ts';
import { type Palette, palettes } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { selectedOutlines } from '../pick/pickables.ts';
import { paintBoxDigits } from '../shapes/boxDigits.ts';
import { paintContours } from '../shapes/contours.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintSwing } from '../shapes/swing.ts';
import { useHandles } from '../tools/useHandles.ts';
import type { KitView } from '../view/kitView.ts';
import type { View } from '../view/view.ts';
import { DeckLayer } from './DeckLayer.tsx';
import { Drawn } from './Drawn.tsx';
import { FedStage } from './FedStage.tsx';
import { FindingMark } from './FindingMark.tsx';
import { FocusDrawing } from './FocusDrawing.tsx';
import { DeckFrame, KitFrame } from './Frames.tsx';
import { Ghosts } from './Ghosts.tsx';
import { Handles } from './Handles.tsx';
import { Highlight } from './Highlight.tsx';
import { KitDrawing, usePlugged } from './KitDrawing.tsx';
import { PaintedLayer } from './PaintedLayer.ts';
import { PlanLabels } from './PlanLabels.tsx';
import { RimRing } from './RimRing.tsx';
import { keyOf, useMoving } from './useMoving.ts';
import { usePlaced } from './usePlaced.ts';
import { ZoneLayer } from './ZoneLayer.tsx';

interface Props {
  /** As it was answered; where things are follows the finger. */
  readonly open: OpenLayout;
  readonly selection: Selection | null;
  /** What has handles. */
  readonly chosen: Selection | null;
  readonly zone: ForbiddenZone | null;
  /** Whether the zone is that of before a change. */
  readonly zoneIsOld: boolean;
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
  /** The place of the ring that was asked about. */
  readonly asked: RingPlace | null;
  readonly focus: MicFocus | null;
  readonly preferences: Preferences;
  readonly kitView: KitView;
  /** Where things are that are only shown elsewhere. */
  readonly ghosts?: readonly Outline[];
  readonly covered: readonly Box[];
  readonly furniture: Furniture;
  readonly finding: Finding | undefined;
  /** Spots that the drummer wished mics at, marked all at once. */
  readonly wishes?: readonly Finding[];
  readonly marks: PlanMarks | null;
}

/**
 * The plan, a layer each: the deck with the cables on it, what stands still, and what moves with what is said about it. In a drag only the last is drawn in every
 * frame, and cables in those that take answers over. Pointers are read elsewhere.
 */
export const PlanStage = (props: Props) => (
  <FedStage size={props.kitView.view.size}>
    <PlanLayers {...props} />
  </FedStage>
);

function PlanLayers(props: Props) {
  const { open: answered, selection, zone, ring, floor, asked, preferences, finding } = props;
  const { view } = props.kitView;
  // What is said follows what is answered; what stands there follows the finger.
  const open = usePlaced(answered);
  const { layout, report } = open;
  const { deck } = layout;
  const kitView = useMemo(() => ({ view, deck }), [view, deck]);
  const highlighted = useMemo(
    () => selectedOutlines(layout, report.rig, selection),
    [layout, report.rig, selection],
  );
  const handles = useHandles(open, props.chosen, kitView);
  const { showRuns } = preferences;
  const colours = palettes[preferences.theme];
  const { still, moving } = useMoving(open);
  const plugged = usePlugged(layout.mics);
  const [figureIn] = useState(createFigures);
  const kit = { ...{ plugged, moving, colours }, kit: deck.kit };
  const figure = figureIn(layout);
  // A leg goes along with its pedal, and a beater with what it strikes: drawn with the kit, all of that would be drawn in every frame.
  const underfootMoves = layout.pieces.some(
    ({ kind, id }) => isUnderfoot(kind) && moving.has(keyOf.piece(id)),
  );
  const { marked, covered } = useMarked({ ...props, kitView });
  const standing = useMemo(
    () => still.report.rig.mics.filter(({ mic }) => !moving.has(keyOf.mic(mic.id))),
    [still.report.rig.mics, moving],
  );
  return (
    <>
      <DeckLayer
        {...{ deck, view, colours }}
        loom={showRuns ? report.loom : null}
        selectedMic={selection?.kind === 'mic' ? selection.id : null}
      />
      <PaintedLayer listening={false}>
        <DeckFrame view={view}>
          <KitDrawing
            {...kit}
            part="still"
            figure={underfootMoves ? null : figure}
            box={still.layout.box}
            rig={still.report.rig}
          />
          <KitFrame kit={deck.kit}>
            {floor && <FloorDrawing floor={floor} colours={colours} />}
          </KitFrame>
        </DeckFrame>
      </PaintedLayer>
      {zone && preferences.showZone && (
        <ZoneLayer {...{ zone, kitView, colours }} isOld={props.zoneIsOld} mics={standing} />
      )}
      <PaintedLayer listening={false}>
        <DeckFrame view={view}>
          <KitFrame kit={deck.kit}>
            <Highlight outlines={highlighted} colours={colours} />
            {props.ghosts && <Ghosts outlines={props.ghosts} colours={colours} />}
          </KitFrame>
          <KitDrawing
            {...kit}
            part="moving"
            figure={underfootMoves ? figure : null}
            box={layout.box}
            rig={report.rig}
          />
          <KitFrame kit={deck.kit}>
            <Chosen focus={props.focus} preferences={preferences} colours={colours} />
            {ring && <RimRing layout={layout} ring={ring} asked={asked} colours={colours} />}
          </KitFrame>
        </DeckFrame>
        <PlanLabels
          {...{ selection, showRuns, kitView, ring, floor, asked, colours }}
          layout={answered.layout}
          report={answered.report}
          covered={covered}
          furniture={props.furniture}
          focus={props.focus}
          marks={props.marks}
        />
        <BoxDigits box={layout.box} plugged={plugged} view={view} colours={colours} />
        <Handles handles={handles} colours={colours} />
        {marked.map((mark) => (
          <FindingMark
            key={mark.key === finding?.key ? 'finding' : mark.key}
            mark={mark}
            colours={colours}
          />
        ))}
      </PaintedLayer>
    </>
  );
}

/** What is marked, and all that labels keep out of. */
function useMarked({ open, finding, wishes, ring, kitView, covered }: Props) {
  const { layout, report } = open;
  const marked = useMemo(
    () => markedPlaces([...(finding ? [finding] : []), ...(wishes ?? [])], report, kitView),
    [finding, wishes, report, kitView],
  );
  const round = useMemo(() => ringBoxes(layout, ring, kitView), [layout, ring, kitView]);
  const all = useMemo(() => [...covered, ...markBoxes(marked), ...round], [covered, marked, round]);
  return { marked, covered: all };
}

type ChosenProps = Pick<Props, 'focus' | 'preferences'> & {
  readonly colours: Palette;
};

/** What is selected is judged by this (inside the kit frame). */
function Chosen({ focus, preferences, colours }: ChosenProps) {
  return (
    focus && (
      <FocusDrawing
        focus={focus}
        showSweep={preferences.showSweeps}
        paintSwing={paintSwing}
        colours={colours}
      />
    )
  );
}

interface BoxDigitsProps {
  readonly box: Layout['box'];
  readonly plugged: ReadonlySet<number>;
  readonly view: View;
  readonly colours: Palette;
}

function BoxDigits({ box, plugged, view, colours }: BoxDigitsProps) {
  const paint = useCallback(
    (pen: Pen) => paintBoxDigits(pen, { box, plugged }, view),
    [box, plugged, view],
  );
  return <Drawn paint={paint} colours={colours} />;
}

interface FloorProps {
  readonly floor: FloorReport;
  readonly colours: Palette;
}

/** With what stands still: its long lines are not drawn again in every frame of a drag. */
function FloorDrawing({ floor, colours }: FloorProps) {
  const paint = useCallback((pen: Pen) => paintContours(pen, floor), [floor]);
  return <Drawn paint={paint} colours={colours} />;
}
