/** One event of the browser's trace; times are microseconds. */
interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly dur?: number;
  /** The part of `dur` in which the thread had a processor. */
  readonly tdur?: number;
  readonly pid: number;
  readonly tid: number;
}

/**
 * What is recorded: every task of the page's main thread, and the marks. Events of scripts, styles and layout, each with its stack, are not: they made
 * the work of a frame longer by more than a tenth.
 */
export const TRACED = ['toplevel', 'blink.user_timing'];
/** The mark that the page sets when it begins to count frames. */
export const START_MARK = 'bench start';

/**
 * Work of the main thread in each frame, ms of its own processor time: all its tasks (script, layout, paint) between the beginnings of two frames (ms after
 * the mark). What the browser does beside it, waiting for the next frame and for other programs of a busy machine do not count.
 */
export function workPerFrame(trace: Buffer, begun: readonly number[]): readonly number[] {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { traceEvents: TraceEvent[] };
  const first = traceEvents.find(({ name }) => name === START_MARK);
  if (!first) return [];
  const frames = begun.map((ms) => first.ts + 1000 * ms);
  const [start = first.ts] = frames;
  const tasks = traceEvents
    .filter(
      ({ name, ph, pid, tid }) =>
        ph === 'X' && TASKS.has(name) && pid === first.pid && tid === first.tid,
    )
    .sort(byTime);
  const work = new Array<number>(Math.max(0, frames.length - 1)).fill(0);
  let frame = 0;
  let busyUntil = 0;
  for (const { ts, dur = 0, tdur = dur } of tasks) {
    // A task inside a task is counted with it.
    if (ts < busyUntil || ts < start) continue;
    busyUntil = ts + dur;
    while (frame < work.length && (frames[frame + 1] ?? 0) <= ts) frame += 1;
    if (frame >= work.length) break;
    work[frame] = (work[frame] ?? 0) + tdur / 1000;
  }
  return work;
}

const TASKS = new Set(['RunTask', 'ThreadControllerImpl::RunTask']);
const byTime = (a: TraceEvent, b: TraceEvent): number => a.ts - b.ts;
