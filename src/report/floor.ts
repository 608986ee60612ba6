import { motionOf } from '../clearance/micClearance.ts';
import { floorContours, type HeightContour, stickFloor } from '../clearance/stickFloor.ts';
import type { Layout } from '../layout/layout.ts';
import type { Mm } from '../units/quantity.ts';

/** The stick floor as contours at even heights, lowest first (rule F1). */
export interface FloorReport {
  readonly contours: readonly HeightContour[];
  /** Lowest height that anything sweeps, mm; infinite when nothing does. */
  readonly lowest: Mm;
}

/** Half the side of the square about the throne that is looked at: farther than any arm with a stick reaches. */
const REACH: Mm = 1600;
/** Between one contour and the next, mm. */
const STEP: Mm = 100;
const HIGHEST: Mm = 1500;

/** The lowest height that sticks, hands and forearms sweep over the kit. */
export function floorOf(layout: Layout): FloorReport {
  const { swept } = motionOf(layout.player, layout.pieces);
  const area = { left: -REACH, right: REACH, bottom: -REACH, top: REACH };
  const floor = stickFloor(swept, area);
  const lowest = floor.heights.reduce((least, height) => Math.min(least, height), Infinity);
  const levels: Mm[] = [];
  for (let level = Math.ceil(lowest / STEP) * STEP; level <= HIGHEST; level += STEP)
    levels.push(level);
  return { contours: floorContours(floor, levels), lowest };
}
