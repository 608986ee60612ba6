import type { Mm } from '../units/quantity.ts';

/** Steps of height in which things are put in order, and what is added to keep them above 0, mm. */
const STEP: Mm = 0.1;
const DEEP: Mm = 10_000;

/**
 * The indices of `heights` (mm), lowest first, those less than a step apart by their index; what has no finite height is left out. One number is sorted
 * for height and index together, which is quicker than a comparison of objects.
 */
export function lowestFirst(heights: Float64Array): Float64Array {
  const { length } = heights;
  const keys = new Float64Array(length);
  let count = 0;
  for (let i = 0; i < length; i++) {
    const height = heights[i] as number;
    if (Number.isFinite(height)) keys[count++] = Math.round((height + DEEP) / STEP) * length + i;
  }
  const inOrder = keys.subarray(0, count).sort();
  for (let k = 0; k < count; k++) inOrder[k] = (inOrder[k] as number) % length;
  return inOrder;
}
