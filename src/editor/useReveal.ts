import { useEffect, useMemo } from 'react';
import type { Vec2 } from '../geometry/vector.ts';
import type { Finding } from '../report/report.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Selection } from '../session/selection.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { onScreen } from './labels/placeLabels.ts';
import type { ViewControls } from './view/useView.ts';
import { toScreen } from './view/view.ts';

/** The finding that is shown on the plan; undefined when none is. It is brought into view when it is chosen. */
export function useShownFinding(
  { layout, report }: OpenLayout,
  controls: ViewControls,
): Finding | undefined {
  const key = useSession((state) => state.shownFinding);
  const finding = useMemo(
    () => report.findings.find((one) => one.key === key),
    [report.findings, key],
  );
  const { reveal } = controls;
  // Only choosing a finding moves the view: while its cause is dragged the plan stays still.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    if (key !== null && finding?.place) reveal(toDeck(layout.deck, finding.place));
  }, [key]);
  return finding;
}

/** Brings what was selected elsewhere, by a list or a key, into view when it lies off the screen. */
export function useRevealSelected(
  open: OpenLayout,
  selection: Selection | null,
  controls: ViewControls,
): void {
  const { reveal, view } = controls;
  // Only selecting moves the view: what is dragged off the screen must not pull the plan along.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above.
  useEffect(() => {
    const spot = selection && spotOf(open, selection);
    if (spot && !onScreen(toScreen(view, spot), view.size)) reveal(spot);
  }, [selection]);
}

function spotOf({ layout, report }: OpenLayout, selection: Selection): Vec2<'deck'> | undefined {
  const { deck } = layout;
  switch (selection.kind) {
    case 'box':
      return layout.box;
    case 'player':
      return toDeck(deck, { x: 0, y: 0 });
    case 'deck':
      return undefined;
    case 'mic': {
      const placed = report.rig.mics.find(({ mic }) => mic.id === selection.id);
      return placed && toDeck(deck, placed.tip);
    }
    case 'piece': {
      const piece = layout.pieces.find(({ id }) => id === selection.id);
      return piece && toDeck(deck, piece.kind === 'throne' ? { x: 0, y: 0 } : piece);
    }
  }
}
