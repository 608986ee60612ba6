import type { Mm } from '../units/quantity.ts';
import { type ConvexPolygon, isInside, passesThrough } from './convexPolygon.ts';
import { listed } from './listed.ts';
import { gap, holds, nearestOnSegment, type Rectangle } from './plan.ts';
import { at } from './ring.ts';
import type { Frame, Vec2 } from './vector.ts';

/** How far outside an outline a point is put, so that rounding never leaves it inside. */
const CLEAR_OF_OUTLINE: Mm = 1e-7;

interface Edge<F extends Frame> {
  readonly a: Vec2<F>;
  readonly b: Vec2<F>;
  /** Outward, of length 1. */
  readonly normal: Vec2<F>;
}

/** How much farther is looked each time that too few ways out were found. */
const FARTHER = 3;

/**
 * Points outside all obstacles where a way from `point`, which stands inside one or more of them, can come out: nearest first,
 * at most `most`. A point that stands clear is its own only answer.
 *
 * L1 The nearest clear point lies on the outline of an obstacle: straight ahead on an edge, where two outlines cross, or
 *    where one crosses the region's border.
 * L2 A point from which the straight way back passes through one of the walls comes after all others, unless `point` stands in
 *    that wall already.
 * L3 Points outside `region` do not count.
 * L4 Near outlines are looked at first; those farther away only when there are too few ways out among them.
 */
export const waysOut = <F extends Frame>(
  point: Vec2<F>,
  obstacles: readonly ConvexPolygon<F>[],
  rules: LeaveRules<F>,
): readonly Vec2<F>[] => lookAround(point, obstacles, rules).out;

/** Ways out of obstacles, and how far was looked: obstacles whose rectangles lie farther from the point change nothing. */
export interface LookAround<F extends Frame> {
  readonly out: readonly Vec2<F>[];
  readonly within: Mm;
}

/** {@link waysOut}, with how far was looked for them. */
export function lookAround<F extends Frame>(
  point: Vec2<F>,
  obstacles: readonly ConvexPolygon<F>[],
  rules: LeaveRules<F>,
): LookAround<F> {
  const holding = obstacles.filter((obstacle) => isInside(obstacle, point));
  if (holding.length === 0) return { out: [point], within: 0 };
  const ahead = straightAhead(point, listed(holding, outlineOf)).map((p) => gap(point, p));
  for (let radius = FARTHER * Math.min(...ahead); ; radius *= FARTHER) {
    const near = obstacles.filter((obstacle) => rectangleGap(obstacle, point) <= radius);
    const isAll = near.length === obstacles.length;
    const within = isAll ? Number.POSITIVE_INFINITY : radius;
    const { open, walled } = waysWithin(point, near, within, rules);
    if (open.length === rules.most || isAll) {
      return { out: open.length > 0 ? open : walled.slice(0, rules.most), within };
    }
  }
}

/** The ways out that lead no farther than `radius`, found from all obstacles that come so near. */
function waysWithin<F extends Frame>(
  point: Vec2<F>,
  obstacles: readonly ConvexPolygon<F>[],
  radius: Mm,
  { walls, region, most }: LeaveRules<F>,
): { readonly open: Vec2<F>[]; readonly walled: Vec2<F>[] } {
  const isClear = (p: Vec2<F>): boolean => !obstacles.some((obstacle) => isInside(obstacle, p));
  const outlines = outlinesReachedFrom(point, obstacles);
  const candidates = [
    ...straightAhead(point, outlines),
    ...crossings(outlines),
    ...onBorder(outlines, region),
  ]
    .filter((p) => gap(point, p) <= radius && holds(region, p))
    .sort((p, q) => gap(point, p) - gap(point, q) || p.x - q.x || p.y - q.y);
  const solid = walls(radius).filter((wall) => !isInside(wall, point));
  const open: Vec2<F>[] = [];
  const walled: Vec2<F>[] = [];
  for (const p of candidates) {
    if (open.length === most) break;
    if (!isClear(p)) continue;
    (solid.some((wall) => passesThrough(wall, point, p)) ? walled : open).push(p);
  }
  return { open, walled };
}

export interface LeaveRules<F extends Frame> {
  /** All walls of which anything comes so near to the point, perhaps others too. */
  readonly walls: (within: Mm) => readonly ConvexPolygon<F>[];
  readonly region: Rectangle<F>;
  readonly most: number;
}

interface Outline<F extends Frame> {
  readonly polygon: ConvexPolygon<F>;
  readonly edges: readonly Edge<F>[];
}

/** Outlines of the obstacles that hold the point and of all that overlap with those, directly or through others. */
function outlinesReachedFrom<F extends Frame>(
  point: Vec2<F>,
  obstacles: readonly ConvexPolygon<F>[],
): Outline<F>[] {
  const reached = obstacles.filter((obstacle) => isInside(obstacle, point));
  const others = new Set(obstacles.filter((obstacle) => !reached.includes(obstacle)));
  // Grows while it is walked: each obstacle brings in those whose rectangles meet its own.
  for (const obstacle of reached) {
    for (const other of others) {
      if (!rectanglesMeet(obstacle, other)) continue;
      others.delete(other);
      reached.push(other);
    }
  }
  return listed(reached, outlineOf);
}

