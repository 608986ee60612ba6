import { useCallback, useMemo, useState } from 'react';
import type { Vec2 } from '../../geometry/vector.ts';
import type { OpenLayout } from '../../session/session.ts';
import { extentOf, extentOfKit, FIT_BORDER } from './extent.ts';
import {
  type Bounds,
  fitted,
  panned,
  revealing,
  type ScreenPoint,
  type ScreenSize,
  type SeenFrom,
  type View,
  zoomed,
} from './view.ts';

/** What the plan is fitted to; null when the user moved it. */
type Fit = 'deck' | 'kit' | null;

interface Chosen {
  readonly layoutId: string;
  readonly fit: Fit;
  /** What a fitted plan shows. It stays while things are dragged: the plan must not slide under the finger. */
  readonly extent: Bounds;
  /** Where the user moved it. */
  readonly place: Pick<View, 'centre' | 'scale'>;
}

/** Free px round a spot that is brought into view. */
const REVEALED = 90;

export interface ViewControls {
  readonly view: View;
  /** What the next fit shows: the whole deck, or the kit when the deck is shown already. */
  readonly nextFit: 'deck' | 'kit';
  fit(): void;
  pan(by: ScreenPoint): void;
  zoom(factor: number, about: ScreenPoint): void;
  /** Moves the view as little as needed to show a spot. */
  reveal(spot: Vec2<'deck'>): void;
}

/** The plan's view: the whole deck until the user moves it; what is fitted stays fitted when the screen is turned. */
export function useView(open: OpenLayout, size: ScreenSize, seenFrom: SeenFrom): ViewControls {
  const { layout, report } = open;
  const { id, deck } = layout;
  const [kept, setChosen] = useState(() => fittedTo('deck', open));
  const [shownDeck, setShownDeck] = useState(deck);
  // Another layout, or another size of deck, is shown whole.
  const stale = kept.layoutId !== id || (kept.fit === 'deck' && shownDeck !== deck);
  const chosen = stale ? fittedTo('deck', open) : kept;
  if (stale) {
    setChosen(chosen);
    setShownDeck(deck);
  }
  const viewOf = useCallback(
    ({ fit, extent, place }: Chosen): View => {
      const moved: View = { seenFrom, size, ...place };
      return fit === null ? moved : fitted(moved, extent, FIT_BORDER);
    },
    [seenFrom, size],
  );
  const change = useCallback(
    (next: (view: View) => View) =>
      setChosen((now) => {
        const before = viewOf(now);
        const after = next(before);
        if (sameView(before, after)) return now;
        return { ...now, fit: null, place: { centre: after.centre, scale: after.scale } };
      }),
    [viewOf],
  );
  const nextFit = chosen.fit === 'deck' ? 'kit' : 'deck';
  return {
    view: useMemo(() => viewOf(chosen), [viewOf, chosen]),
    nextFit,
    fit: useCallback(
      () => setChosen(fittedTo(nextFit, { layout, report })),
      [nextFit, layout, report],
    ),
    pan: useCallback((by) => change((now) => panned(now, by)), [change]),
    zoom: useCallback((factor, about) => change((now) => zoomed(now, factor, about)), [change]),
    reveal: useCallback((spot) => change((now) => revealing(now, spot, REVEALED)), [change]),
  };
}

const fittedTo = (fit: 'deck' | 'kit', { layout, report }: OpenLayout): Chosen => ({
  layoutId: layout.id,
  fit,
  extent: fit === 'deck' ? extentOf(layout) : extentOfKit(layout, report.rig),
  place: { centre: { x: 0, y: 0 }, scale: 1 },
});

const sameView = (a: View, b: View): boolean =>
  a.scale === b.scale && Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) < 1e-6;
