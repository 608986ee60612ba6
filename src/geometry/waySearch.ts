import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import { PriorityQueue } from './priorityQueue.ts';
import type { Ahead } from './sieve.ts';
import { aheadOf, type Place, type Side, sideOf, type Tangents, turnsRound } from './tangents.ts';
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

/** A stretch still to be tried, to a corner or to a landing. */
interface Trial<F extends Frame, L> {
  readonly back: Reached<F>;
  /** Undefined for a landing without a place yet. */
  readonly to: Place<F> | undefined;
  readonly length: Mm;
  readonly landing: L | undefined;
}

/**
 * The search for the shortest way from a place to any of several goals, each with a rest of its own, among convex obstacles.
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
  readonly #from: Place<F>;
  readonly #goals: Goals<F, L>;
  readonly #trials = new PriorityQueue<Trial<F, L>>();
  readonly #reached: Reached<F>[] = [];
  readonly #reachedCorners = new Set<number>();
  /** P2: the obstacles that have joined. */
  readonly #joined: number[] = [];
  /** What could not end below this is never tried. */
  #below: Mm = Number.POSITIVE_INFINITY;

  constructor(tangents: Tangents<F>, from: Place<F>, goals: Goals<F, L>) {
    this.#tangents = tangents;
    this.#from = from;
    this.#goals = goals;
  }

  /** The way whose length and rest together are least and below `below`; undefined where there is none. */
  run(below: Mm): FoundWay<F, L> | undefined {
    this.#below = below;
    this.#reach({
      place: this.#from,
      length: 0,
      back: undefined,
      cameBy: 'none',
      ahead: undefined,
    });
    for (let next = this.#trials.pop(); next; next = this.#trials.pop()) {
      const found = this.#try(next);
      if (found) return found;
    }
    return undefined;
  }

  #try({ back, to: known, length, landing }: Trial<F, L>): FoundWay<F, L> | undefined {
    const to = known ?? (landing && this.#tangents.place(landing.point));
    if (!to) return undefined;
    const corner = landing ? undefined : to.corner;
    if (corner && this.#reachedCorners.has(corner.number)) return undefined;
    const blockers = this.#tangents.blockers(back.place, to);
    for (const obstacle of blockers) if (this.#joined.includes(obstacle)) return undefined;
    const blocker = blockers[0];
    if (blocker !== undefined) {
      this.#join(blocker);
      return undefined;
    }
    if (landing) {
      if (!this.#goals.accepts(landing, to)) return undefined;
      return { places: [...placesTo(back), to], length, landing, restsOn: this.#joined };
    }
    const cameBy = corner ? sideOf(corner, back.place.point, corner.point) : 'none';
    const ahead = corner && aheadOf(corner, back.place.point, cameBy);
    this.#reach({ place: to, length, back, cameBy, ahead });
    return undefined;
  }

  #reach(reached: Reached<F>): void {
    const { place, length } = reached;
    this.#reached.push(reached);
    if (place.corner) this.#reachedCorners.add(place.corner.number);
    for (const obstacle of this.#joined) this.#tryCorners(reached, obstacle);
    for (const landing of this.#goals.from(place.point, length)) {
      const whole = length + gap(place.point, landing.point);
      const key = whole + landing.rest;
      if (key >= this.#below || !this.#turnsTo(reached, landing.point)) continue;
      this.#trials.push(key, { back: reached, to: landing.place, length: whole, landing });
    }
  }

  #turnsTo({ place: { corner, point }, back, cameBy }: Reached<F>, to: Vec2<F>): boolean {
    if (!corner || !back) return true;
    const goesBy = sideOf(corner, point, to);
    return turnsRound(point, { from: back.place.point, cameBy, to, goesBy });
  }

  /** Never one that has joined: what those block is never looked at further. */
  #join(obstacle: number): void {
    this.#joined.push(obstacle);
    for (const reached of this.#reached) this.#tryCorners(reached, obstacle);
  }

  #tryCorners(reached: Reached<F>, obstacle: number): void {
    const { place, back, length, cameBy, ahead } = reached;
    if (ahead && !this.#tangents.mayLieAhead(ahead, obstacle)) return;
    for (const { to, corner, side } of this.#tangents.touches(place, obstacle)) {
      if (this.#reachedCorners.has(corner.number) || !this.#canReach(to)) continue;
      const turn = back && { from: back.place.point, cameBy, to: to.point, goesBy: side };
      if (turn && !turnsRound(place.point, turn)) continue;
      const whole = length + gap(place.point, to.point);
      const key = whole + this.#goals.ahead(to.point);
      if (key >= this.#below) continue;
      this.#trials.push(key, { back: reached, to, length: whole, landing: undefined });
    }
  }

  /** Only a first stretch can lead to a corner inside an obstacle that has joined: one that is free for it. */
  #canReach({ buriedIn }: Place<F>): boolean {
    for (const obstacle of buriedIn) {
      if (this.#joined.includes(obstacle) && !this.#from.free?.has(obstacle)) return false;
    }
    return true;
  }
}

function placesTo<F extends Frame>(end: Reached<F>): Place<F>[] {
  const places: Place<F>[] = [];
  for (let last: Reached<F> | undefined = end; last; last = last.back) places.push(last.place);
  return places.reverse();
}
