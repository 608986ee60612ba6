import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { PlacedMic, PlacedPiece, Rig } from '../rig/placed.ts';
import { boxObstacle } from './box.ts';
import { keepingOf } from './deckFloor.ts';
import { micObstacles, pieceObstacles } from './floorObstacles.ts';
import { createLayWay, type LayWay } from './layWay.ts';
import type { Keeping, Obstacle } from './obstacle.ts';
import type { Run } from './run.ts';
import { runAlong } from './runParts.ts';

/** The cables of a layout: what they keep off, and one run for every mic, in the layout's order. */
export interface CableRouting {
  readonly obstacles: readonly Obstacle[];
  readonly runs: readonly Run[];
}

/**
 * Every run of a layout. A mic without an input has a run too, to the middle of the box's side: the cable it will take.
 */
export const routeRuns = (layout: Layout, rig: Rig): readonly Run[] =>
  createCableRouter()(layout, rig).runs;

/**
 * Routes one layout after another as it is edited, with the same results as {@link routeRuns}: what depends on nothing that
 * changed (by identity) since the last call is kept. The obstacles of a piece or mic are kept while it, the kit's place on the
 * deck and the distance to keep stay; the runs of mics that stay are kept while all obstacles, deck, box and cabling stay.
 */
export function createCableRouter(): (layout: Layout, rig: Rig) => CableRouting {
  const obstaclesOf = createObstacleKeeper();
  let last: { layout: Layout; lay: LayWay; routing: CableRouting } | undefined;
  let runsOf = new WeakMap<PlacedMic, Run>();
  return (layout, rig) => {
    const found = obstaclesOf(layout, rig);
    const same = last && sameFloor(last.layout, layout) && sameItems(last.routing.obstacles, found);
    const obstacles = last && same ? last.routing.obstacles : found;
    const lay = last && same ? last.lay : createLayWay(layout, obstacles);
    if (!same) runsOf = new WeakMap();
    const runs = rig.mics.map((placed) => {
      const known = runsOf.get(placed);
      if (known) return known;
      const start = toDeck(layout.deck, placed.deckPoint);
      const run = runAlong(placed, lay(start, placed.mic.input), layout);
      runsOf.set(placed, run);
      return run;
    });
    last = { layout, lay, routing: { obstacles, runs } };
    return last.routing;
  };
}

const sameFloor = (p: Layout, q: Layout): boolean =>
  p.deck === q.deck && p.box === q.box && p.cabling === q.cabling;

const sameItems = <T>(p: readonly T[], q: readonly T[]): boolean =>
  p.length === q.length && p.every((item, i) => item === q[i]);

/** {@link floorObstacles}, with those of every unchanged piece and mic kept. */
function createObstacleKeeper(): (layout: Layout, rig: Rig) => readonly Obstacle[] {
  let made: { deck: Layout['deck']; keepAway: number; keeping: Keeping } | undefined;
  let ofPieces = new WeakMap<PlacedPiece, readonly Obstacle[]>();
  let ofMics = new WeakMap<PlacedMic, readonly Obstacle[]>();
  let ofBox = new WeakMap<Layout['box'], readonly Obstacle[]>();
  return (layout, rig) => {
    const { deck, cabling, box } = layout;
    if (made?.deck !== deck || made.keepAway !== cabling.keepAway) {
      made = { deck, keepAway: cabling.keepAway, keeping: keepingOf(layout) };
      ofPieces = new WeakMap();
      ofMics = new WeakMap();
      ofBox = new WeakMap();
    }
    const { keeping } = made;
    return [
      ...rig.pieces.flatMap((placed) =>
        keep(ofPieces, placed, () => pieceObstacles(placed, keeping)),
      ),
      ...rig.mics.flatMap((placed) => keep(ofMics, placed, () => micObstacles(placed, keeping))),
      ...keep(ofBox, box, () => boxObstacle(layout)),
    ];
  };
}

function keep<K extends object, V>(kept: WeakMap<K, V>, key: K, make: () => V): V {
  const known = kept.get(key);
  if (known !== undefined) return known;
  const value = make();
  kept.set(key, value);
  return value;
}
