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
/** The mark that the page sets once in every frame. */
export const FRAME_MARK = 'bench frame';

/**
 * Work of the main thread in each frame, ms of its own processor time: all its tasks (script, layout, paint) between two marks. What the
 * browser does beside it, waiting for the next frame and for other programs of a busy machine do not count.
 */
export function workPerFrame(trace: Buffer): readonly number[] {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { traceEvents: TraceEvent[] };
  const marks = traceEvents.filter(({ name }) => name === FRAME_MARK).sort(byTime);
  const [first] = marks;
  if (!first) return [];
  const tasks = traceEvents
    .filter(
      ({ name, ph, pid, tid }) =>
        ph === 'X' && TASKS.has(name) && pid === first.pid && tid === first.tid,
    )
    .sort(byTime);
  const work = new Array<number>(marks.length - 1).fill(0);
  let frame = 0;
  let busyUntil = 0;
  for (const { ts, dur = 0, tdur = dur } of tasks) {
    // A task inside a task is counted with it.
    if (ts < busyUntil || ts < first.ts) continue;
    busyUntil = ts + dur;
    while (frame < work.length && (marks[frame + 1]?.ts ?? 0) <= ts) frame += 1;
    if (frame >= work.length) break;
    work[frame] = (work[frame] ?? 0) + tdur / 1000;
  }
  return work;
}

const TASKS = new Set(['RunTask', 'ThreadControllerImpl::RunTask']);
const byTime = (a: TraceEvent, b: TraceEvent): number => a.ts - b.ts;
