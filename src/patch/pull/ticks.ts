import type { PatchSettings, PullItem, PullTick } from '../../layout/patch.ts';
import { isSameItem } from './pullItem.ts';
import type { PullLine } from './pullList.ts';

/** One sort of thing at strike. */
export interface StrikeLine extends PullItem {
  /** What the pull list asks for now; 0 for what went out and is no longer on the list. */
  readonly total: number;
  readonly out: number;
  readonly back: number;
  /** Still to be carried out. */
  readonly toTake: number;
  /** Went out and is not back. */
  readonly missing: number;
  /** Came back without having gone out: somebody else's, or never ticked. */
  readonly over: number;
}

/**
 * The pull list with its ticks.
 *
 * Q1 What went out and is not back is missing, whatever the list says now: things no longer on the list follow it.
 * Q2 Nothing counts for something else: one more of one sort does not make up for a missing one of another.
 */
export function strikeList(
  list: readonly PullLine[],
  ticks: readonly PullTick[],
): readonly StrikeLine[] {
  const gone = ticks.filter((tick) => !list.some((line) => isSameItem(line, tick)));
  const items = [...list, ...gone.map(({ kind, which }) => ({ kind, which, total: 0 }))];
  return items.map(({ kind, which, total }): StrikeLine => {
    const tick = ticks.find((each) => isSameItem(each, { kind, which }));
    const { out, back } = tick ?? { out: 0, back: 0 };
    return {
      kind,
      which,
      total,
      out,
      back,
      toTake: Math.max(0, total - out),
      missing: Math.max(0, out - back),
      over: Math.max(0, back - out),
    };
  });
}

/** Only what is missing. */
export const stillMissing = (lines: readonly StrikeLine[]): readonly StrikeLine[] =>
  lines.filter(({ missing }) => missing > 0);

/** How what is not back is to be taken: it is out where it belongs, on its way, or to be looked for. */
export type Awaited = 'out' | 'stillOut' | 'missing';

/** Q3 Nothing is called missing before anything has come back; after that what came back short is, and all of it once the strike is over. */
export function awaited(line: StrikeLine, lines: readonly StrikeLine[], isOver: boolean): Awaited {
  if (isOver || line.back > 0) return 'missing';
  return hasStrikeBegun(lines) ? 'stillOut' : 'out';
}

/** Whether anything has come back. */
export const hasStrikeBegun = (lines: readonly StrikeLine[]): boolean =>
  lines.some(({ back }) => back > 0);

/** Edits of ticks: pure, and the same object when they have no effect. Counts are whole numbers from 0. */

/** Says how many of a sort are out on the stage or back in the case. */
export function setTick(
  patch: PatchSettings,
  item: PullItem,
  counts: Partial<Pick<PullTick, 'out' | 'back'>>,
): PatchSettings {
  const { kind, which } = item;
  const index = patch.ticks.findIndex((tick) => isSameItem(tick, item));
  const before = patch.ticks[index] ?? { kind, which, out: 0, back: 0 };
  const after: PullTick = {
    kind,
    which,
    out: counted(counts.out, before.out),
    back: counted(counts.back, before.back),
  };
  if (after.out === before.out && after.back === before.back) return patch;
  const others = patch.ticks.filter((tick) => !isSameItem(tick, item));
  if (after.out === 0 && after.back === 0) return { ...patch, ticks: others };
  return { ...patch, ticks: others.toSpliced(index < 0 ? others.length : index, 0, after) };
}

/** Everything on the list is out; what was out already stays out. */
export const tickAllOut = (patch: PatchSettings, list: readonly PullLine[]): PatchSettings =>
  list.reduce((ticked, line) => {
    const out = ticked.ticks.find((tick) => isSameItem(tick, line))?.out ?? 0;
    return setTick(ticked, line, { out: Math.max(out, line.total) });
  }, patch);

/** Takes all ticks off, for the next load-in. */
export const clearTicks = (patch: PatchSettings): PatchSettings =>
  patch.ticks.length === 0 ? patch : { ...patch, ticks: [] };

function counted(count: number | undefined, before: number): number {
  if (count === undefined || Number.isNaN(count)) return before;
  return Math.min(Number.MAX_SAFE_INTEGER, Math.max(0, Math.round(count)));
}
