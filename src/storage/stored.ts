import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Problem } from '../layout/problem.ts';
import { checkLayout, readLayout, writeLayout } from '../layout/read.ts';
import { type LoadOutcome, NOTHING_STORED, type StoredRow } from './port.ts';

/** The head of one layout: which revision holds, and what a list shows of it. Times are ms since 1970. */
export interface StoredHead extends StoredRow {
  readonly removedAt: number | null;
}

/** One revision of one layout, as text, so that what was stored stays the same bytes (rule S7). */
export interface StoredDocument {
  readonly id: Id;
  readonly revision: number;
  /** The revision it was made from; 0 for the first. */
  readonly parent: number;
  readonly at: number;
  readonly text: string;
}

/**
 * The text of a layout on its way in.
 *
 * @throws {Error} When it does not pass its own check, so that nothing is stored that could not be loaded again.
 */
export function storedText(layout: Layout): string {
  const checked = checkLayout(layout);
  if (checked.ok) return writeLayout(checked.layout);
  const faults = checked.problems.map(
    ({ path, expected, actual }) => `${path}: expected ${expected}, found ${actual}`,
  );
  throw new Error(faults.join('; '));
}

export function headOf(layout: Layout, revision: number, at: number): StoredHead {
  return {
    id: layout.id,
    name: layout.name,
    venue: layout.venue.name,
    pieces: layout.pieces.length,
    mics: layout.mics.length,
    changedAt: at,
    revision,
    removedAt: null,
  };
}

/** Rows of what is not removed, the last changed first. */
export function rowsOf(heads: Iterable<StoredHead>): readonly StoredRow[] {
  return [...heads]
    .filter((head) => head.removedAt === null)
    .sort((a, b) => b.changedAt - a.changedAt)
    .map(({ removedAt: _, ...row }) => row);
}

/** What a save finds before it writes (rule S1): `fits`, `same` when the very text is there already, or `conflict`. */
export function findBeforeSave(
  head: StoredHead | undefined,
  storedText: string | undefined,
  wanted: { readonly expected: number; readonly text: string },
): 'fits' | 'same' | 'conflict' {
  if (head === undefined) return wanted.expected === NOTHING_STORED ? 'fits' : 'conflict';
  if (head.removedAt !== null) return 'conflict';
  if (head.revision === wanted.expected) return 'fits';
  return storedText === wanted.text ? 'same' : 'conflict';
}

/** A stored document on its way out, through the layout's own check (rule S3). */
export function loaded(
  head: StoredHead | undefined,
  document: StoredDocument | undefined,
): LoadOutcome {
  if (head === undefined || head.removedAt !== null) return { ok: false, kind: 'missing' };
  if (document === undefined) {
    const problem: Problem = {
      code: 'missing',
      path: '',
      expected: 'the stored document',
      actual: 'nothing',
    };
    return { ok: false, kind: 'unreadable', name: head.name, text: '', problems: [problem] };
  }
  const read = readLayout(document.text);
  const unreadable = (problems: readonly Problem[]): LoadOutcome => ({
    ok: false,
    kind: 'unreadable',
    name: head.name,
    text: document.text,
    problems,
  });
  if (!read.ok) return unreadable(read.problems);
  if (read.layout.id !== head.id) {
    const actual = read.layout.id;
    return unreadable([{ code: 'wrong-value', path: 'id', expected: head.id, actual }]);
  }
  return { ok: true, layout: read.layout, revision: head.revision, at: head.changedAt };
}
