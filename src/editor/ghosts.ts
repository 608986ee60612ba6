import { useMemo } from 'react';
import type { Layout } from '../layout/layout.ts';
import type { Report } from '../report/report.ts';
import { type OpenLayout, useSession } from '../session/session.ts';
import { keyOf, movedSince } from './canvas/useMoving.ts';
import type { Outline } from './pick/outline.ts';
import type { Pickable } from './pick/pickables.ts';

const none: readonly Outline[] = [];

/** While something is only offered: the outlines of what it changes, where that is now; empty while nothing is. */
export function useGhosts(
  open: OpenLayout,
  pickablesIn: (layout: Layout, report: Report) => readonly Pickable[],
): readonly Outline[] {
  const gesture = useSession((state) => state.gesture);
  return useMemo(() => {
    if (!gesture?.isOffer) return none;
    const { before: layout, beforeReport: report } = gesture;
    return ghostsOf({ layout, report }, open, pickablesIn(layout, report));
  }, [gesture, open, pickablesIn]);
}

/** Of a drawing's things before a change the outlines of those that are otherwise, or not there, after it; cables left out. */
export function ghostsOf(
  before: OpenLayout,
  now: OpenLayout,
  pickables: readonly Pickable[],
): readonly Outline[] {
  const moved = movedSince(before, now);
  return pickables
    .filter(({ grip, selection }) => grip !== 'cable' && moved.has(keyOfThing(selection)))
    .map(({ outline }) => outline);
}

function keyOfThing(selection: Pickable['selection']): string {
  if (selection.kind === 'piece') return keyOf.piece(selection.id);
  return selection.kind === 'mic' ? keyOf.mic(selection.id) : selection.kind;
}
