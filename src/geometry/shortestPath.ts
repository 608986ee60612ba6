import type { Mm } from '../units/quantity.ts';
import type { ConvexPolygon } from './convexPolygon.ts';
import { gap, type Rectangle } from './plan.ts';
import { PriorityQueue } from './priorityQueue.ts';
import { bendsRound, type Corner, Tangents } from './tangents.ts';
import type { Frame, Vec2 } from './vector.ts';

/** One end of a way; the stretch that begins or ends here may pass through the obstacles in `free` (places in the list). */
export interface WayEnd<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly free?: ReadonlySet<number>;
}

/** A shortest way: its points from end to end, and its length in mm. */
export interface Way<F extends Frame = 'kit'> {
  readonly points: readonly Vec2<F>[];
  readonly length: Mm;
  /** The obstacles it rests on (places in the list): were all others taken away, no way would be shorter. */
  readonly restsOn: readonly number[];
}

export interface Router<F extends Frame = 'kit'> {
  /** The shortest way among the obstacles; undefined when there is none. Of several, always the same one. */
  route(from: WayEnd<F>, to: WayEnd<F>): Way<F> | undefined;
}

/**
 * Shortest ways among convex obstacles on the plan, which may overlap; within `region` where one is given.
 *
 * P1 Best-first search with the straight distance ahead (A*) over ends and corners. Whether a stretch is free is tested
 *    only when its turn comes.
 * P2 Only corners of obstacles that have joined the search are tried, at first none. A stretch that passes through none of
 *    those but through another lets that one join: every place reached so far then gets ways to its corners. What is still
 *    to be tried is never longer than the shortest way of all, because with fewer obstacles ways can only be shorter. So the first
 *    free way to the end is the shortest.
 */
export function createRouter<F extends Frame>(
  obstacles: readonly ConvexPolygon<F>[],
  region?: Rectangle<F>,
): Router<F> {
  const tangents = new Tangents(obstacles, region);
  return { route: (from, to) => new Search(tangents, from, to).run() };
}

/** A place that a free way leads to. No corner: the start. */
interface Reached<F extends Frame> {
  readonly point: Vec2<F>;
  readonly corner: Corner<F> | undefined;
  readonly cost: Mm;
  readonly back: Reached<F> | undefined;
}

/** A stretch still to be tried, to a corner or, without one, to the end. */
interface Trial<F extends Frame> {
  readonly back: Reached<F>;
  readonly to: Corner<F> | undefined;
  readonly cost: Mm;
}

class Search<F extends Frame> {
  readonly #tangents: Tangents<F>;
  readonly #from: WayEnd<F>;
  readonly #to: WayEnd<F>;
  readonly #trials = new PriorityQueue<Trial<F>>();
  readonly #reached: Reached<F>[] = [];
  readonly #reachedCorners = new Set<number>();
  /** P2: the obstacles that have joined. */
  readonly #joined: number[] = [];

  constructor(tangents: Tangents<F>, from: WayEnd<F>, to: WayEnd<F>) {
    this.#tangents = tangents;
    this.#from = from;
    this.#to = to;
  }

  run(): Way<F> | undefined {
    this.#reach({ point: this.#from.point, corner: undefined, cost: 0, back: undefined });
    for (let next = this.#trials.pop(); next; next = this.#trials.pop()) {
      const { back, to, cost } = next;
      if (to && this.#reachedCorners.has(to.number)) continue;
      const point = to ? to.point : this.#to.point;
      const free = this.#freeFor(next);
      if (this.#tangents.isBlocked(back.point, point, { by: this.#joined, free })) continue;
      const blocker = this.#tangents.firstBlocker(back.point, point, free);
      const reached = { point, corner: to, cost, back };
      if (blocker !== undefined) this.#join(blocker);
      else if (!to) return { points: pointsTo(reached), length: cost, restsOn: this.#joined };
      else this.#reach(reached);
    }
    return undefined;
  }

  #reach(place: Reached<F>): void {
    this.#reached.push(place);
    if (place.corner) this.#reachedCorners.add(place.corner.number);
    for (const obstacle of this.#joined) this.#tryCorners(place, obstacle);
    const { corner, back, point } = place;
    if (corner && back && !bendsRound(corner, back.point, this.#to.point)) return;
    const cost = place.cost + gap(point, this.#to.point);
    this.#trials.push(cost, { back: place, to: undefined, cost });
  }

  /** Never one that has joined: what those block is never looked at further. */
  #join(obstacle: number): void {
    this.#joined.push(obstacle);
    for (const place of this.#reached) this.#tryCorners(place, obstacle);
  }

  #tryCorners(place: Reached<F>, obstacle: number): void {
    const { point, corner, back, cost } = place;
    const ends =
      corner && back
        ? this.#tangents.fromCorner(back.point, corner, obstacle)
        : this.#tangents.fromPoint(point, obstacle);
    for (const to of ends) {
      if (this.#reachedCorners.has(to.number)) continue;
      const whole = cost + gap(point, to.point);
      const ahead = gap(to.point, this.#to.point);
      this.#trials.push(whole + ahead, { back: place, to, cost: whole });
    }
  }

  #freeFor({ back, to }: Trial<F>): ReadonlySet<number> | undefined {
    const atStart = back.corner ? undefined : this.#from.free;
    const atEnd = to ? undefined : this.#to.free;
    return atStart && atEnd ? new Set([...atStart, ...atEnd]) : (atStart ?? atEnd);
  }
}

function pointsTo<F extends Frame>(end: Reached<F>): Vec2<F>[] {
  const points: Vec2<F>[] = [];
  for (let place: Reached<F> | undefined = end; place; place = place.back) points.push(place.point);
  return points.reverse();
}
