import { useCallback, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import type { Vec2 } from '../../geometry/vector.ts';
import type { SeenFrom } from '../../rig/standpoint.ts';
import {
  type Border,
  type Bounds,
  fitted,
  panned,
  revealing,
  type ScreenPoint,
  type ScreenSize,
  stillPoint,
  type View,
  zoomed,
} from './view.ts';

/** What a fit shows: the whole deck, or the kit as large as it can be. */
type Fit = 'deck' | 'kit';

/** What is looked at. */
export interface Subject {
  /** Another one is another drawing: it is shown as at first. */
  readonly key: string;
  /** While the whole deck is shown, another ground is shown whole again. */
  readonly ground: unknown;
  readonly seenFrom: SeenFrom;
  /** What is shown at first; asked for only then. */
  start(): Fit;
  readonly border: Border;
  extentOf(fit: Fit): Bounds;
  /** Where what is selected stands. */
  chosen(): Vec2<'deck'> | undefined;
}

interface Chosen {
  readonly key: string;
  readonly ground: unknown;
  /** Null when the user moved it. */
  readonly fit: Fit | null;
  /** Of the drawing that was fitted as at first; null once the user chose. */
  readonly first: ScreenSize | null;
  /** What a fitted drawing shows. It stays while things are dragged: the drawing must not slide under the finger. */
  readonly extent: Bounds;
  /** Where the user moved it. */
  readonly place: Pick<View, 'centre' | 'scale'>;
}

/** Free px round a spot that is brought into view. */
const REVEALED = 90;
/** What may stand over the lower edge, px. */
const BAR = 64;

export interface ViewControls {
  readonly view: View;
  /** What the next fit shows: the whole deck, or the kit when the deck is shown already. */
  readonly nextFit: Fit;
  fit(): void;
  pan(by: ScreenPoint): void;
  zoom(factor: number, about: ScreenPoint): void;
  /** Zooms by a button or a key (rule V4). */
  zoomStep(factor: number): void;
  /** Shows an extent as large as it can be, above what may stand over the lower edge. */
  show(extent: Bounds): void;
  /** Moves the view as little as needed to show a spot. */
  reveal(spot: Vec2<'deck'>): void;
  /**
   * Draws the view where it was last moved to, now. React draws what a moving finger did a little later, and a tap
   * right after it must mean what lies under it. To be called in a listener, never while drawing.
   */
  settle(): void;
}

/** The view of a drawing, fitted until the user moves it; what is fitted stays fitted when the screen is turned. */
export function useView(subject: Subject, size: ScreenSize): ViewControls {
  const { key, ground, seenFrom, border } = subject;
  const [kept, setChosen] = useState(() => atFirst(subject, size));
  // Another layout, or another size of deck, is shown as at first; and another size of drawing, as long as the user chose nothing else.
  const stale =
    kept.key !== key ||
    (kept.fit === 'deck' && kept.ground !== ground) ||
    (kept.first !== null && !sameSize(kept.first, size));
  const chosen = stale ? atFirst(subject, size) : kept;
  if (stale) setChosen(chosen);
  const viewOf = useCallback(
    ({ fit, extent, place }: Chosen): View => {
      const moved: View = { seenFrom, size, ...place };
      return fit === null ? moved : fitted(moved, extent, border);
    },
    [seenFrom, size, border],
  );
  const now = useRef({ subject, chosen });
  useLayoutEffect(() => {
    now.current = { subject, chosen };
  }, [subject, chosen]);
  const choose = useCallback((next: Chosen) => {
    now.current = { ...now.current, chosen: next };
    setChosen(next);
  }, []);
  const change = useCallback(
    (next: (view: View) => View) => {
      const before = viewOf(now.current.chosen);
      const after = next(before);
      if (sameView(before, after)) return;
      const place = { centre: after.centre, scale: after.scale };
      choose({ ...now.current.chosen, fit: null, first: null, place });
    },
    [viewOf, choose],
  );
  const nextFit = chosen.fit === 'deck' ? 'kit' : 'deck';
  const fit = useCallback(() => choose(fittedTo(nextFit, now.current.subject)), [nextFit, choose]);
  const settle = useCallback(() => flushSync(() => setChosen(now.current.chosen)), []);
  const pan = useCallback((by: ScreenPoint) => change((view) => panned(view, by)), [change]);
  const zoom = useCallback(
    (factor: number, about: ScreenPoint) =>
      change((view) => zoomed(view, factor, about, leastScale(view, now.current.subject))),
    [change],
  );
  const zoomStep = useCallback(
    (factor: number) =>
      change((view) => {
        const { subject: what } = now.current;
        return zoomed(view, factor, stillPoint(view, what.chosen()), leastScale(view, what));
      }),
    [change],
  );
  const reveal = useCallback(
    (spot: Vec2<'deck'>) => change((view) => revealing(view, spot, REVEALED)),
    [change],
  );
  const show = useCallback(
    (extent: Bounds) =>
      change((view) => fitted(view, extent, { ...border, bottom: border.bottom + BAR })),
    [change, border],
  );
  const view = useMemo(() => viewOf(chosen), [viewOf, chosen]);
  return useMemo(
    () => ({ view, nextFit, fit, pan, zoom, zoomStep, show, reveal, settle }),
    [view, nextFit, fit, pan, zoom, zoomStep, show, reveal, settle],
  );
}

/** Zoomed out, all there is still takes this share of the drawing's width or height: farther away it is only harder to find. */
const LEAST_SHARE = 1 / 3;

const leastScale = (view: View, { border, extentOf }: Subject): number =>
  LEAST_SHARE *
  Math.min(...(['deck', 'kit'] as const).map((fit) => fitted(view, extentOf(fit), border).scale));

const fittedTo = (fit: Fit, { key, ground, extentOf }: Subject): Chosen => ({
  key,
  ground,
  fit,
  first: null,
  extent: extentOf(fit),
  place: { centre: { x: 0, y: 0 }, scale: 1 },
});

const atFirst = (subject: Subject, size: ScreenSize): Chosen => ({
  ...fittedTo(subject.start(), subject),
  first: size,
});

const sameSize = (a: ScreenSize, b: ScreenSize): boolean =>
  a.width === b.width && a.height === b.height;

const sameView = (a: View, b: View): boolean =>
  a.scale === b.scale && Math.hypot(a.centre.x - b.centre.x, a.centre.y - b.centre.y) < 1e-6;
