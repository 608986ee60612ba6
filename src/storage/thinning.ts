import type { StoredRevision } from './stored.ts';

/**
 * Which automatic points stay, quoted by the tests:
 *
 * T1 Of the last day all of them.
 * T2 Of the last 30 days the last one of every hour.
 * T3 Before that the last one of every day.
 * T4 Points that were named, signed off or shared with another tablet, the first one, and the last one of every line always stay.
 *
 * Hours and days are those of UTC, so that a tablet that travels does not thin twice.
 */
const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const MONTH = 30 * DAY;

export interface Thinned {
  /** Revisions to drop. */
  readonly drop: readonly number[];
  /** When there can be more to drop, ms since 1970; null: only after another save. */
  readonly next: number | null;
}

/**
 * @param revisions All of one layout, the first one first.
 * @param tips Last revisions of its lines.
 * @param now ms since 1970.
 */
export function thinned(
  revisions: readonly StoredRevision[],
  tips: ReadonlySet<number>,
  now: number,
): Thinned {
  const drop: number[] = [];
  let next = Number.POSITIVE_INFINITY;
  const kept = new Map<string, StoredRevision>();
  const first = revisions[0]?.revision;
  for (const one of revisions.toSorted((a, b) => a.at - b.at || a.revision - b.revision)) {
    if (one.name !== '' || one.signed !== null || one.shared) continue;
    if (one.revision === first || tips.has(one.revision)) continue;
    const age = now - one.at;
    if (age < DAY) {
      next = Math.min(next, one.at + DAY);
      continue;
    }
    if (age < MONTH) next = Math.min(next, one.at + MONTH);
    const span = age < MONTH ? HOUR : DAY;
    const bucket = `${span} ${Math.floor(one.at / span)}`;
    const before = kept.get(bucket);
    if (before !== undefined) drop.push(before.revision);
    kept.set(bucket, one);
  }
  return { drop, next: Number.isFinite(next) ? next : null };
}
