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
}

/** On which side of a stretch that begins or ends at a corner the corner's obstacle lies. */
export type Side = 'left' | 'right' | 'none' | 'across';

/** What has been found out about one thing after another, the last first: of most places a few, which are found sooner in a row than in a table. */
interface Known<Value> {
  readonly about: number;
  readonly value: Value;
  readonly before: Known<Value> | undefined;
}

function knownOf<Value>(last: Known<Value> | undefined, about: number): Value | undefined {
  for (let known = last; known; known = known.before) {
    if (known.about === about) return known.value;
  }
  return undefined;
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
  blockers: Known<readonly number[]> | undefined;
  /** Where lines from here touch each obstacle, by the obstacle's. */
  touches: Known<readonly Touch<F>[]> | undefined;

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

/** The place of a corner. */
export type CornerPlace<F extends Frame = 'kit'> = Place<F> & { readonly corner: Corner<F> };

/** A corner that can be reached from a place, and on which side the place's own obstacle then lies. */
export interface Touch<F extends Frame = 'kit'> {
  readonly to: CornerPlace<F>;
  readonly side: Side;
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
  /** The number of each obstacle's first corner, and the places of all corners that have been asked for. */
  readonly #numbers: number[] = [];
  readonly #places: (CornerPlace<F> | undefined)[];
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
    this.#places = new Array(number);
    this.#sieve = new Sieve(obstacles);
  }

  /** How many obstacles there are, and corners of theirs. */
  get obstacleCount(): number {
    return this.#obstacles.length;
  }

  get cornerCount(): number {
    return this.#places.length;
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
    const known = knownOf(row.blockers, number);
    if (known) return known;
    const found = this.#onTheWay(p, q);
    row.blockers = { about: number, value: found, before: row.blockers };
    return found;
  }

  /** Corners of one obstacle that a way from a place can go to: where a line from there touches it, or next on its outline. */
  touches(place: Place<F>, obstacle: number): readonly Touch<F>[] {
    const known = knownOf(place.touches, obstacle);
    if (known) return known;
    const found = this.#touchesFrom(place, obstacle);
    place.touches = { about: obstacle, value: found, before: place.touches };
    return found;
  }

  /** False where no corner of the obstacle lies ahead; true where one may. */
  mayLieAhead(ahead: Ahead, obstacle: number): boolean {
    return this.#sieve.mayLieAhead(ahead, obstacle);
  }

  #touchesFrom(place: Place<F>, obstacle: number): readonly Touch<F>[] {
    const { corner, point } = place;
    const corners = this.#cornersOf(obstacle);
    const last = corners.length - 1;
    if (last < 0) return NO_TOUCHES;
    if (corner?.obstacle === obstacle) {
      const i = corner.number - (this.#numbers[obstacle] ?? 0);
      const count = this.#addTouch(place, obstacle, i < last ? i + 1 : 0, 0);
      return this.#found.slice(0, this.#addTouch(place, obstacle, i > 0 ? i - 1 : last, count));
    }
    // Where a line from the point touches the outline, its edges turn from one side to the other.
    let count = 0;
    let end = at(corners, 0);
    let before = leftOf(at(corners, last), end, point);
    for (let i = 0; i <= last; i += 1) {
      const next = corners[i < last ? i + 1 : 0] as Vec2<F>;
      const after = leftOf(end, next, point);
      if (before * after <= 0) count = this.#addTouch(place, obstacle, i, count);
      before = after;
      end = next;
    }
    return this.#found.slice(0, count);
  }

  /** Adds a touch of an obstacle's `i`th corner to the first `count` found; how many there are then. */
  #addTouch({ point, corner }: Place<F>, obstacle: number, i: number, count: number): number {
    const end = at(this.#cornersOf(obstacle), i);
    if (this.#region && !holds(this.#region, end)) return count;
    const side = corner ? sideOf(corner, point, end) : 'none';
    if (side === 'across') return count;
    this.#found[count] = { to: this.#placeOf(obstacle, i), side };
    return count + 1;
  }

  #cornersOf(obstacle: number): readonly Vec2<F>[] {
    return this.#obstacles[obstacle]?.corners ?? [];
  }

  /** The place of an obstacle's `i`th corner. */
  #placeOf(obstacle: number, i: number): CornerPlace<F> {
    const number = (this.#numbers[obstacle] ?? 0) + i;
    const known = this.#places[number];
    if (known) return known;
    const corners = this.#cornersOf(obstacle);
    const point = at(corners, i);
    const before = at(corners, i - 1);
    const after = at(corners, i + 1);
    const corner = { point, before, after, number, obstacle };
    const place = new Place(point, corner, undefined, this.holding(point)) as CornerPlace<F>;
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
const NO_TOUCHES: readonly never[] = [];

type Bend<F extends Frame> = Pick<Corner<F>, 'point' | 'before' | 'after'>;

/** On which side of the stretch from a to b, one of which is the corner, the corner's obstacle lies. */
export function sideOf<F extends Frame>({ before, after }: Bend<F>, a: Vec2<F>, b: Vec2<F>): Side {
  const p = leftOf(a, b, before);
  const q = leftOf(a, b, after);
  if (p >= 0 && q >= 0) return p > 0 || q > 0 ? 'left' : 'none';
  return p <= 0 && q <= 0 ? 'right' : 'across';
}

/** V1: whether a path from `from` over the corner to `to` is bent round the corner's obstacle, or straight along it. */
export function bendsRound<F extends Frame>(corner: Bend<F>, from: Vec2<F>, to: Vec2<F>): boolean {
  const { point } = corner;
  const side = commonSide(sideOf(corner, from, point), sideOf(corner, point, to));
  return turnsRound(side, from, point, to);
}

/** On which side a corner's obstacle lies on both stretches of a path over it: 'across' where it does not stay on one. */
export function commonSide(cameBy: Side, goesBy: Side): Side {
  if (cameBy === 'across' || goesBy === 'across') return 'across';
  // A stretch of no length has no direction: the corner stands on another one.
  if (cameBy === 'none' || goesBy === 'none') return 'none';
  return cameBy === goesBy ? cameBy : 'across';
}

/** {@link bendsRound}, with the common side known already. */
export function turnsRound<F extends Frame>(
  side: Side,
  from: Vec2<F>,
  corner: Vec2<F>,
  to: Vec2<F>,
): boolean {
  if (side === 'across') return false;
  if (side === 'none') return true;
  const turn = leftOf(from, corner, to);
  return side === 'left' ? turn >= 0 : turn <= 0;
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
