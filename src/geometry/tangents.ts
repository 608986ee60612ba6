import { type ConvexPolygon, isInside, passesThrough } from './convexPolygon.ts';
import { leftOf } from './orientation.ts';
import { gap, holds, type Rectangle } from './plan.ts';
import { at } from './ring.ts';
import { type Ahead, Sieve } from './sieve.ts';
import type { Frame, Vec2 } from './vector.ts';

/** A corner of an obstacle, with its neighbours on the outline, anticlockwise. */
export interface Corner<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly before: Vec2<F>;
  readonly after: Vec2<F>;
  /** Its place in the list of all corners, and its obstacle's in the list of obstacles. */
  readonly number: number;
  readonly obstacle: number;
  /** False outside the region (V3). */
  readonly isUsable: boolean;
}

/** On which side of a stretch that begins or ends at a corner the corner's obstacle lies. */
export type Side = 'left' | 'right' | 'none' | 'across';

/** A corner that can be reached from a place, and on which side the place's own obstacle then lies. */
export interface Touch<F extends Frame = 'kit'> {
  readonly to: Place<F>;
  readonly corner: Corner<F>;
  readonly side: Side;
}

/** A point where ways begin, bend or end. Made by {@link Tangents}, which keeps here what it has found out. */
export class Place<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly corner: Corner<F> | undefined;
  /** Obstacles that don't count for the stretches that begin or end here. */
  readonly free: ReadonlySet<number> | undefined;
  /** The obstacles that have the place strictly inside, if it is a corner: no way leads over it. */
  readonly buriedIn: readonly number[];
  /** What blocks the stretch to each corner, by the corner's number. */
  blockers: Map<number, readonly number[]> | undefined;
  /** Where lines from here touch each obstacle. */
  touches: Map<number, readonly Touch<F>[]> | undefined;

  constructor(
    point: Vec2<F>,
    corner: Corner<F> | undefined,
    free: ReadonlySet<number> | undefined,
    buriedIn: readonly number[],
  ) {
    this.point = point;
    this.corner = corner;
    this.free = free;
    this.buriedIn = buriedIn;
    this.blockers = undefined;
    this.touches = undefined;
  }
}

/**
 * The straight ways among the corners of convex obstacles that a shortest path can use. Obstacles may overlap.
 *
 * V1 A shortest path among obstacles bends only at their corners, and at a corner only round the obstacle it belongs to: so
 *    the line of each stretch leaves that obstacle on one side (a tangent), the same before and after, and the path turns to
 *    that side or goes straight on.
 * V2 A stretch is blocked by an obstacle whose inside it passes through; touching is free.
 * V3 Corners outside `region` (a rectangle) are not used. Between two points of a rectangle the straight way stays in it.
 * V4 Nothing is worked out before it is asked for, nor a second time: ways through the same parts share it.
 */
export class Tangents<F extends Frame> {
  readonly #obstacles: readonly ConvexPolygon<F>[];
  readonly #region: Rectangle<F> | undefined;
  /** The number of each obstacle's first corner; its corners where they have been asked for. */
  readonly #numbers: number[] = [];
  readonly #corners: (readonly Corner<F>[] | undefined)[] = [];
  readonly #places: (Place<F> | undefined)[] = [];
  readonly #sieve: Sieve<F>;
  /** Touches found last: a list of just the right size is made of them. */
  readonly #found: Touch<F>[] = [];

  constructor(obstacles: readonly ConvexPolygon<F>[], region: Rectangle<F> | undefined) {
    let number = 0;
    this.#obstacles = obstacles;
    this.#region = region;
    for (const { corners } of obstacles) {
      this.#numbers.push(number);
      number += corners.length;
    }
    this.#sieve = new Sieve(obstacles);
  }

  /** A place that is no corner. */
  place(point: Vec2<F>, free?: ReadonlySet<number>): Place<F> {
    return new Place(point, undefined, free, NONE);
  }

  /** The obstacles that block the straight stretch between two places, first to last, without those free for one of them (V2). */
  blockers(p: Place<F>, q: Place<F>): readonly number[] {
    const corner = p.corner && q.corner && p.corner.number > q.corner.number ? p : q;
    const number = corner.corner?.number;
    if (number === undefined) return p.corner ? this.blockers(q, p) : this.#onTheWay(p, q);
    const row = corner === q ? p : q;
    row.blockers ??= new Map();
    const known = row.blockers.get(number);
    if (known) return known;
    const found = this.#onTheWay(p, q);
    row.blockers.set(number, found);
    return found;
  }

  /** Corners of one obstacle that a way from a place can go to: where a line from there touches it, or next on its outline. */
  touches(place: Place<F>, obstacle: number): readonly Touch<F>[] {
    place.touches ??= new Map();
    const known = place.touches.get(obstacle);
    if (known) return known;
    const found = this.#touchesFrom(place, obstacle);
    place.touches.set(obstacle, found);
    return found;
  }

  /** False where no corner of the obstacle lies ahead; true where one may. */
  mayLieAhead(ahead: Ahead, obstacle: number): boolean {
    return this.#sieve.mayLieAhead(ahead, obstacle);
  }

