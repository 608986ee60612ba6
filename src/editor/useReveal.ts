import { useEffect, useMemo } from 'react';
import type { Vec2, Vec3 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import type { FoundSpot } from '../report/boxSpots.ts';
import type { Finding, Report } from '../report/report.ts';
import { bestSpots, useBoxSearch } from '../session/boxSearch.ts';
import type { Selection } from '../session/selection.ts';
import { session, useSession } from '../session/session.ts';
import { onScreen } from './labels/placeLabels.ts';
import { standsFree } from './labels/reserved.ts';
import type { MicFocus } from './move/micFocus.ts';
import { SPOT_RADIUS } from './spotMarks.ts';
import { extentOfSpots } from './view/extent.ts';
import { covering } from './view/uncover.ts';
import type { ViewControls } from './view/useView.ts';
import { toScreen } from './view/view.ts';

type Spot = Vec2<'deck'> | undefined;

/** The finding that is shown; undefined when none is. */
export function useShownFinding({ findings }: Report): Finding | undefined {
  const key = useSession((state) => state.shownFinding);
  return useMemo(() => findings.find((one) => one.key === key), [findings, key]);
}

/** Brings the place of a finding into view when it is chosen. */
export function useRevealFinding(
  finding: Finding | undefined,
  spotOf: (finding: Finding) => Spot,
  { reveal }: ViewControls,
): void {
  const key = finding?.key;
  // Only choosing a finding moves the view: while its cause is dragged the drawing stays still.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    const spot = finding && spotOf(finding);
    if (spot) reveal(spot);
  }, [key]);
}

/** Brings what was selected elsewhere, by a list or a key, into view when it lies off the screen. */
export function useRevealSelected(
  selection: Selection | null,
  spotOf: (selection: Selection) => Spot,
  { reveal, view }: ViewControls,
): void {
  // Only selecting moves the view: what is dragged off the screen must not pull the drawing along.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    const spot = selection && spotOf(selection);
    if (spot && !onScreen(toScreen(view, spot), view.size)) reveal(spot);
  }, [selection]);
}

/** Shows the whole deck when spots for the box are found and one of them is not whole on the screen, or under a button. */
export function useRevealBoxSpots(layout: Layout, { show, view }: ViewControls): void {
  const { current, by } = useBoxSearch();
  const found = current?.kind === 'found' ? bestSpots(current.spots, by) : undefined;
  // Only what is found moves the view: it can be zoomed and drawn aside after that.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    const isFree = ({ box }: FoundSpot): boolean =>
      standsFree(toScreen(view, box), SPOT_RADIUS, view.size);
    if (found && !found.every(isFree)) show(extentOfSpots(layout, found));
  }, [found]);
}

interface Judged {
  readonly selection: Selection | null;
  readonly focus: Pick<MicFocus, 'place'> | null;
  /** How high cards stand over the lower edge, px. */
  readonly foot: number;
}

/** Moves the view up where the cards that come with a selected mic would stand over the place that they are about. */
export function useUncover(
  { selection, focus, foot }: Judged,
  spotOf: (point: Vec3) => Vec2<'deck'>,
  { pan, view }: ViewControls,
): void {
  // Only selecting and cards that come move the view, never a drag or a move that is played.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    if (foot === 0 || session.getState().gesture !== null) return;
    const by = covering(view, focus?.place?.ends.map(spotOf) ?? [], foot);
    if (by > 0) pan({ x: 0, y: -by });
  }, [selection, foot]);
}
