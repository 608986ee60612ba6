import { useCallback, useMemo } from 'react';
import type { Vec3 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { Finding, Report } from '../report/report.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, session, useSession } from '../session/session.ts';
import { BoxSpotMarks } from './BoxSpotMarks.tsx';
import { handleBoxes } from './canvas/Handles.tsx';
import { PlanStage } from './canvas/PlanStage.tsx';
import { FloorHeight } from './FloorHeight.tsx';
import { useGhosts } from './ghosts.ts';
import { type Box, boxAbout, drawnOver } from './labels/placeLabels.ts';
import type { Furniture } from './labels/reserved.ts';
import type { MicFocus } from './move/micFocus.ts';
import { useShowMove } from './move/useShowMove.ts';
import { OffViewButtons } from './OffViewButtons.tsx';
import { offViewBoxes, offViewOf } from './offView.ts';
import { type Pickable, pickablesOf } from './pick/pickables.ts';
import type { AskedPlace } from './rim/useAskedPlace.ts';
import { type BoxSpotMark, SPOT_RADIUS, useBoxSpotMarks } from './spotMarks.ts';
import { TouchSurface } from './TouchSurface.tsx';
import { dragOf } from './tools/grab.ts';
import type { Handle } from './tools/handles.ts';
import type { ChangeCommand } from './tools/keys.ts';
import { inPlanFrames } from './tools/planFrames.ts';
import { useHandles } from './tools/useHandles.ts';
import { useFloorSpot } from './useFloorSpot.ts';
import {
  useRevealBoxSpots,
  useRevealFinding,
  useRevealSelected,
  useShownFinding,
  useUncover,
} from './useReveal.ts';
import { type TapNotes, useForgetOnMove } from './useTapNotes.ts';
import {
  extentOfAll,
  extentOfDeck,
  extentOfLargeKit,
  FIT_BORDER,
  firstFit,
} from './view/extent.ts';
import { type Subject, useView, type ViewControls } from './view/useView.ts';
import type { ScreenPoint, ScreenSize, View } from './view/view.ts';
import { planName } from './words.ts';

export interface PaneProps {
  /** In a drag the newest preview whose answers are drawn. */
  readonly open: OpenLayout;
  readonly size: ScreenSize;
  /** How far below the upper edge of all drawings it begins, px. */
  readonly top: number;
  /** How high cards stand over its lower edge, px. */
  readonly foot: number;
  /** How large the legends are that stand in its upper left corner, px. */
  readonly legends: ScreenSize;
  /** What the selected mic is judged by, kit frame. */
  readonly focus: MicFocus | null;
  /** The mic whose nearest move is looked at; what is selected has no handles meanwhile. */
  readonly opened: string | null;
  /** Id of the text that says how a drawing is used. */
  readonly described: string;
  /** Is told what fingers met. */
  readonly notes: TapNotes;
}

type PlanProps = PaneProps & { readonly asked: AskedPlace };

/** The plan, with all that fingers and keys do on it. */
export function PlanPane(props: PlanProps) {
  const { open, size, focus, opened, described, asked, notes } = props;
  const { layout, report } = open;
  const preferences = useSession((state) => state.preferences);
  const selection = useSession((state) => state.selection);
  const zone = useSession((state) => state.zone);
  const zoneIsOld = useSession((state) => state.zoneIsOld);
  const ring = useSession((state) => state.ring);
  const floor = useSession((state) => state.floor);
  const marks = useSession((state) => state.marks);
  const controls = usePlanView(open, selection, size);
  const { view } = controls;
  useForgetOnMove(view, notes);
  const kitView = useMemo(() => ({ view, deck: layout.deck }), [view, layout.deck]);
  const { showRuns } = preferences;
  const ghosts = useGhosts(open, pickablesIn);
  const chosen = opened === null ? selection : null;
  const handles = useHandles(open, chosen, kitView);
  const floorSpot = useFloorSpot(floor !== null && preferences.showFloor);
  const furniture = useFurniture(props, true);
  const finding = useRevealing(open, selection, controls);
  useRevealBoxSpots(layout, controls);
  const spotOfPoint = (point: Vec3) => toDeck(layout.deck, point);
  useShowMove(opened, focus, spotOfPoint, controls);
  useUncover({ selection, focus, foot: props.foot }, spotOfPoint, controls);
  const ground = {
    kitView,
    pickables: () => pickablesOf(layout, report, showRuns),
    handles,
    controls,
    notes,
    tapFirst(at: ScreenPoint) {
      floorSpot.ask(at, kitView);
      return asked.ask(at, kitView);
    },
    dragOf: (touched: Pickable) => dragOf(touched, open),
  };
  const { off, badges } = useOffView(open, view, selection);
  const spots = useBoxSpotMarks(layout, view);
  const covered = useCovered(handles, spots, badges);
  const { show } = controls;
  const showAll = useCallback(() => {
    const { open: now } = session.getState();
    if (now) show(extentOfAll(now.layout, now.report.rig));
  }, [show]);
  const framed = useCallback((command: ChangeCommand) => inPlanFrames(command, kitView), [kitView]);
  return (
    <>
      <PlanStage
        {...{ open, selection, zone, zoneIsOld, ring, floor, focus, preferences, kitView }}
        {...{ chosen, ghosts, covered, furniture, finding, marks }}
        asked={asked.place}
      />
      <TouchSurface name={planName} described={described} ground={ground} framed={framed} />
      {floor && floorSpot.spot && (
        <FloorHeight {...{ floor, kitView, furniture }} spot={floorSpot.spot} unit={layout.units} />
      )}
      <OffViewButtons layout={layout} off={off} showAll={showAll} />
      <BoxSpotMarks layout={layout} marks={spots} />
    </>
  );
}

/** What labels keep out of: handles and letters of spots, which are drawn over them, and what points off the view. */
const useCovered = (
  handles: readonly Handle[],
  spots: readonly BoxSpotMark[],
  badges: readonly Box[],
): readonly Box[] =>
  useMemo(
    () => [
      ...drawnOver(handleBoxes(handles)),
      ...drawnOver(spots.map(({ at }) => boxAbout(at, SPOT_RADIUS))),
      ...badges,
    ],
    [handles, spots, badges],
  );

const none: readonly Box[] = [];

/** What lies off the view, and where it is told. */
function useOffView({ layout, report }: OpenLayout, view: View, selection: Selection | null) {
  const off = useMemo(
    () => offViewOf(layout, report.rig, view, selection),
    [layout, report.rig, view, selection],
  );
  const badges = useMemo(() => (off.length === 0 ? none : offViewBoxes(off)), [off]);
  return { off, badges };
}

const pickablesIn = (layout: Layout, report: Report) => pickablesOf(layout, report, false);

/** From this width on there is room for the legend beside the scale bar, px. */
const LEGEND_FROM = 740;

/** What stands over a drawing; a drawing below another one has the choice of drawings not over it. */
export const useFurniture = (
  { top, foot, size, legends }: Pick<PaneProps, 'top' | 'foot' | 'size' | 'legends'>,
  hasLegend: boolean,
): Furniture =>
  useMemo(
    () => ({ head: top === 0, legend: hasLegend && size.width >= LEGEND_FROM, foot, legends }),
    [top, foot, size.width, legends, hasLegend],
  );

function usePlanView(
  { layout, report }: OpenLayout,
  selection: Selection | null,
  size: ScreenSize,
): ViewControls {
  const seenFrom = useSession((state) => state.preferences.seenFrom);
  const subject = useMemo(
    (): Subject => ({
      key: layout.id,
      ground: layout.deck,
      seenFrom,
      start: () => firstFit(layout, report.rig, size),
      border: FIT_BORDER,
      extentOf: (fit) =>
        fit === 'deck'
          ? extentOfDeck(layout, report.rig)
          : extentOfLargeKit(layout, report.rig, { seenFrom, size }),
      chosen: () => (selection ? spotOf(selection, layout, report) : undefined),
    }),
    [layout, report, selection, seenFrom, size],
  );
  return useView(subject, size);
}

function useRevealing(
  { layout, report }: OpenLayout,
  selection: Selection | null,
  controls: ViewControls,
): Finding | undefined {
  const finding = useShownFinding(report);
  useRevealFinding(
    finding,
    ({ place }) => (place ? toDeck(layout.deck, place) : undefined),
    controls,
  );
  useRevealSelected(selection, (chosen) => spotOf(chosen, layout, report), controls);
  return finding;
}

function spotOf(selection: Selection, layout: Layout, { rig }: OpenLayout['report']) {
  const { deck } = layout;
  switch (selection.kind) {
    case 'box':
      return layout.box;
    case 'player':
      return toDeck(deck, { x: 0, y: 0 });
    case 'deck':
      return undefined;
    case 'mic': {
      const placed = rig.mics.find(({ mic }) => mic.id === selection.id);
      return placed && toDeck(deck, placed.tip);
    }
    case 'piece': {
      const piece = layout.pieces.find(({ id }) => id === selection.id);
      return piece && toDeck(deck, piece.kind === 'throne' ? { x: 0, y: 0 } : piece);
    }
  }
}