const outlineOf = <F extends Frame>(polygon: ConvexPolygon<F>): Outline<F> => ({
  polygon,
  edges: edgesOf(polygon),
});

const edgesOf = <F extends Frame>({ corners }: ConvexPolygon<F>): Edge<F>[] =>
  listed(corners, (a, i) => {
    const b = at(corners, i + 1);
    const size = gap(a, b);
    return { a, b, normal: { x: (b.y - a.y) / size, y: (a.x - b.x) / size } };
  });

const rectanglesMeet = <F extends Frame>(p: ConvexPolygon<F>, q: ConvexPolygon<F>): boolean =>
  p.low.x <= q.high.x && q.low.x <= p.high.x && p.low.y <= q.high.y && q.low.y <= p.high.y;

/** How far a point lies outside the rectangle round a polygon, along the axis on which it is farther. */
export const rectangleGap = <F extends Frame>(
  { low, high }: ConvexPolygon<F>,
  { x, y }: Vec2<F>,
): Mm => Math.max(low.x - x, x - high.x, low.y - y, y - high.y);

const straightAhead = <F extends Frame>(
  point: Vec2<F>,
  outlines: readonly Outline<F>[],
): Vec2<F>[] =>
  outlines.flatMap(({ edges }) =>
    listed(edges, ({ a, b, normal }) => {
      const nearest = nearestOnSegment(a, b, point);
      return {
        x: nearest.x + CLEAR_OF_OUTLINE * normal.x,
        y: nearest.y + CLEAR_OF_OUTLINE * normal.y,
      };
    }),
  );

function crossings<F extends Frame>(outlines: readonly Outline<F>[]): Vec2<F>[] {
  const found: Vec2<F>[] = [];
  for (let i = 0; i < outlines.length; i += 1) {
    for (let k = i + 1; k < outlines.length; k += 1) {
      const p = outlines[i] as Outline<F>;
      const q = outlines[k] as Outline<F>;
      if (!rectanglesMeet(p.polygon, q.polygon)) continue;
      for (const e of p.edges) {
        for (const f of q.edges) {
          const crossing = crossingOf(e, f);
          if (crossing) found.push(crossing);
        }
      }
    }
  }
  return found;
}

/** Where outlines cross the lines of the region's border, moved clear of the outline along the border. */
function onBorder<F extends Frame>(
  outlines: readonly Outline<F>[],
  { low, high }: Rectangle<F>,
): Vec2<F>[] {
  const found: Vec2<F>[] = [];
  for (const { polygon, edges } of outlines) {
    // What stands clear of the border crosses none of its lines.
    const isWide = polygon.low.x <= low.x || polygon.high.x >= high.x;
    const isDeep = polygon.low.y <= low.y || polygon.high.y >= high.y;
    if (!isWide && !isDeep) continue;
    for (const edge of edges) {
      for (const x of [low.x, high.x]) {
        const y = heightOver(edge, x);
        if (y !== undefined) found.push({ x, y });
      }
      for (const y of [low.y, high.y]) {
        const x = heightOver(swapped(edge), y);
        if (x !== undefined) found.push({ x, y });
      }
    }
  }
  return found;
}

/** The y at which an edge crosses the upright line at x, moved along that line until it is clear of the edge. */
function heightOver<F extends Frame>({ a, b, normal }: Edge<F>, x: number): number | undefined {
  const crosses = a.x !== b.x && (a.x - x) * (b.x - x) <= 0;
  if (!crosses || Math.abs(normal.y) < 1e-6) return undefined;
  return a.y + ((x - a.x) / (b.x - a.x)) * (b.y - a.y) + CLEAR_OF_OUTLINE / normal.y;
}

const swapped = <F extends Frame>({ a, b, normal }: Edge<F>): Edge<F> => ({
  a: { x: a.y, y: a.x },
  b: { x: b.y, y: b.x },
  normal: { x: normal.y, y: normal.x },
});

/** Where two edges cross, moved clear of both; undefined when they do not, or stand back to back. */
function crossingOf<F extends Frame>(e: Edge<F>, f: Edge<F>): Vec2<F> | undefined {
  const ex = e.b.x - e.a.x;
  const ey = e.b.y - e.a.y;
  const fx = f.b.x - f.a.x;
  const fy = f.b.y - f.a.y;
  const across = ex * fy - ey * fx;
  if (across === 0) return undefined;
  const dx = f.a.x - e.a.x;
  const dy = f.a.y - e.a.y;
  const s = (dx * fy - dy * fx) / across;
  const t = (dx * ey - dy * ex) / across;
  if (!(s > 0 && s < 1 && t > 0 && t < 1)) return undefined;
  const turn = 1 + e.normal.x * f.normal.x + e.normal.y * f.normal.y;
  if (turn < 1e-6) return undefined;
  const k = CLEAR_OF_OUTLINE / turn;
  return {
    x: e.a.x + s * ex + k * (e.normal.x + f.normal.x),
    y: e.a.y + s * ey + k * (e.normal.y + f.normal.y),
  };
}
