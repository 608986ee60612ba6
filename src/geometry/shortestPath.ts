import type { Mm } from '../units/quantity.ts';
import type { ConvexPolygon } from './convexPolygon.ts';
import { gap, type Rectangle } from './plan.ts';
import type { Frame, Vec2 } from './vector.ts';
import { type Sight, VisibilityGraph } from './visibilityGraph.ts';

/** One end of a way; the stretch that begins or ends here may pass through the obstacles in `free` (places in the list). */
export interface WayEnd<F extends Frame = 'kit'> {
  readonly point: Vec2<F>;
  readonly free?: ReadonlySet<number>;
}

/** A shortest way: its points from end to end, and its length in mm. */
export interface Way<F extends Frame = 'kit'> {
  readonly points: readonly Vec2<F>[];
  readonly length: Mm;
}

export interface Router<F extends Frame = 'kit'> {
  /** The shortest way among the obstacles; undefined when there is none. */
  route(from: WayEnd<F>, to: WayEnd<F>): Way<F> | undefined;
}

/**
 * Shortest ways among convex obstacles on the plan. What was once found about the obstacles' corners is kept in the router
 * and serves every later route.
 *
 * P1 A way is first sought among the obstacles already known to matter (none at first). What it then passes through
 *    matters too, and it is sought again. Fewer obstacles never lengthen a way, so the first way that passes through nothing is the
 *    shortest among all of them.
 * P2 Ways of equal length: the one whose corners come first in the list of obstacles.
 */
export function createRouter<F extends Frame>(
  obstacles: readonly ConvexPolygon<F>[],
  region?: Rectangle<F>,
): Router<F> {
  const graph = new VisibilityGraph(obstacles, region);
  return {
    route(from, to) {
      const search = new Search(graph, from, to);
      for (;;) {
        const way = search.run();
        if (!way) return undefined;
        const met = new Set(way.flatMap((sight) => sight.blockedBy));
        if (met.size === 0) return search.wayAlong(way);
        search.include([...met].sort((a, b) => a - b));
      }
    },
  };
}

/** A search from end to end (A* with the straight distance) over the obstacles that are known to matter. */
class Search<F extends Frame> {
  readonly #graph: VisibilityGraph<F>;
  readonly #from: WayEnd<F>;
  readonly #to: WayEnd<F>;
  /** Numbers of the ends, after all corners. */
  readonly #start: number;
  readonly #goal: number;
  readonly #matters: number[] = [];
  readonly #isIncluded = new Set<number>();
  readonly #fromStart: Sight[];
  readonly #toGoal = new Map<number, Sight>();

  constructor(graph: VisibilityGraph<F>, from: WayEnd<F>, to: WayEnd<F>) {
    this.#graph = graph;
    this.#from = from;
    this.#to = to;
    this.#start = graph.cornerCount;
    this.#goal = graph.cornerCount + 1;
    const free = new Set([...(from.free ?? []), ...(to.free ?? [])]);
    const blockedBy = graph.blockers(from.point, to.point, free);
    this.#fromStart = [{ to: this.#goal, length: gap(from.point, to.point), blockedBy }];
  }

  include(obstacles: readonly number[]): void {
    for (const obstacle of obstacles) {
      this.#isIncluded.add(obstacle);
      this.#matters.push(obstacle);
      const { point, free } = this.#from;
      this.#fromStart.push(...this.#graph.fromPoint(point, obstacle, free));
      const end = this.#to;
      for (const { to, ...sight } of this.#graph.fromPoint(end.point, obstacle, end.free)) {
        if (this.#graph.touches(to, end.point)) this.#toGoal.set(to, { ...sight, to: this.#goal });
      }
    }
  }

  /** The stretches of the shortest way among the obstacles included so far; undefined when there is none. */
  run(): Sight[] | undefined {
    const reached = new Map<number, Reached>([
      [this.#start, { node: this.#start, cost: 0, ahead: 0, back: undefined, by: undefined }],
    ]);
    const done = new Set<number>();
    for (;;) {
      const best = cheapest(reached, done);
      if (!best) return undefined;
      if (best.node === this.#goal) return stretches(best);
      done.add(best.node);
      for (const sight of this.#sightsFrom(best.node)) this.#reach(reached, best, sight);
    }
  }

  wayAlong(sights: readonly Sight[]): Way<F> {
    const points = [this.#from.point];
    let length = 0;
    for (const sight of sights) {
      points.push(this.#point(sight.to));
      length += sight.length;
    }
    return { points, length };
  }

  #reach(reached: Map<number, Reached>, back: Reached, by: Sight): void {
    if (by.blockedBy.some((obstacle) => this.#isIncluded.has(obstacle))) return;
    const cost = back.cost + by.length;
    const known = reached.get(by.to);
    if (known && known.cost <= cost) return;
    const ahead = known?.ahead ?? gap(this.#point(by.to), this.#to.point);
    reached.set(by.to, { node: by.to, cost, ahead, back, by });
  }

  #sightsFrom(node: number): readonly Sight[] {
    if (node === this.#start) return this.#fromStart;
    const sights = this.#matters.flatMap((obstacle) => this.#graph.fromCorner(node, obstacle));
    const last = this.#toGoal.get(node);
    return last ? [...sights, last] : sights;
  }

  #point(node: number): Vec2<F> {
    return node === this.#goal ? this.#to.point : this.#graph.corner(node);
  }
}

/** A node, the way to it, and the straight distance still ahead. */
interface Reached {
  readonly node: number;
  readonly cost: Mm;
  readonly ahead: Mm;
  readonly back: Reached | undefined;
  readonly by: Sight | undefined;
}

function cheapest(
  reached: ReadonlyMap<number, Reached>,
  done: ReadonlySet<number>,
): Reached | undefined {
  let best: Reached | undefined;
  for (const entry of reached.values()) {
    if (done.has(entry.node)) continue;
    if (!best) best = entry;
    const ahead = entry.cost + entry.ahead - best.cost - best.ahead;
    if (ahead < 0 || (ahead === 0 && entry.node < best.node)) best = entry;
  }
  return best;
}

function stretches(goal: Reached): Sight[] {
  const found: Sight[] = [];
  for (let step: Reached | undefined = goal; step?.by; step = step.back) found.push(step.by);
  return found.reverse();
}
