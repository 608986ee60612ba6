import { useCallback, useMemo, useState } from 'react';
import type { Vec3 } from '../geometry/vector.ts';
import { createFigures } from '../report/figure.ts';
import type { Report } from '../report/report.ts';
import { type Facing, standpointOf } from '../rig/standpoint.ts';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { ElevationStage } from './canvas/ElevationStage.tsx';
import { handleBoxes } from './canvas/Handles.tsx';
import { useMoving } from './canvas/useMoving.ts';
import { usePlaced } from './canvas/usePlaced.ts';
import { deckExtent, ELEVATION_BORDER, kitExtent, LOWER_BORDER } from './elevation/extent.ts';
import { inElevation } from './elevation/frames.ts';
import { elevationHandles } from './elevation/handles.ts';
import { elevationPickables } from './elevation/pickables.ts';
import { createTurner, type Turner } from './elevation/turned.ts';
import { useGhosts } from './ghosts.ts';
import { drawnOver } from './labels/placeLabels.ts';
import { turnedFocus } from './move/micFocus.ts';
import { useShowMove } from './move/useShowMove.ts';
import { type PaneProps, useFurniture } from './PlanPane.tsx';
import { outlinesOf, type Pickable } from './pick/pickables.ts';
import { TouchSurface } from './TouchSurface.tsx';
import { heightDragOf } from './tools/dragHeight.ts';
import type { ChangeCommand } from './tools/keys.ts';
import { useRevealFinding, useRevealSelected, useShownFinding, useUncover } from './useReveal.ts';
import { useForgetOnMove } from './useTapNotes.ts';
import { kitToScreen } from './view/kitView.ts';
import { type Subject, useView, type ViewControls } from './view/useView.ts';
import { elevationName } from './words.ts';

/** A turned kit stands in its own frame: there is no other deck to turn it on. */
const UPRIGHT = { kit: { x: 0, y: 0, turn: 0 } };

interface ElevationProps {
  readonly facing: Facing;
  /** Whether the plan is not beside it. */
  readonly alone: boolean;
}

/** An elevation: same selection as on the plan, heights dragged and nudged. */
export function ElevationPane({
  open: given,
  size,
  top,
  foot,
  legends,
  focus,
  opened,
  described,
  notes,
  facing,
  alone,
}: PaneProps & ElevationProps) {
  const open = usePlaced(given);
  const { layout } = open;
  const { deck } = layout;
  const preferences = useSession((state) => state.preferences);
  const selection = useSession((state) => state.selection);
  const turner = useMemo(
    () => createTurner(standpointOf(deck, facing, preferences.seenFrom)),
    [deck, facing, preferences.seenFrom],
  );
  const { standpoint } = turner;
  const report = turner.report(open.report);
  const [figureIn] = useState(createFigures);
  const figure = turner.figure(figureIn(layout));
  const { moving } = useMoving(open);
  const controls = useElevationView(open, turner, { size, top, selection });
  const { view } = controls;
  useForgetOnMove(view, notes);
  const kitView = useMemo(() => ({ view, deck: UPRIGHT }), [view]);
  const pickables = elevationPickables(report.rig);
  const highlighted = useMemo(() => outlinesOf(pickables, selection), [pickables, selection]);
  const turnedPickables = useCallback(
    (_: unknown, asIs: Report) => elevationPickables(turner.report(asIs).rig),
    [turner],
  );
  const ghosts = useGhosts(open, turnedPickables);
  const handles = useMemo(
    () => (opened === null ? elevationHandles(open, report.rig, selection, kitView) : []),
    [opened, open, report.rig, selection, kitView],
  );
  const covered = useMemo(() => drawnOver(handleBoxes(handles)), [handles]);
  const furniture = useFurniture({ top, foot, size, legends }, alone);
  const found = useRevealing(open, turner, { selection, controls });
  const finding = found && { key: found.key, at: kitToScreen(kitView, found.spot) };
  const turned = useMemo(() => focus && turnedFocus(focus, turner), [focus, turner]);
  useShowMove(opened, turned, flat, controls);
  useUncover({ selection, focus: turned, foot }, flat, controls);
  const ground = {
    kitView,
    pickables: () => pickables,
    handles,
    controls,
    notes,
    tapFirst: never,
    dragOf: (touched: Pickable) => heightDragOf(touched, open),
  };
  const framed = useCallback(
    (command: ChangeCommand) => inElevation(command, deck, standpoint),
    [deck, standpoint],
  );
  return (
    <>
      <ElevationStage
        {...{ layout, report, figure, standpoint, selection, preferences, kitView }}
        {...{ highlighted, ghosts, handles, covered, furniture, finding }}
        focus={turned}
        moving={moving}
        alone={alone}
      />
      <TouchSurface
        name={elevationName(standpoint)}
        described={described}
        ground={ground}
        framed={framed}
      />
    </>
  );
}

const never = (): boolean => false;
const flat = ({ x, y }: Vec3) => ({ x, y });

function useElevationView(
  { layout, report }: OpenLayout,
  turner: Turner,
  {
    size,
    top,
    selection,
  }: Pick<PaneProps, 'size' | 'top'> & { readonly selection: Selection | null },
): ViewControls {
  const { id, deck } = layout;
  const { facing, seenFrom } = turner.standpoint;
  const [figureIn] = useState(createFigures);
  const figure = turner.figure(figureIn(layout));
  const subject = useMemo(
    (): Subject => ({
      key: `${id} ${facing} ${seenFrom}`,
      ground: deck,
      // x to the right and y up, as on the plan that the player sees.
      seenFrom: 'player',
      start: () => 'kit',
      border: top === 0 ? ELEVATION_BORDER : LOWER_BORDER,
      extentOf(fit) {
        const kit = kitExtent(turner.report(report).rig, figure);
        return fit === 'deck' ? deckExtent(deck, turner.standpoint, kit) : kit;
      },
      chosen: () => (selection ? spotAt(placeIn(turner.report(report), selection)) : undefined),
    }),
    [id, deck, facing, seenFrom, top, turner, report, figure, selection],
  );
  return useView(subject, size);
}

interface Looked {
  readonly selection: Selection | null;
  readonly controls: ViewControls;
}

function useRevealing(open: OpenLayout, turner: Turner, { selection, controls }: Looked) {
  const { point } = turner.standpoint;
  const finding = useShownFinding(open.report);
  useRevealFinding(finding, ({ place }) => (place ? spotAt(point(place)) : undefined), controls);
  const turned = turner.report(open.report);
  useRevealSelected(selection, (chosen) => spotAt(placeIn(turned, chosen)), controls);
  return finding?.place ? { key: finding.key, spot: point(finding.place) } : null;
}

/** A turned point as a spot of the drawing. */
const spotAt = (point: Vec3 | undefined) => point && { x: point.x, y: point.y };

function placeIn({ rig }: Report, selection: Selection): Vec3 | undefined {
  if (selection.kind === 'mic') return rig.mics.find(({ mic }) => mic.id === selection.id)?.tip;
  if (selection.kind !== 'piece') return undefined;
  const placed = rig.pieces.find(({ piece }) => piece.id === selection.id);
  return placed?.shells[0]?.centre ?? placed?.hardware[0]?.a;
}