  #touchesFrom(place: Place<F>, obstacle: number): readonly Touch<F>[] {
    const { corner } = place;
    const corners = this.#cornersOf(obstacle);
    if (corner?.obstacle === obstacle) {
      const i = corner.number - (corners[0]?.number ?? 0);
      const count = this.#addTouch(place, at(corners, i + 1), 0);
      return this.#found.slice(0, this.#addTouch(place, at(corners, i - 1), count));
    }
    // Where a line from the point touches the outline, its edges turn from one side to the other.
    let before: number | undefined;
    let count = 0;
    for (const end of corners) {
      before ??= leftOf(end.before, end.point, place.point);
      const after = leftOf(end.point, end.after, place.point);
      if (before * after <= 0) count = this.#addTouch(place, end, count);
      before = after;
    }
    return this.#found.slice(0, count);
  }

  /** Adds a touch to the first `count` found; how many there are then. */
  #addTouch({ point, corner }: Place<F>, end: Corner<F>, count: number): number {
    const side = corner ? sideOf(corner, point, end.point) : 'none';
    if (side === 'across' || !end.isUsable) return count;
    this.#found[count] = { to: this.#placeOf(end), corner: end, side };
    return count + 1;
  }

  #cornersOf(obstacle: number): readonly Corner<F>[] {
    const known = this.#corners[obstacle];
    if (known) return known;
    const points = this.#obstacles[obstacle]?.corners ?? [];
    const first = this.#numbers[obstacle] ?? 0;
    const corners = points.map((point, i) => ({
      point,
      before: at(points, i - 1),
      after: at(points, i + 1),
      number: first + i,
      obstacle,
      isUsable: !this.#region || holds(this.#region, point),
    }));
    this.#corners[obstacle] = corners;
    return corners;
  }

  #placeOf(corner: Corner<F>): Place<F> {
    const { point, number } = corner;
    const known = this.#places[number];
    if (known) return known;
    const place = new Place(point, corner, undefined, this.holding(point));
    this.#places[number] = place;
    return place;
  }

  /** The obstacles that have a point strictly inside, in order. */
  holding(point: Vec2<F>): readonly number[] {
    let holding: number[] | undefined;
    const count = this.#sieve.findNear(point, point);
    for (let k = 0; k < count; k += 1) {
      const i = this.#sieve.found[k] ?? 0;
      const obstacle = this.#obstacles[i];
      if (!obstacle || !isInside(obstacle, point)) continue;
      holding ??= [];
      holding.push(i);
    }
    return holding ?? NONE;
  }

  #onTheWay(p: Place<F>, q: Place<F>): readonly number[] {
    const a = p.point;
    const b = q.point;
    const { found } = this.#sieve;
    const near = this.#sieve.findNear(a, b);
    let passed: number[] | undefined;
    for (let k = 0; k < near; k += 1) {
      const i = found[k] ?? 0;
      if (p.free?.has(i) || q.free?.has(i)) continue;
      const obstacle = this.#obstacles[i];
      const passes =
        this.#sieve.passes(a, b, i) ?? (obstacle !== undefined && passesThrough(obstacle, a, b));
      if (!passes) continue;
      if (passed) passed.push(i);
      else passed = [i];
    }
    return passed ?? NONE;
  }
}

const NONE: readonly number[] = [];

type Bend<F extends Frame> = Pick<Corner<F>, 'point' | 'before' | 'after'>;

/** On which side of the stretch from a to b, one of which is the corner, the corner's obstacle lies. */
export function sideOf<F extends Frame>({ before, after }: Bend<F>, a: Vec2<F>, b: Vec2<F>): Side {
  const p = leftOf(a, b, before);
  const q = leftOf(a, b, after);
  if (p >= 0 && q >= 0) return p > 0 || q > 0 ? 'left' : 'none';
  return p <= 0 && q <= 0 ? 'right' : 'across';
}

/** V1: whether a path from `from` over the corner to `to` is bent round the corner's obstacle, or straight along it. */
export const bendsRound = <F extends Frame>(corner: Bend<F>, from: Vec2<F>, to: Vec2<F>): boolean =>
  turnsRound(corner.point, {
    from,
    cameBy: sideOf(corner, from, corner.point),
    to,
    goesBy: sideOf(corner, corner.point, to),
  });

/** A path over a corner: where from, where to, and on which side the corner's obstacle lies on both stretches. */
export interface Turn<F extends Frame> {
  readonly from: Vec2<F>;
  readonly cameBy: Side;
  readonly to: Vec2<F>;
  readonly goesBy: Side;
}

/** {@link bendsRound}, with the sides known already. */
export function turnsRound<F extends Frame>(
  corner: Vec2<F>,
  { from, cameBy, to, goesBy }: Turn<F>,
): boolean {
  if (cameBy === 'across' || goesBy === 'across') return false;
  // A stretch of no length has no direction: the corner stands on another one.
  if (cameBy === 'none' || goesBy === 'none') return true;
  if (cameBy !== goesBy) return false;
  const turn = leftOf(from, corner, to);
  return cameBy === 'left' ? turn >= 0 : turn <= 0;
}

/** V1: where a path that comes from `from` over a corner can go on to: from straight ahead round to the next edge of its obstacle. */
export function aheadOf<F extends Frame>(
  { point, before, after }: Bend<F>,
  from: Vec2<F>,
  cameBy: Side,
): Ahead | undefined {
  if (cameBy !== 'left' && cameBy !== 'right') return undefined;
  const turn = cameBy === 'left' ? 1 : -1;
  const edge = cameBy === 'left' ? after : before;
  const first = gap(from, point);
  const last = gap(point, edge);
  if (first === 0 || last === 0) return undefined;
  return {
    x: point.x,
    y: point.y,
    firstX: (-turn * (point.y - from.y)) / first,
    firstY: (turn * (point.x - from.x)) / first,
    lastX: (turn * (edge.y - point.y)) / last,
    lastY: (-turn * (edge.x - point.x)) / last,
  };
}
