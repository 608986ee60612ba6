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
  const start = { at: 0, value: f(0) };
  const end = { at: 1, value: f(1) };
  const early = start.value <= inside.value ? start : inside;
  return end.value <= early.value ? end : early;
}

/** A function on [0, 1] that is known to stay at or above a floor on every interval. */
export interface Bounded {
  readonly value: (t: number) => number;
  readonly floor: (low: number, high: number) => number;
  /** How far above the true least value the answer may lie. */
  readonly tolerance: number;
  /** Only values below this matter: where there are none, any value not below it may be answered. */
  readonly below: number;
}

/**
 * The least value on [0, 1] of a function with known floors, to within its tolerance: intervals that cannot hold a smaller
 * value are dropped, the others are halved. Nothing is missed between samples.
 */
export function leastBounded({ value, floor, tolerance, below }: Bounded): Least {
  let best: Least = { at: 0.5, value: value(0.5) };
  const open: [low: number, high: number][] = [[0, 1]];
  for (let next = open.pop(); next; next = open.pop()) {
    const [low, high] = next;
    if (floor(low, high) >= Math.min(below, best.value - tolerance)) continue;
    const at = (low + high) / 2;
    const here = value(at);
    if (here < best.value) best = { at, value: here };
    open.push([low, at], [at, high]);
  }
  return best;
}
