import type { ScreenPoint } from '../view/view.ts';

/** From what a label names to the label, px. */
export type Line = readonly [ScreenPoint, ScreenPoint];

interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** The point of a label's box that is nearest to what it names: its line ends there. */
export const nearestIn = (
  { left, top, width, height }: Rectangle,
  { x, y }: ScreenPoint,
): ScreenPoint => ({
  x: Math.min(Math.max(x, left), left + width),
  y: Math.min(Math.max(y, top), top + height),
});

/** Whether a line meets a box: neither lies all to one side of the other. */
export function crosses([a, b]: Line, { left, top, width, height }: Rectangle): boolean {
  const [right, bottom] = [left + width, top + height];
  if (Math.max(a.x, b.x) < left || Math.min(a.x, b.x) > right) return false;
  if (Math.max(a.y, b.y) < top || Math.min(a.y, b.y) > bottom) return false;
  const side = (x: number, y: number): number => (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x);
  const corners = [side(left, top), side(right, top), side(left, bottom), side(right, bottom)];
  return Math.min(...corners) <= 0 && Math.max(...corners) >= 0;
}
