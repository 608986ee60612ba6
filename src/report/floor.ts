import { type Motion, motionOf } from '../clearance/micClearance.ts';
import { floorContours, type HeightContour, stickFloor } from '../clearance/stickFloor.ts';
import type { Layout } from '../layout/layout.ts';
import { fromInches } from '../units/inch.ts';
import type { LengthUnit } from '../units/lengthText.ts';
import type { Mm } from '../units/quantity.ts';

/** The stick floor as contours at even heights, lowest first (rule F1). */
export interface FloorReport {
  readonly contours: readonly HeightContour[];
  /** Between one contour and the next, mm: a round length in the units shown. */
  readonly step: Mm;
  /** Lowest height that anything sweeps, mm; infinite when nothing does. */
  readonly lowest: Mm;
}

/** Half the side of the square about the throne that is looked at: farther than any arm with a stick reaches. */
const REACH: Mm = 1600;
const STEPS: Readonly<Record<LengthUnit, Mm>> = { mm: 100, in: fromInches(4) };
const HIGHEST: Mm = 1500;

/** The lowest height that sticks, hands and forearms sweep over the kit. */
export function floorOf(
  { units, player, pieces }: Pick<Layout, 'units' | 'player' | 'pieces'>,
  { swept }: Motion = motionOf(player, pieces),
): FloorReport {
  const area = { left: -REACH, right: REACH, bottom: -REACH, top: REACH };
  const floor = stickFloor(swept, area);
  const lowest = floor.heights.reduce((least, height) => Math.min(least, height), Infinity);
  const step = STEPS[units];
  const levels: Mm[] = [];
  for (let level = Math.ceil(lowest / step) * step; level <= HIGHEST; level += step)
    levels.push(level);
  return { contours: floorContours(floor, levels), step, lowest };
}
