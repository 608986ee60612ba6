import { floorContours, type HeightContour } from '../clearance/floorContours.ts';
import { heightOver, SPOT, type StickFloor } from '../clearance/floorField.ts';
import { type Motion, motionOf } from '../clearance/micClearance.ts';
import { type PlanArea, stickFloor } from '../clearance/stickFloor.ts';
import { BOX, PARTS, type SweptMoves } from '../clearance/sweptMoves.ts';
import type { Vec2 } from '../geometry/vector.ts';
import type { Layout } from '../layout/layout.ts';
import { signOf } from '../player/hands.ts';
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
  /** The heights themselves, spot by spot. */
  readonly field: StickFloor;
}

/** No farther from the throne than this is looked at, though a piece may stand where no arm reaches. */
const FARTHEST: Mm = 4000;
/** Beyond what is swept, so that every contour closes. */
const BORDER: Mm = 60;
const STEPS: Readonly<Record<LengthUnit, Mm>> = { mm: 100, in: fromInches(4) };
const HIGHEST: Mm = 1500;

/** The lowest height that sticks, hands and forearms sweep over the kit. */
export function floorOf(
  { units, player, pieces }: Pick<Layout, 'units' | 'player' | 'pieces'>,
  { swept }: Motion = motionOf(player, pieces),
): FloorReport {
  const floor = stickFloor(swept, areaOf(swept));
  let lowest = Number.POSITIVE_INFINITY;
  for (let at = 0; at < floor.heights.length; at++) {
    const height = floor.heights[at] as number;
    if (height < lowest) lowest = height;
  }
  const step = STEPS[units];
  const levels: Mm[] = [];
  for (let level = Math.ceil(lowest / step) * step; level <= HIGHEST; level += step)
    levels.push(level);
  return { contours: floorContours(floor, levels), step, lowest, field: floor };
}

/** The lowest height that anything sweeps over a point of the kit frame, mm; infinite where nothing does (rule F4). */
export const floorOver = ({ field }: FloorReport, at: Vec2): Mm => heightOver(field, at);

/** What is swept on the plan, from the boxes round each move's parts. */
function areaOf({ moves, moveBoxes }: SweptMoves): PlanArea {
  let [left, right, bottom, top] = [0, 0, 0, 0];
  for (const [index, { move }] of moves.entries()) {
    const sign = signOf(move.side);
    for (let part = 0; part < PARTS; part++) {
      const at = (index * PARTS + part) * BOX;
      const [least = 0, low = 0, , most = 0, high = 0] = moveBoxes.subarray(at, at + BOX);
      left = Math.min(left, sign * least, sign * most);
      right = Math.max(right, sign * least, sign * most);
      bottom = Math.min(bottom, low);
      top = Math.max(top, high);
    }
  }
  // Whole spots from the throne on, so that the spots stay where they are while the kit changes.
  const out = (to: Mm): Mm => SPOT * Math.ceil((Math.min(FARTHEST, Math.abs(to)) + BORDER) / SPOT);
  return { left: -out(left), right: out(right), bottom: -out(bottom), top: out(top) };
}
