import { useCallback } from 'react';
import { Layer, Stage } from 'react-konva/es/ReactKonvaCore.js';
import type { FloorReport } from '../../report/floor.ts';
import type { Finding } from '../../report/report.ts';
import type { RingOfMic, RingPlace } from '../../report/ring.ts';
import type { ForbiddenZone } from '../../report/zone.ts';
import type { Selection } from '../../session/selection.ts';
import type { OpenLayout, Preferences } from '../../session/session.ts';
import type { Box } from '../labels/placeLabels.ts';
import type { MicFocus } from '../move/micFocus.ts';
import { type Palette, palettes } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { paintContours } from '../shapes/contours.ts';
import { paintDeck } from '../shapes/deck.ts';
import { paintHighlight } from '../shapes/highlight.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintSwing } from '../shapes/swing.ts';
import type { Handle } from '../tools/handles.ts';
import { type KitView, kitToScreen } from '../view/kitView.ts';
import { Drawn } from './Drawn.tsx';
import { FindingMark } from './FindingMark.tsx';
import { FocusDrawing } from './FocusDrawing.tsx';
import { DeckFrame, KitFrame } from './Frames.tsx';
import { Handles } from './Handles.tsx';
import { KitDrawing } from './KitDrawing.tsx';
import { PlanLabels } from './PlanLabels.tsx';
import { RimRing } from './RimRing.tsx';

interface Props {
  readonly open: OpenLayout;
  readonly selection: Selection | null;
  readonly zone: ForbiddenZone | null;
  readonly ring: RingOfMic | null;
  readonly floor: FloorReport | null;
  /** The place of the ring that was asked about. */
  readonly asked: RingPlace | null;
  readonly focus: MicFocus | null;
  readonly preferences: Preferences;
  readonly kitView: KitView;
  readonly highlighted: readonly Outline[];
  readonly handles: readonly Handle[];
  readonly covered: readonly Box[];
  readonly finding: Finding | undefined;
}

/** The plan: the deck, what stands on it, and what is said about it, one layer each. Pointers are read elsewhere. */
export function PlanStage(props: Props) {
  const { open, selection, ring, floor, asked, preferences, kitView, finding } = props;
  const { layout, report } = open;
  const { deck } = layout;
  const { view } = kitView;
  const { showRuns } = preferences;
  const colours = palettes[preferences.theme];
  const paintTheDeck = useCallback((pen: Pen) => paintDeck(pen, deck), [deck]);
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
            {...{ layout, report, showRuns, colours }}
            selectedMic={selection?.kind === 'mic' ? selection.id : null}
          />
        </DeckFrame>
      </Layer>
      {floor && <FloorLayer floor={floor} kitView={kitView} colours={colours} />}
      <Layer listening={false}>
        <DeckFrame view={view}>
          <KitFrame kit={deck.kit}>
            <Chosen {...props} colours={colours} />
          </KitFrame>
        </DeckFrame>
        <PlanLabels
          {...{ layout, report, selection, showRuns, kitView, ring, floor, asked, colours }}
          covered={props.covered}
          focus={props.focus}
        />
        <Handles handles={props.handles} colours={colours} />
        {finding?.place && (
          <FindingMark
            finding={finding.key}
            at={kitToScreen(kitView, finding.place)}
            colours={colours}
          />
        )}
      </Layer>
    </Stage>
  );
}

type ChosenProps = Pick<
  Props,
  'open' | 'zone' | 'ring' | 'asked' | 'focus' | 'preferences' | 'highlighted'
> & { readonly colours: Palette };

/** The highlight of what is selected, and what it is judged by (inside the kit frame). */
function Chosen(props: ChosenProps) {
  const { open, zone, ring, asked, focus, preferences, highlighted, colours } = props;
  const paintSelected = useCallback((pen: Pen) => paintHighlight(pen, highlighted), [highlighted]);
  return (
    <>
      <Drawn paint={paintSelected} colours={colours} />
      {ring && <RimRing layout={open.layout} ring={ring} asked={asked} colours={colours} />}
      {focus && (
        <FocusDrawing
          focus={focus}
          showSweep={preferences.showSweeps}
          zone={preferences.showZone ? zone : null}
          paintSwing={paintSwing}
          colours={colours}
        />
      )}
    </>
  );
}

interface FloorProps {
  readonly floor: FloorReport;
  readonly kitView: KitView;
  readonly colours: Palette;
}

/** A layer of its own: its long lines are not drawn again in every frame of a drag. */
function FloorLayer({ floor, kitView, colours }: FloorProps) {
  const paint = useCallback((pen: Pen) => paintContours(pen, floor), [floor]);
  return (
    <Layer listening={false}>
      <DeckFrame view={kitView.view}>
        <KitFrame kit={kitView.deck.kit}>
          <Drawn paint={paint} colours={colours} />
        </KitFrame>
      </DeckFrame>
    </Layer>
  );
}
