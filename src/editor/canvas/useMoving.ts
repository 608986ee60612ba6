import { useState } from 'react';
import { type OpenLayout, useSession } from '../../session/session.ts';

/**
 * Keys of everything that was changed since the gesture under way began; empty at rest. What moves is drawn on the layer over the kit,
 * so that the kit itself is not drawn again in every frame of a drag.
 */
export type Moving = ReadonlySet<string>;

export const keyOf = {
  piece: (id: string): string => `piece ${id}`,
  mic: (id: string): string => `mic ${id}`,
  box: 'box',
} as const;

const nothing: Moving = new Set();

/** What the kit's own layer shows, and what is drawn over it instead. */
export interface Drawn {
  /** What was drawn at rest, before the gesture under way. */
  readonly still: OpenLayout;
  readonly moving: Moving;
}

export const drawnAtRest = (open: OpenLayout): Drawn => ({ still: open, moving: nothing });

export function useMoving(open: OpenLayout): Drawn {
  const isMoving = useSession((state) => state.gesture !== null);
  const [drawn, setDrawn] = useState(() => drawnAtRest(open));
  const next = drawnNext(drawn, open, isMoving);
  if (next !== drawn) setDrawn(next);
  return next;
}

/**
 * What is drawn where after a change; the same object where nothing changes between the layers, as in most frames of a drag. What has
 * moved once counts as moving until the gesture ends: to and fro between the layers would draw both again.
 */
export function drawnNext(drawn: Drawn, open: OpenLayout, isMoving: boolean): Drawn {
  if (!isMoving) {
    return drawn.still === open && drawn.moving.size === 0 ? drawn : drawnAtRest(open);
  }
  const keys = movedSince(drawn.still, open);
  const isKnown = [...keys].every((key) => drawn.moving.has(key));
  return isKnown ? drawn : { still: drawn.still, moving: new Set([...drawn.moving, ...keys]) };
}

/** What is not the same object any more, or is gone: edits and the analysis share what they don't change. */
export function movedSince(before: OpenLayout, now: OpenLayout): Moving {
  if (before.layout.id !== now.layout.id) return nothing;
  const [{ rig }, { rig: rigNow }] = [before.report, now.report];
  return new Set([
    ...differing(rig.pieces, rigNow.pieces, ({ piece }) => keyOf.piece(piece.id)),
    ...differing(rig.mics, rigNow.mics, ({ mic }) => keyOf.mic(mic.id)),
    ...(before.layout.box === now.layout.box ? [] : [keyOf.box]),
  ]);
}

/** The keys of things that are in one of two lists only. */
function differing<Thing>(
  before: readonly Thing[],
  now: readonly Thing[],
  key: (thing: Thing) => string,
): readonly string[] {
  // Most lists are the same in most frames, and most of the others but for a few entries.
  if (before === now) return [];
  const [gone, come] = [notAt(now, before), notAt(before, now)];
  return [...notAmong(come, gone), ...notAmong(gone, come)].map(key);
}

/** The things that do not stand at the same place in another list. */
const notAt = <Thing>(others: readonly Thing[], things: readonly Thing[]): readonly Thing[] =>
  things.filter((thing, i) => thing !== others[i]);

const notAmong = <Thing>(others: readonly Thing[], things: readonly Thing[]): readonly Thing[] => {
  const known = new Set(others);
  return things.filter((thing) => !known.has(thing));
};
