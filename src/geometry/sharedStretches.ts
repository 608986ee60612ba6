import type { Mm } from '../units/quantity.ts';
import { wayLength } from './plan.ts';
import type { Frame, Vec2 } from './vector.ts';

/** A line that the same ways share from end to end; ways by their places in the list, in order. */
export interface SharedStretch<F extends Frame = 'kit'> {
  readonly points: readonly Vec2<F>[];
  readonly length: Mm;
  readonly ways: readonly number[];
}

/**
 * The ways as a drawing shows them: every line once, with the ways in it, from the first way's start on.
 *
 * D1 Ways share a line where they have both its ends in common, in either order. Lines in a row with the same ways make one
 *    stretch.
 */
export function sharedStretches<F extends Frame>(
  ways: readonly (readonly Vec2<F>[])[],
): readonly SharedStretch<F>[] {
  const users = new Map<string, Set<number>>();
  for (const [way, points] of ways.entries()) {
    for (const key of linesOf(points).map(({ key }) => key)) {
      users.set(key, (users.get(key) ?? new Set()).add(way));
    }
  }
  const drawn = new Set<string>();
  return ways.flatMap((points) => stretchesOf(points, users, drawn));
}

interface Line<F extends Frame> {
  readonly from: Vec2<F>;
  readonly to: Vec2<F>;
  readonly key: string;
}

function linesOf<F extends Frame>(points: readonly Vec2<F>[]): Line<F>[] {
  const lines: Line<F>[] = [];
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    if (!from || (from.x === to.x && from.y === to.y)) continue;
    const isForward = from.x < to.x || (from.x === to.x && from.y < to.y);
    const [p, q] = isForward ? [from, to] : [to, from];
    lines.push({ from, to, key: `${p.x},${p.y},${q.x},${q.y}` });
  }
  return lines;
}

/** The stretches of one way that no earlier one has shown. */
function stretchesOf<F extends Frame>(
  points: readonly Vec2<F>[],
  users: ReadonlyMap<string, ReadonlySet<number>>,
  drawn: Set<string>,
): SharedStretch<F>[] {
  const found: { points: Vec2<F>[]; ways: ReadonlySet<number> }[] = [];
  for (const { from, to, key } of linesOf(points)) {
    if (drawn.has(key)) continue;
    drawn.add(key);
    const ways = users.get(key) ?? new Set();
    const last = found.at(-1);
    const goesOn = last?.points.at(-1) === from && isSameSet(last.ways, ways);
    if (last && goesOn) last.points.push(to);
    else found.push({ points: [from, to], ways });
  }
  return found.map((stretch) => ({
    points: stretch.points,
    length: wayLength(stretch.points),
    ways: [...stretch.ways].sort((a, b) => a - b),
  }));
}

const isSameSet = (p: ReadonlySet<number>, q: ReadonlySet<number>): boolean =>
  p.size === q.size && [...p].every((way) => q.has(way));
