import type { Facing } from '../rig/standpoint.ts';
import type { Drawing } from '../session/session.ts';
import type { ScreenSize } from './view/view.ts';

/** One drawing in its place, px from the upper left corner. */
export interface Pane {
  readonly kind: 'plan' | Facing;
  readonly left: number;
  readonly top: number;
  readonly size: ScreenSize;
}

/** Two drawings need so much of the screen in one of the directions, px. */
const WIDE = 640;
const HIGH = 560;
/** A screen wider than this for its height holds them side by side, else one below the other. */
const SIDE_BY_SIDE = 1.25;
/** The plan's share. */
const PLAN = 0.58;
/** The line between them. */
const GAP = 2;

export const holdsTwo = ({ width, height }: ScreenSize): boolean => width >= WIDE || height >= HIGH;

const drawings: Readonly<Record<Drawing, readonly Pane['kind'][]>> = {
  plan: ['plan'],
  front: ['front'],
  side: ['side'],
  planAndFront: ['plan', 'front'],
  planAndSide: ['plan', 'side'],
};

/** What is drawn where. Without room for two the plan alone. */
export function panesOf(drawing: Drawing, size: ScreenSize): readonly Pane[] {
  const [first = 'plan', second] = drawings[drawing];
  const whole = { kind: first, left: 0, top: 0, size };
  if (!second || !holdsTwo(size)) return [whole];
  const { width, height } = size;
  const beside = width > SIDE_BY_SIDE * height;
  const at = Math.round((beside ? width : height) * PLAN);
  const rest = (beside ? width : height) - at - GAP;
  return beside
    ? [
        { ...whole, size: { width: at, height } },
        { kind: second, left: at + GAP, top: 0, size: { width: rest, height } },
      ]
    : [
        { ...whole, size: { width, height: at } },
        { kind: second, left: 0, top: at + GAP, size: { width, height: rest } },
      ];
}
