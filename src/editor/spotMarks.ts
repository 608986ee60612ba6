import { useMemo } from 'react';
import { moveBox } from '../layout/edit/stage.ts';
import type { Layout } from '../layout/layout.ts';
import type { FoundSpot } from '../report/boxSpots.ts';
import { bestSpots, SPOT_LETTERS, useBoxSearch } from '../session/boxSearch.ts';
import { type ScreenPoint, toScreen, type View } from './view/view.ts';

/** One of the best spots for the box, and where its letter stands on the screen. */
export interface BoxSpotMark {
  readonly spot: FoundSpot;
  readonly letter: string;
  readonly at: ScreenPoint;
}

/** Of a letter's button, px; plan.css has the same. */
export const SPOT_RADIUS = 22;

/** The best spots that were found; the box itself shows the one that it stands at. */
export function useBoxSpotMarks(layout: Layout, view: View): readonly BoxSpotMark[] {
  const { current, by } = useBoxSearch();
  return useMemo(() => {
    if (current?.kind !== 'found') return [];
    const { box } = layout;
    return bestSpots(current.spots, by).flatMap((spot, place) => {
      const to = moveBox(layout, spot.box).box;
      if (to.x === box.x && to.y === box.y && to.turn === box.turn) return [];
      return [{ spot, letter: SPOT_LETTERS[place] ?? '', at: toScreen(view, to) }];
    });
  }, [current, by, layout, view]);
}
