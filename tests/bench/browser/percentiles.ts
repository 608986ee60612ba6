/** Shares of many times, ms. */
export interface Percentiles {
  readonly count: number;
  readonly median: number;
  readonly p95: number;
  readonly most: number;
}

export function percentiles(times: readonly number[]): Percentiles {
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { count: sorted.length, median: at(0.5), p95: at(0.95), most: at(1) };
}
