import type { Mm } from '../units/quantity.ts';
import type { ConvexPolygon } from './convexPolygon.ts';
import { gap, type Rectangle } from './plan.ts';
import { PriorityQueue } from './priorityQueue.ts';
import type { Ahead } from './sieve.ts';
import { aheadOf, type Place, type Side, sideOf, Tangents, turnsRound } from './tangents.ts';
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

/** A place that a free way leads to. No way back: the start. */
interface Reached<F extends Frame> {
  readonly place: Place<F>;
  readonly cost: Mm;
  readonly back: Reached<F> | undefined;
  /** On which side the place's obstacle lies on the stretch that leads to it. */
  readonly cameBy: Side;
  /** Where the way can go on to; undefined: anywhere. */
  readonly ahead: Ahead | undefined;
}

/** A stretch still to be tried, to a corner or to the end. */
interface Trial<F extends Frame> {
  readonly back: Reached<F>;
  readonly to: Place<F>;
  readonly cost: Mm;
}

class Search<F extends Frame> {
  readonly #tangents: Tangents<F>;
  readonly #from: Place<F>;
  readonly #to: Place<F>;
  readonly #trials = new PriorityQueue<Trial<F>>();
  readonly #reached: Reached<F>[] = [];
  readonly #reachedCorners = new Set<number>();
  /** P2: the obstacles that have joined. */
  readonly #joined: number[] = [];

  constructor(tangents: Tangents<F>, from: WayEnd<F>, to: WayEnd<F>) {
    this.#tangents = tangents;
    this.#from = tangents.place(from.point, from.free);
    this.#to = tangents.place(to.point, to.free);
  }

  run(): Way<F> | undefined {
    const start = { place: this.#from, cost: 0, back: undefined, cameBy: 'none' } as const;
    this.#reach({ ...start, ahead: undefined });
    for (let next = this.#trials.pop(); next; next = this.#trials.pop()) {
      const { back, to, cost } = next;
      const { corner } = to;
      if (corner && this.#reachedCorners.has(corner.number)) continue;
      const blockers = this.#tangents.blockers(back.place, to);
      if (blockers.some((obstacle) => this.#joined.includes(obstacle))) continue;
      const cameBy = corner ? sideOf(corner, back.place.point, corner.point) : 'none';
      const ahead = corner && aheadOf(corner, back.place.point, cameBy);
      const reached = { place: to, cost, back, cameBy, ahead };
      const [blocker] = blockers;
      if (blocker !== undefined) this.#join(blocker);
      else if (!corner) return { points: pointsTo(reached), length: cost, restsOn: this.#joined };
      else this.#reach(reached);
    }
    return undefined;
  }

  #reach(reached: Reached<F>): void {
    const { place, back, cost } = reached;
    this.#reached.push(reached);
    if (place.corner) this.#reachedCorners.add(place.corner.number);
    for (const obstacle of this.#joined) this.#tryCorners(reached, obstacle);
    const { corner, point } = place;
    if (corner && back) {
      const goesBy = sideOf(corner, point, this.#to.point);
      const turn = { from: back.place.point, cameBy: reached.cameBy, to: this.#to.point, goesBy };
      if (!turnsRound(point, turn)) return;
    }
    const whole = cost + gap(point, this.#to.point);
    this.#trials.push(whole, { back: reached, to: this.#to, cost: whole });
  }

  /** Never one that has joined: what those block is never looked at further. */
  #join(obstacle: number): void {
    this.#joined.push(obstacle);
    for (const reached of this.#reached) this.#tryCorners(reached, obstacle);
  }

  #tryCorners(reached: Reached<F>, obstacle: number): void {
    const { place, back, cost, cameBy, ahead } = reached;
    if (ahead && !this.#tangents.mayLieAhead(ahead, obstacle)) return;
    for (const { to, corner, side } of this.#tangents.touches(place, obstacle)) {
      if (this.#reachedCorners.has(corner.number) || !this.#canReach(to)) continue;
      const turn = back && { from: back.place.point, cameBy, to: to.point, goesBy: side };
      if (turn && !turnsRound(place.point, turn)) continue;
      const whole = cost + gap(place.point, to.point);
      this.#trials.push(whole + gap(to.point, this.#to.point), { back: reached, to, cost: whole });
    }
  }

  /** Only a first stretch can lead to a corner inside an obstacle that has joined: one that is free for it. */
  #canReach({ buriedIn }: Place<F>): boolean {
    return buriedIn.every(
      (obstacle) => !this.#joined.includes(obstacle) || this.#from.free?.has(obstacle) === true,
    );
  }
}

function pointsTo<F extends Frame>(end: Reached<F>): Vec2<F>[] {
  const points: Vec2<F>[] = [];
  for (let last: Reached<F> | undefined = end; last; last = last.back)
    points.push(last.place.point);
  return points.reverse();
}
