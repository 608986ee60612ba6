import { useCallback } from 'react';
import { Layer, Stage } from 'react-konva/es/ReactKonvaCore.js';
import type { FloorReport } from '../../report/floor.ts';
import type { Finding } from '../../report/report.ts';
import type { RingOfMic, RingPlace } from '../../report/ring.ts';
import type { ForbiddenZone } from '../../report/zone.ts';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout, Preferences } from '../../session/session.ts';
import type { Box } from '../labels/placeLabels.ts';
import { palettes } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { paintContours } from '../shapes/contours.ts';
import { paintDeck } from '../shapes/deck.ts';
import { paintHighlight } from '../shapes/highlight.ts';
import type { Pen } from '../shapes/pen.ts';
import type { Handle } from '../tools/handles.ts';
import type { KitView } from '../view/kitView.ts';
import { Drawn } from './Drawn.tsx';
import { FindingMark } from './FindingMark.tsx';
import { DeckFrame, KitFrame } from './Frames.tsx';
import { Handles } from './Handles.tsx';
import { KitDrawing } from './KitDrawing.tsx';
import { Labels } from './Labels.tsx';
import { MicFocus } from './MicFocus.tsx';
import { RimRing } from './RimRing.tsx';

interface Props {
  readonly open: OpenLayout;
  readonly selection: Selection | null;
  readonly zone: ForbiddenZone | null;
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
  readonly asked: RingPlace | null;
  readonly preferences: Preferences;
  readonly kitView: KitView;
  readonly highlighted: readonly Outline[];
  readonly handles: readonly Handle[];
  readonly covered: readonly Box[];
  readonly finding: Finding | undefined;
}

/** The drawing: the deck, what stands on it, and what is said about it, one layer each. Pointers are read elsewhere. */
export function PlanStage(props: Props) {
  const { open, selection, zone, preferences, kitView, highlighted, handles, finding } = props;
  const { layout, report } = open;
  const { view, deck } = kitView;
  const colours = palettes[preferences.theme];
  const paintTheDeck = useCallback((pen: Pen) => paintDeck(pen, deck), [deck]);
  const paintSelected = useCallback((pen: Pen) => paintHighlight(pen, highlighted), [highlighted]);
  const { floor } = props;
  const paintFloor = useCallback(
    (pen: Pen) => {
      if (floor) paintContours(pen, floor);
    },
    [floor],
  );
  const selectedMic = selection?.kind === 'mic' ? selection.id : null;
  return (
    <Stage width={view.size.width} height={view.size.height} listening={false}>
      <Layer listening={false}>
        <DeckFrame view={view}>
          <Drawn paint={paintTheDeck} colours={colours} />
        </DeckFrame>
      </Layer>
      <Layer listening={false}>
        <DeckFrame view={view}>
          <KitDrawing
            layout={layout}
            report={report}
            showRuns={preferences.showRuns}
            selectedMic={selectedMic}
            colours={colours}
          />
        </DeckFrame>
      </Layer>
      {floor && (
        <Layer listening={false}>
          <DeckFrame view={view}>
            <KitFrame kit={deck.kit}>
              <Drawn paint={paintFloor} colours={colours} />
            </KitFrame>
          </DeckFrame>
        </Layer>
      )}
      <Layer listening={false}>
        <DeckFrame view={view}>
          <KitFrame kit={deck.kit}>
            <Drawn paint={paintSelected} colours={colours} />
            {props.ring && (
              <RimRing layout={layout} ring={props.ring} asked={props.asked} colours={colours} />
            )}
            {selectedMic !== null && (
              <MicFocus
                layout={layout}
                report={report}
                mic={selectedMic}
                showSweep={preferences.showSweeps}
                zone={preferences.showZone ? zone : null}
                colours={colours}
              />
            )}
          </KitFrame>
        </DeckFrame>
        <Labels
          layout={layout}
          report={report}
          selection={selection}
          showRuns={preferences.showRuns}
          kitView={kitView}
          covered={props.covered}
          ring={props.ring}
          floor={floor}
          asked={props.asked}
          colours={colours}
        />
        <Handles handles={handles} colours={colours} />
        {finding?.place && (
          <FindingMark
            finding={finding.key}
            place={finding.place}
            kitView={kitView}
            colours={colours}
          />
        )}
      </Layer>
    </Stage>
  );
}
