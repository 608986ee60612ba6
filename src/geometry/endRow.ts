import type { Mm } from '../units/quantity.ts';
import { gap } from './plan.ts';
import type { Place, Tangents } from './tangents.ts';
import type { Frame } from './vector.ts';

/**
 * The ends of ways, side by side on a line. Ways that come together at a place in front of it, a root, part there for their
 * own ends.
 *
 * E1 From a root each way costs its distance to its end times `each`, and the row from the first to the last of root and
 *    ends its length times `once`. What stands between a root and an end makes that infinite.
 */
export class EndRow<F extends Frame> {
  readonly #tangents: Tangents<F>;
  readonly #ends: readonly Place<F>[];
  readonly #weights: { readonly each: number; readonly once: number };
  readonly #origin: Place<F> | undefined;
  readonly #directionX: number;
  readonly #directionY: number;
  readonly #along: Float64Array;
  /** From each root to each way's end; not a number where it has not been asked for. */
  readonly #fans = new Map<Place<F>, Float64Array>();

  /** The end of every way, and what a mm costs. */
  constructor(
    tangents: Tangents<F>,
    ends: readonly Place<F>[],
    weights: { readonly each: number; readonly once: number },
  ) {
    this.#tangents = tangents;
    this.#ends = ends;
    this.#weights = weights;
    const first = ends[0];
    const from = first?.point ?? { x: 0, y: 0 };
    const farthest = ends.reduce(
      (best, { point }) => (gap(from, point) > gap(from, best) ? point : best),
      from,
    );
    const size = gap(from, farthest);
    this.#origin = first;
    this.#directionX = size > 0 ? (farthest.x - from.x) / size : 0;
    this.#directionY = size > 0 ? (farthest.y - from.y) / size : 0;
    this.#along = new Float64Array(ends.length);
    for (let way = 0; way < ends.length; way += 1) {
      this.#along[way] = this.#at(ends[way] as Place<F>);
    }
  }

  endOf(way: number): Place<F> | undefined {
    return this.#ends[way];
  }

  /** From a root straight to a way's end; infinite where something stands between. */
  fan(root: Place<F>, way: number): Mm {
    return this.#fanOf(this.#fansFrom(root), root, way);
  }

  #fansFrom(root: Place<F>): Float64Array {
    let fans = this.#fans.get(root);
    if (!fans) {
      fans = new Float64Array(this.#ends.length).fill(Number.NaN);
      this.#fans.set(root, fans);
    }
    return fans;
  }

  #fanOf(fans: Float64Array, root: Place<F>, way: number): Mm {
    const known = fans[way] ?? 0;
    if (!Number.isNaN(known)) return known;
    const length = this.#measured(root, way);
    fans[way] = length;
    return length;
  }

  #measured(root: Place<F>, way: number): Mm {
    const end = this.#ends[way];
    if (!end || end === root) return 0;
    const isFree = this.#tangents.blockers(root, end).length === 0;
    return isFree ? gap(root.point, end.point) : Number.POSITIVE_INFINITY;
  }

  /** What ways cost from a root on that others use already (E1). */
  cost(root: Place<F>, ways: readonly number[], others: readonly number[] = []): number {
    const fans = this.#fansFrom(root);
    let each = 0;
    for (const way of ways) each += this.#fanOf(fans, root, way);
    let low = this.#at(root);
    let high = low;
    for (const way of others) {
      const at = this.#along[way] ?? 0;
      if (at < low) low = at;
      if (at > high) high = at;
    }
    const before = high - low;
    for (const way of ways) {
      const at = this.#along[way] ?? 0;
      if (at < low) low = at;
      if (at > high) high = at;
    }
    return this.#weights.each * each + this.#weights.once * (high - low - before);
  }

  /** The places from a root to the end of a way: past the ends of other ways that lie between, in order. */
  between(root: Place<F>, way: number, others: readonly number[]): readonly Place<F>[] {
    const end = this.#ends[way];
    if (!end) return [];
    const from = this.#at(root);
    const to = this.#at(end);
    const passed = new Map<number, Place<F>>();
    for (const other of others) {
      const place = this.#ends[other];
      const at = this.#along[other] ?? from;
      if (place && (at - from) * (at - to) < 0) passed.set(at, place);
    }
    const places: Place<F>[] = [];
    for (const at of [...passed.keys()].sort((p, q) => (from < to ? p - q : q - p))) {
      const place = passed.get(at);
      if (place) places.push(place);
    }
    const isThere = end.point.x === root.point.x && end.point.y === root.point.y;
    if (!isThere) places.push(end);
    return places;
  }

  #at({ point }: Place<F>): Mm {
    const from = this.#origin?.point ?? point;
    return (point.x - from.x) * this.#directionX + (point.y - from.y) * this.#directionY;
  }
}
