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

/** The point at a share of a way's length. */
export function pointAlong(way: readonly ScreenPoint[], share: number): ScreenPoint {
  const lengths = way.slice(1).map((p, i) => {
    const q = way[i] ?? p;
    return Math.hypot(p.x - q.x, p.y - q.y);
  });
  let left = share * lengths.reduce((sum, part) => sum + part, 0);
  for (const [i, part] of lengths.entries()) {
    const [a, b] = [way[i], way[i + 1]];
    if (a && b && left <= part) {
      const t = part > 0 ? left / part : 0;
      return { x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) };
    }
    left -= part;
  }
  return way.at(-1) ?? { x: 0, y: 0 };
}
