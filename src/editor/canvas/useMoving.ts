import { useState } from 'react';
import type { Breakout, LoomLine } from '../../report/report.ts';
import { type OpenLayout, useSession } from '../../session/session.ts';

/**
 * Keys of everything that was changed since the gesture under way began; empty at rest. What moves is drawn on the layer over the kit,
 * so that the kit itself is not drawn again in every frame of a drag.
 */
export type Moving = ReadonlySet<string>;

export const keyOf = {
  piece: (id: string): string => `piece ${id}`,
  mic: (id: string): string => `mic ${id}`,
  /** Lines of the loom go by the cables in them: while a mic is dragged, most lines keep theirs. */
  line: ({ key }: LoomLine): string => `line ${key}`,
  breakout: ({ key }: Breakout): string => `breakout ${key}`,
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
  const [then, here] = [drawnThings(before), drawnThings(now)];
  return new Set([...notAmong(then, here), ...notAmong(here, then)]);
}

type Things = ReadonlyMap<unknown, string>;

/** The keys of things that are not among others. */
const notAmong = (others: Things, things: Things): readonly string[] =>
  [...things].flatMap(([thing, key]) => (others.has(thing) ? [] : [key]));

/** Everything that is drawn, with its key. */
const drawnThings = ({ layout, report: { rig, loom } }: OpenLayout): Things =>
  new Map<unknown, string>([
    ...rig.pieces.map((placed) => [placed, keyOf.piece(placed.piece.id)] as const),
    ...rig.mics.map((placed) => [placed, keyOf.mic(placed.mic.id)] as const),
    ...loom.stretches.map((line) => [line, keyOf.line(line)] as const),
    ...loom.breakouts.map((breakout) => [breakout, keyOf.breakout(breakout)] as const),
    [layout.box, keyOf.box],
  ]);
