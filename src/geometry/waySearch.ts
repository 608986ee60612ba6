import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import { PriorityQueue } from './priorityQueue.ts';
import type { Ahead } from './sieve.ts';
import {
  aheadOf,
  type Corner,
  type CornerPlace,
  commonSide,
  Place,
  type Side,
  sideOf,
  type Tangents,
  turnsRound,
} from './tangents.ts';
import type { Frame, Vec2 } from './vector.ts';

/** Where a way may end, and what ending there adds to its length. Where no place is known for the point, one is made when it is tried. */
export interface Landing<F extends Frame> {
  readonly point: Vec2<F>;
  readonly place: Place<F> | undefined;
  readonly rest: Mm;
}

/** All the places where a way may end. */
export interface Goals<F extends Frame, L extends Landing<F>> {
  /** No more than what is still to come from a point: the straight distance to some landing and its rest. */
  ahead(point: Vec2<F>): Mm;
  /** Where a way of some length so far, straight on from a point, may end. */
  from(point: Vec2<F>, length: Mm): readonly L[];
  /** Whether a way may end there after all: asked only for the best. */
  accepts(landing: L, place: Place<F>): boolean;
}

/** A shortest way to one of the goals: its places from end to end, and its length without the landing's rest. */
export interface FoundWay<F extends Frame, L extends Landing<F>> {
  readonly places: readonly Place<F>[];
  readonly length: Mm;
  readonly landing: L;
  /** The obstacles it rests on: were all others taken away, no way would be shorter. */
  readonly restsOn: readonly number[];
}

/** A place that a free way leads to. No way back: the start. */
interface Reached<F extends Frame> {
  readonly place: Place<F>;
  readonly length: Mm;
  readonly back: Reached<F> | undefined;
  /** On which side the place's obstacle lies on the stretch that leads to it. */
  readonly cameBy: Side;
  /** Where the way can go on to; undefined: anywhere. */
  readonly ahead: Ahead | undefined;
}

/** What one search is for, and how far it has come. */
interface Task<F extends Frame, L extends Landing<F>> {
  readonly from: Place<F>;
  readonly goals: Goals<F, L>;
  /** What could not end below this is never tried. */
  readonly below: Mm;
  readonly reached: Reached<F>[];
  /** P2: the obstacles that have joined. */
  readonly joined: number[];
}

/**
 * Searches for the shortest way from a place to any of several goals, each with a rest of its own, among convex obstacles. One after the
 * other: the lists of one serve the next.
 *
 * P1 Best-first search with the straight distance ahead (A*) over start, corners and landings. Whether a stretch is free is
 *    tested only when its turn comes.
 * P2 Only corners of obstacles that have joined the search are tried, at first none. A stretch that passes through none of
 *    those but through another lets that one join: every place reached so far then gets ways to its corners. What is still
 *    to be tried is never longer than the shortest way of all, because with fewer obstacles ways can only be shorter. So the first
 *    free way to a goal is the shortest.
 */
export class WaySearch<F extends Frame, L extends Landing<F>> {
  readonly #tangents: Tangents<F>;
  /** Stretches still to be tried, by number: where from, the length with them, and to which corner or landing. */
  readonly #trials = new PriorityQueue<number>();
  readonly #backs: Reached<F>[] = [];
  readonly #lengths: Mm[] = [];
  readonly #targets: (CornerPlace<F> | L)[] = [];
  #count = 0;
  /** By a corner's or an obstacle's number: the last search that has reached it, or that it has joined. */
  readonly #reachedIn: Uint32Array;
  readonly #joinedIn: Uint32Array;
  #search = 0;

  constructor(tangents: Tangents<F>) {
    this.#tangents = tangents;
    this.#reachedIn = new Uint32Array(tangents.cornerCount);
    this.#joinedIn = new Uint32Array(tangents.obstacleCount);
  }

  /** The way whose length and rest together are least and below `below`; undefined where there is none. */
  run(from: Place<F>, goals: Goals<F, L>, below: Mm): FoundWay<F, L> | undefined {
    this.#trials.clear();
    this.#count = 0;
    this.#search += 1;
    const task: Task<F, L> = { from, goals, below, reached: [], joined: [] };
    this.#reach(task, startAt(from));
    for (let next = this.#trials.pop(); next !== undefined; next = this.#trials.pop()) {
      const found = this.#try(task, next);
      if (found) return found;
    }
    return undefined;
  }

