/** Times of one piece of work over many runs, ms. */
export interface Times {
  readonly runs: number;
  readonly median: number;
  /** A tenth of the runs took less, a tenth more. */
  readonly low: number;
  readonly high: number;
}

/** A piece of work: what the `run`th one of it does and gives. */
export type Work<Result> = (run: number) => Result;

/**
 * Times a piece of work after warming it up. Results are kept, so that the work cannot be left out, and handed to `check` when
 * the clock has stopped.
 */
export function measure<Result>(
  { warmUp, runs }: { readonly warmUp: number; readonly runs: number },
  work: Work<Result>,
  check: (results: readonly Result[]) => void,
): Times {
  for (let run = 0; run < warmUp; run++) work(run);
  const results: Result[] = [];
  const times: number[] = [];
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    const result = work(run);
    times.push(performance.now() - start);
    results.push(result);
  }
  check(results);
  const sorted = times.toSorted((a, b) => a - b);
  const at = (share: number): number => sorted[Math.round(share * (sorted.length - 1))] ?? NaN;
  return { runs, median: at(0.5), low: at(0.1), high: at(0.9) };
}

/** An even, fixed sequence in [-1, 1): the same numbers in every run, near no pattern of the work. */
export const spread = (run: number): number => 2 * ((run * 0.618_033_988_75) % 1) - 1;
