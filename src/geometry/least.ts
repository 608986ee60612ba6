/** Where on [0, 1] a function is least, and how small it is there. */
export interface Least {
  readonly at: number;
  readonly value: number;
}

const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Golden-section steps: the last interval is 1e-8 of the first. */
const STEPS = 38;

/** The least value of a convex function on [0, 1], by golden section; both ends count. */
export function leastConvex(f: (t: number) => number): Least {
  let low = 0;
  let high = 1;
  let left = 1 - GOLDEN;
  let right = GOLDEN;
  let atLeft = f(left);
  let atRight = f(right);
  for (let step = 0; step < STEPS; step += 1) {
    if (atLeft <= atRight) {
      high = right;
      right = left;
      atRight = atLeft;
      left = high - GOLDEN * (high - low);
      atLeft = f(left);
    } else {
      low = left;
      left = right;
      atLeft = atRight;
      right = low + GOLDEN * (high - low);
      atRight = f(right);
    }
  }
  const inside = atLeft <= atRight ? { at: left, value: atLeft } : { at: right, value: atRight };
  return [0, 1]
    .map((at) => ({ at, value: f(at) }))
    .reduce((best, end) => (end.value <= best.value ? end : best), inside);
}

/** What bounds the search of {@link leastBounded}. */
export interface SearchBounds {
  /** The function changes by at most this much per unit of t. */
  readonly rate: number;
  /** How far above the true least value the answer may lie. */
  readonly tolerance: number;
  /** Only values below this matter: larger ones may be reported as any value not below it. */
  readonly below: number;
}

/**
 * The least value on [0, 1] of a function whose rate of change is bounded, to within `tolerance`: intervals that cannot
 * hold a smaller value are dropped, the others are halved. Nothing is missed between samples.
 */
export function leastBounded(f: (t: number) => number, bounds: SearchBounds): Least {
  let best: Least = { at: 0.5, value: f(0.5) };
  const open: [middle: number, half: number, value: number][] = [[0.5, 0.5, best.value]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [middle, half, value] = next;
    const floor = value - bounds.rate * half;
    if (floor >= Math.min(bounds.below, best.value - bounds.tolerance)) continue;
    for (const at of [middle - half / 2, middle + half / 2]) {
      const here = f(at);
      if (here < best.value) best = { at, value: here };
      open.push([at, half / 2, here]);
    }
  }
  return best;
}
