import type { Mm } from '../units/quantity.ts';
import { type ConvexPolygon, passesThrough } from './convexPolygon.ts';
import { leftOf } from './orientation.ts';
import { gap, holds, type Rectangle } from './plan.ts';
import { at } from './ring.ts';
import type { Frame, Vec2 } from './vector.ts';

/** A straight way from one point to a corner, with the obstacles it would pass through (their places in the list, rising). */
export interface Sight {
  readonly to: number;
  readonly length: Mm;
  readonly blockedBy: readonly number[];
}

/**
 * The straight ways between corners of convex obstacles that a shortest path can use. Obstacles may overlap. Corners are
 * numbered through all obstacles in order; each way is found when it is first asked for, and kept.
 *
 * V1 A shortest path among obstacles bends only at their corners, and at a corner only round the obstacle it belongs to: so
 *    the line of each stretch touches that obstacle there and leaves it on one side (a tangent), or runs along its outline.
 * V2 A stretch is blocked by an obstacle whose inside it passes through; touching is free.
 * V3 Corners outside `region` (a rectangle) are not used. Between two points of a rectangle the straight way stays in it.
 */
export class VisibilityGraph<F extends Frame> {
  readonly #obstacles: readonly ConvexPolygon<F>[];
  readonly #corners: Corner<F>[];
  /** For each obstacle, the number of its first corner. */
  readonly #first: number[];
  readonly #usable: boolean[];
  /** Ways from a corner to an obstacle's corners, by corner and obstacle. */
  readonly #sights = new Map<number, readonly Sight[]>();

  constructor(obstacles: readonly ConvexPolygon<F>[], region: Rectangle<F> | undefined) {
    this.#obstacles = obstacles;
    this.#first = [];
    this.#corners = [];
    for (const [obstacle, { corners }] of obstacles.entries()) {
      this.#first.push(this.#corners.length);
      for (const [i, point] of corners.entries()) {
        const before = at(corners, i - 1);
        const after = at(corners, i + 1);
        this.#corners.push({ point, before, after, obstacle });
      }
    }
    this.#usable = this.#corners.map(({ point }) => !region || holds(region, point));
  }

  get cornerCount(): number {
    return this.#corners.length;
  }

  /** The corner with this number. */
  corner(number: number): Vec2<F> {
    return this.#at(number).point;
  }

  /** Obstacles that the segment from a to b passes through, without those in `free`. */
  blockers(a: Vec2<F>, b: Vec2<F>, free?: ReadonlySet<number>): number[] {
    const found: number[] = [];
    for (const [i, obstacle] of this.#obstacles.entries()) {
      if (!free?.has(i) && passesThrough(obstacle, a, b)) found.push(i);
    }
    return found;
  }

  /** Ways from any point to the corners of one obstacle where they touch it. */
  fromPoint(point: Vec2<F>, obstacle: number, free?: ReadonlySet<number>): Sight[] {
    return this.#tangents(point, obstacle).map((to) => this.#sight(point, to, free));
  }

  /** Ways from a corner to the corners of one obstacle (V1), the neighbours on its own outline included. */
  fromCorner(from: number, obstacle: number): readonly Sight[] {
    const key = from * this.#obstacles.length + obstacle;
    const known = this.#sights.get(key);
    if (known) return known;
    const { point, obstacle: own } = this.#at(from);
    const ends =
      own === obstacle
        ? this.#neighbours(from, own)
        : this.#tangents(point, obstacle).filter((to) => this.touches(from, this.corner(to)));
    const found = ends.map((to) => this.#sight(point, to));
    this.#sights.set(key, found);
    return found;
  }

  /** True when the line from the corner to the point leaves the corner's own obstacle on one side. */
  touches(from: number, to: Vec2<F>): boolean {
    const { point, before, after } = this.#at(from);
    return leftOf(point, to, before) * leftOf(point, to, after) >= 0;
  }

  #sight(from: Vec2<F>, to: number, free?: ReadonlySet<number>): Sight {
    const corner = this.corner(to);
    return { to, length: gap(from, corner), blockedBy: this.blockers(from, corner, free) };
  }

  /** Usable neighbours of a corner on its own obstacle's outline. */
  #neighbours(from: number, obstacle: number): number[] {
    const first = this.#first[obstacle] ?? 0;
    const count = this.#obstacles[obstacle]?.corners.length ?? 0;
    return [1, count - 1]
      .map((step) => first + ((from - first + step) % count))
      .filter((to) => this.#usable[to]);
  }

  /** Numbers of an obstacle's usable corners at which a line from the point touches it. */
  #tangents(point: Vec2<F>, obstacle: number): number[] {
    const corners = this.#obstacles[obstacle]?.corners ?? [];
    const first = this.#first[obstacle] ?? 0;
    const found: number[] = [];
    let before = leftOf(at(corners, -1), at(corners, 0), point);
    for (let i = 0; i < corners.length; i += 1) {
      const after = leftOf(at(corners, i), at(corners, i + 1), point);
      if (before * after <= 0 && this.#usable[first + i]) found.push(first + i);
      before = after;
    }
    return found;
  }

  #at(number: number): Corner<F> {
    const corner = this.#corners[number];
    if (!corner) throw new RangeError(`There is no corner ${number}.`);
    return corner;
  }
}

interface Corner<F extends Frame> {
  readonly point: Vec2<F>;
  readonly before: Vec2<F>;
  readonly after: Vec2<F>;
  readonly obstacle: number;
}
