import type { Id } from '../layout/fields.ts';
import { kitOutline, outlineText } from '../layout/kitOutline.ts';
import type { Layout } from '../layout/layout.ts';
import type { Problem } from '../layout/problem.ts';
import { checkLayout, readLayout, writeLayout } from '../layout/read.ts';
import { signedState } from '../layout/signedState.ts';
import { packed, unpacked } from './handOver/pack.ts';
import { type LoadOutcome, NOTHING_STORED, type StoredRow } from './port.ts';

/** The head of one layout: which revision holds, and what a list shows of it. Times are ms since 1970. */
export interface StoredHead extends Omit<StoredRow, 'signOff'> {
  /** Missing where an older version of the app stored it: that one kept only when it was signed. */
  readonly signOff?: StoredRow['signOff'];
  readonly removedAt: number | null;
  /** The highest revision there is, of whatever line: the next one counts on from here. */
  readonly last: number;
  /** SHA-256 of the text of the revision that holds. */
  readonly digest: string;
  /** Sign-offs of the revision that holds. */
  readonly signOffs: readonly Id[];
  /** Last revisions of other lines, as another tablet made them. */
  readonly asides: readonly number[];
  /** When old automatic points can be thinned next; null: not before another save. */
  readonly thinAt: number | null;
}

/** What is known of one revision without its text. Stored as long as the text is. */
export interface StoredRevision {
  readonly id: Id;
  readonly revision: number;
  /** The revision it was made from; 0 for the first. */
  readonly parent: number;
  readonly at: number;
  /** SHA-256 of its text: the same content is the same revision, on whichever tablet. */
  readonly digest: string;
  /** The name that a hand gave it; empty when none did. */
  readonly name: string;
  /** Who answered, with consent or without; null when no new sign-off came with it. */
  readonly signed: string | null;
  /** It was handed to another tablet or came from one: the point where two lines part must stay. */
  readonly shared: boolean;
}

/** The text of one revision, packed; plain where an older version of the app stored it. */
export interface StoredDocument {
  readonly id: Id;
  readonly revision: number;
  readonly text?: string;
  readonly packed?: Uint8Array;
}

/** A revision with its text, as it goes from one place to another. */
export interface WholeRevision extends StoredRevision {
  readonly packed: Uint8Array;
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

/** What a list shows of a layout, taken from the layout itself. */
export const listedFacts = (layout: Layout) => ({
  name: layout.name,
  venue: layout.venue.name,
  date: layout.venue.date,
  player: layout.player.name,
  pieces: layout.pieces.length,
  mics: layout.mics.length,
  picture: outlineText(kitOutline(layout.pieces)),
  signOff: signedState(layout),
  signOffs: layout.signOffs.map(({ id }) => id),
});

/** The head before there is anything, with what the user's hand sets left as it is usually. */
export const NO_HEAD = {
  removedAt: null,
  favourite: false,
  archived: false,
  tags: [],
  last: NOTHING_STORED,
  asides: [],
  otherLines: 0,
  thinAt: null,
} as const;

/** The row of a head. Whether a sign-off holds is never guessed. */
export function rowOf(head: StoredHead): StoredRow {
  const { removedAt: _, last: _l, digest: _d, signOffs, asides: _a, thinAt: _t, ...row } = head;
  return { ...row, signOff: row.signOff ?? (signOffs.length === 0 ? 'none' : 'unknown') };
}

/** Rows of what is not removed, the last changed first. */
export const rowsOf = (heads: Iterable<StoredHead>): readonly StoredRow[] =>
  [...heads]
    .filter((head) => head.removedAt === null)
    .sort((a, b) => b.changedAt - a.changedAt)
    .map(rowOf);

export const documentOf = (id: Id, revision: number, text: string): StoredDocument => ({
  id,
  revision,
  packed: packed(text),
});

/**
 * The text of a stored document.
 *
 * @throws {Error} When what was packed can't be unpacked any more.
 */
export function textOf(document: StoredDocument): string {
  const text = document.text ?? unpacked(document.packed ?? new Uint8Array());
  if (text === null) throw new Error('damaged or cut off bytes');
  return text;
}

/** What a save finds before it writes (rule S1): `fits`, `same` when the very text is there already, or `conflict`. */
export function findBeforeSave(
  head: StoredHead | undefined,
  holding: StoredDocument | undefined,
  wanted: { readonly expected: number; readonly text: string },
): 'fits' | 'same' | 'conflict' {
  if (head === undefined) return wanted.expected === NOTHING_STORED ? 'fits' : 'conflict';
  if (head.removedAt !== null) return 'conflict';
  if (holding !== undefined && holds(holding, wanted.text)) return 'same';
  return head.revision === wanted.expected ? 'fits' : 'conflict';
}

function holds(document: StoredDocument, text: string): boolean {
  try {
    return textOf(document) === text;
  } catch {
    return false;
  }
}

/** A stored document on its way out, through the layout's own check (rule S3). */
export function loaded(
  { id, name }: Pick<StoredHead, 'id' | 'name'>,
  { revision, at }: { readonly revision: number; readonly at: number },
  document: StoredDocument | undefined,
): LoadOutcome {
  let text = '';
  const unreadable = (problems: readonly Problem[]): LoadOutcome => ({
    ok: false,
    kind: 'unreadable',
    name,
    text,
    problems,
  });
  if (document === undefined) {
    const expected = 'the stored document';
    return unreadable([{ code: 'missing', path: '', expected, actual: 'nothing' }]);
  }
  try {
    text = textOf(document);
  } catch (error) {
    const actual = error instanceof Error ? error.message : 'something else';
    return unreadable([{ code: 'not-json', path: '', expected: 'packed text', actual }]);
  }
  const read = readLayout(text);
  if (!read.ok) return unreadable(read.problems);
  if (read.layout.id !== id) {
    const actual = read.layout.id;
    return unreadable([{ code: 'wrong-value', path: 'id', expected: id, actual }]);
  }
  return { ok: true, layout: read.layout, revision, at };
}
