import type { Mm } from '../units/quantity.ts';
import { listed } from './listed.ts';
import { createPlaceNumbers } from './placeNumbers.ts';
import { wayLength } from './plan.ts';
import { isSameList } from './remembered.ts';
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
  const lineOf = createLines<F>(ways.reduce((sum, points) => sum + points.length, 0));
  const passed = listed(ways, (points, way) => passedBy(points, way, lineOf));
  const found: Drawn<F>[] = [];
  for (const passages of passed) addStretches(found, passages);
  return listed(found, ({ points, ways: sharing }) => ({
    points,
    length: wayLength(points),
    ways: sharing,
  }));
}

/** A line between two places, in either order: the ways in it, and whether it is drawn already. */
interface Line {
  readonly ways: number[];
  isDrawn: boolean;
}

/** A line as one way passes it. */
interface Passage<F extends Frame> {
  readonly from: Vec2<F>;
  readonly to: Vec2<F>;
  readonly line: Line;
}

type LineOf<F extends Frame> = (from: Vec2<F>, to: Vec2<F>) => Line;

/** The lines among at most `most` places. */
function createLines<F extends Frame>(most: number): LineOf<F> {
  const numberOf = createPlaceNumbers<F>();
  const lines = new Map<number, Line>();
  return (from, to) => {
    const p = numberOf(from);
    const q = numberOf(to);
    const key = p < q ? p * most + q : q * most + p;
    const known = lines.get(key);
    if (known) return known;
    const line = { ways: [], isDrawn: false };
    lines.set(key, line);
    return line;
  };
}

function passedBy<F extends Frame>(
  points: readonly Vec2<F>[],
  way: number,
  lineOf: LineOf<F>,
): Passage<F>[] {
  const passages: Passage<F>[] = [];
  for (let i = 1; i < points.length; i += 1) {
    const from = points[i - 1];
    const to = points[i];
    if (!from || !to || (from.x === to.x && from.y === to.y)) continue;
    const line = lineOf(from, to);
    if (line.ways[line.ways.length - 1] !== way) line.ways.push(way);
    passages.push({ from, to, line });
  }
  return passages;
}

interface Drawn<F extends Frame> {
  readonly points: Vec2<F>[];
  readonly ways: readonly number[];
}

/** Adds the stretches of one way that no earlier one has shown. */
function addStretches<F extends Frame>(found: Drawn<F>[], passages: readonly Passage<F>[]): void {
  let last: Drawn<F> | undefined;
  for (const { from, to, line } of passages) {
    if (line.isDrawn) continue;
    line.isDrawn = true;
    const goesOn =
      last?.points[last.points.length - 1] === from && isSameList(last.ways, line.ways);
    if (last && goesOn) {
      last.points.push(to);
      continue;
    }
    last = { points: [from, to], ways: line.ways };
    found.push(last);
  }
}
