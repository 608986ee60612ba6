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

/**
 * How many times as long one piece of work takes as another: the median over pairs of runs, one of each right after the other, so that a
 * machine whose speed drifts drifts for both alike.
 */
export function measureRatio<Result>(
  { warmUp, runs }: { readonly warmUp: number; readonly runs: number },
  work: Work<Result>,
  base: Work<Result>,
  check: (results: readonly Result[]) => void,
): number {
  const timed = (piece: Work<Result>, run: number): { result: Result; time: number } => {
    const start = performance.now();
    const result = piece(run);
    return { result, time: performance.now() - start };
  };
  const ratios: number[] = [];
  for (let run = -warmUp; run < runs; run++) {
    const [more, less] = [timed(work, Math.abs(run)), timed(base, Math.abs(run))];
    if (run < 0) continue;
    ratios.push(more.time / less.time);
    if (run === runs - 1) check([more.result, less.result]);
  }
  ratios.sort((a, b) => a - b);
  return ratios[Math.floor(ratios.length / 2)] ?? NaN;
}

/** An even, fixed sequence in [-1, 1): the same numbers in every run, near no pattern of the work. */
export const spread = (run: number): number => 2 * ((run * 0.618_033_988_75) % 1) - 1;
