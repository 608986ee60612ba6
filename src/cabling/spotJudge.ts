import { passesThrough } from '../geometry/convexPolygon.ts';
import type { Box } from '../layout/cabling.ts';
import type { Layout } from '../layout/layout.ts';
import { toDeck } from '../rig/deckFrame.ts';
import type { Rig } from '../rig/placed.ts';
import type { Mm } from '../units/quantity.ts';
import { obstacleOfBox } from './box.ts';
import { keepingOf } from './deckFloor.ts';
import { micObstacles, pieceObstacles } from './floorObstacles.ts';
import { createFloors, createLayWay, type LaidWay, type LayWay } from './layWay.ts';
import { lazily } from './lazily.ts';
import type { Obstacle } from './obstacle.ts';
import { runAlong } from './runParts.ts';

/** What the cables need for a place of the box. */
export interface Judgement {
  readonly cable: Mm;
  readonly longest: Mm;
  readonly blocked: number;
}

/** Judges places of the box for one layout. */
export interface SpotJudge {
  /** What stands on the deck without the box. */
  readonly obstacles: readonly Obstacle[];
  at(box: Box): Judgement;
}

/**
 * The judge of a layout, for a box on its deck.
 *
 * Q5 Runs are routed as if the box were not in anyone's way, among obstacles that are the same for every place. A shortest way
 *    that doesn't touch the box where it stands is the shortest with it, too; only a way that does is routed again.
 */
export function createSpotJudge(layout: Layout, rig: Rig): SpotJudge {
  const keeping = keepingOf(layout);
  const obstacles = [
    ...rig.pieces.flatMap((placed) => pieceObstacles(placed, keeping)),
    ...rig.mics.flatMap((placed) => micObstacles(placed, keeping)),
  ];
  const floors = createFloors(layout, obstacles);
  return {
    obstacles,
    at(box) {
      const there = { ...layout, box };
      const around = obstacleOfBox(there);
      const lay = createLayWay(there, obstacles, floors);
      const layAround = lazily((): LayWay => createLayWay(there, [...obstacles, around]));
      const runs = rig.mics.map((placed) => {
        const start = toDeck(layout.deck, placed.deckPoint);
        const way = lay(start, placed.mic.input);
        const isFree = !meets(way, around) && way.through.length === 0;
        const real = isFree ? way : layAround()(start, placed.mic.input);
        return runAlong(placed, real, there);
      });
      return {
        cable: runs.reduce((sum, { total }) => sum + total, 0),
        longest: runs.reduce((most, { total }) => Math.max(most, total), 0),
        blocked: runs.filter(({ through }) => through.length > 0).length,
      };
    },
  };
}

/** Whether a way comes too near to the box before it leads straight into it. */
const meets = ({ route }: LaidWay, { outline }: Obstacle): boolean =>
  route.slice(0, -1).some((p, i) => passesThrough(outline, route[i - 1] ?? p, p));