  #try(task: Task<F, L>, trial: number): FoundWay<F, L> | undefined {
    const back = this.#backs[trial] as Reached<F>;
    const length = this.#lengths[trial] as Mm;
    const target = this.#targets[trial] as CornerPlace<F> | L;
    const isCorner = target instanceof Place;
    if (isCorner && this.#isReached(target.corner)) return undefined;
    const to = isCorner ? target : (target.place ?? this.#tangents.place(target.point));
    const blockers = this.#tangents.blockers(back.place, to);
    for (const obstacle of blockers) if (this.#hasJoined(obstacle)) return undefined;
    const blocker = blockers[0];
    if (blocker !== undefined) {
      this.#join(task, blocker);
      return undefined;
    }
    if (!isCorner) {
      if (!task.goals.accepts(target, to)) return undefined;
      return { places: [...placesTo(back), to], length, landing: target, restsOn: task.joined };
    }
    const from = back.place.point;
    const cameBy = sideOf(target.corner, from, target.point);
    const ahead = aheadOf(target.corner, from, cameBy);
    this.#reach(task, { place: to, length, back, cameBy, ahead });
    return undefined;
  }

  #isReached(corner: Corner<F>): boolean {
    return this.#reachedIn[corner.number] === this.#search;
  }

  #hasJoined(obstacle: number): boolean {
    return this.#joinedIn[obstacle] === this.#search;
  }

  #reach(task: Task<F, L>, reached: Reached<F>): void {
    const { place, length } = reached;
    task.reached.push(reached);
    if (place.corner) this.#reachedIn[place.corner.number] = this.#search;
    for (const obstacle of task.joined) this.#tryCorners(task, reached, obstacle);
    for (const landing of task.goals.from(place.point, length)) {
      const whole = length + gap(place.point, landing.point);
      const key = whole + landing.rest;
      if (key >= task.below || !turnsTo(reached, landing.point)) continue;
      this.#push(key, reached, whole, landing);
    }
  }

  #push(key: Mm, back: Reached<F>, length: Mm, target: CornerPlace<F> | L): void {
    const trial = this.#count;
    this.#count += 1;
    this.#backs[trial] = back;
    this.#lengths[trial] = length;
    this.#targets[trial] = target;
    this.#trials.push(key, trial);
  }

  /** Never one that has joined: what those block is never looked at further. */
  #join(task: Task<F, L>, obstacle: number): void {
    this.#joinedIn[obstacle] = this.#search;
    task.joined.push(obstacle);
    for (const reached of task.reached) this.#tryCorners(task, reached, obstacle);
  }

  #tryCorners(task: Task<F, L>, reached: Reached<F>, obstacle: number): void {
    const { place, back, length, cameBy, ahead } = reached;
    if (ahead && !this.#tangents.mayLieAhead(ahead, obstacle)) return;
    for (const { to, side } of this.#tangents.touches(place, obstacle)) {
      if (this.#isReached(to.corner) || !this.#canReach(task, to)) continue;
      const common = commonSide(cameBy, side);
      if (back && !turnsRound(common, back.place.point, place.point, to.point)) continue;
      const whole = length + gap(place.point, to.point);
      const key = whole + task.goals.ahead(to.point);
      if (key < task.below) this.#push(key, reached, whole, to);
    }
  }

  /** Only a first stretch can lead to a corner inside an obstacle that has joined: one that is free for it. */
  #canReach({ from }: Task<F, L>, { buriedIn }: Place<F>): boolean {
    for (const obstacle of buriedIn) {
      if (this.#hasJoined(obstacle) && !from.free?.has(obstacle)) return false;
    }
    return true;
  }
}

const startAt = <F extends Frame>(place: Place<F>): Reached<F> => ({
  place,
  length: 0,
  back: undefined,
  cameBy: 'none',
  ahead: undefined,
});

function turnsTo<F extends Frame>(
  { place: { corner, point }, back, cameBy }: Reached<F>,
  to: Vec2<F>,
): boolean {
  if (!corner || !back) return true;
  return turnsRound(commonSide(cameBy, sideOf(corner, point, to)), back.place.point, point, to);
}

function placesTo<F extends Frame>(end: Reached<F>): Place<F>[] {
  const places: Place<F>[] = [];
  for (let last: Reached<F> | undefined = end; last; last = last.back) places.push(last.place);
  return places.reverse();
}
