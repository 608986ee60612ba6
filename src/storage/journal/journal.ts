import type { Id } from '../../layout/fields.ts';
import { type Gathered, gather, nothingGathered } from '../records/layoutRecords.ts';
import type { Meta } from '../records/meta.ts';
import { RecordReader, type StoredRecord } from '../records/record.ts';

/**
 * The second copy of all that is stored: records appended to a file that is never written over. Rules, quoted by the tests:
 *
 * J1 What `append` has answered is on the disk.
 * J2 A write that was torn, by a crash or a full disk, takes nothing else with it.
 * J3 The check names what the database lost (`lost`) and what the journal does not have yet (`behind`).
 * J4 A newer file replaces the older ones only once it says that it is complete.
 */
export interface JournalFile {
  size(): number;
  /** Reads into `bytes` from a place on; returns how many there were. */
  read(bytes: Uint8Array, at: number): number;
  /** Returns how many were written. */
  write(bytes: Uint8Array, at: number): number;
  flush(): void;
  truncate(size: number): void;
}

export interface HeadBrief {
  readonly id: Id;
  /** Of the revision that holds. */
  readonly digest: string;
}

export interface CheckAnswer {
  /** Layouts that the database does not have, or not as far as the journal. */
  readonly lost: readonly Id[];
  /** Layouts whose revision that holds is not in the journal. */
  readonly behind: readonly Id[];
  /** Bytes of all files. */
  readonly size: number;
  /** Bytes of the last complete copy. */
  readonly completeSize: number;
  /** Whether the newest file is complete: then the older ones can go. */
  readonly isComplete: boolean;
}

const PIECE = 1_048_576;

/** Appends, and answers once it is on the disk (J1). What a full disk took half of is taken back (J2). */
export function appendTo(file: JournalFile, bytes: Uint8Array): void {
  const end = file.size();
  const written = file.write(bytes, end);
  if (written < bytes.length) {
    file.truncate(end);
    throw new DOMException('There is no room for the second copy.', 'QuotaExceededError');
  }
  file.flush();
}

/** Every whole record of a file, with where it ends, about. */
export function* recordsOf(file: JournalFile): Generator<StoredRecord> {
  const reader = new RecordReader();
  for (let at = 0; at < file.size(); at += PIECE) {
    const piece = new Uint8Array(Math.min(PIECE, file.size() - at));
    file.read(piece, at);
    yield* reader.push(piece);
  }
  yield* reader.end();
}

interface Known {
  readonly digests: Map<number, string>;
  /** The revision that holds. */
  holds: number;
}

/** Compares what the database has with the files, the oldest first (J3). */
export function checkAgainst(
  files: readonly JournalFile[],
  heads: readonly HeadBrief[],
): CheckAnswer {
  const known = new Map<Id, Known>();
  let isComplete = false;
  let completeSize = 0;
  for (const file of files) {
    isComplete = false;
    let size = 0;
    for (const { meta, body } of recordsOf(file)) {
      size += 16 + body.length;
      if (meta.kind === 'complete') [isComplete, completeSize] = [true, size];
      note(known, meta);
    }
  }
  const there = new Map(heads.map(({ id, digest }) => [id, digest]));
  const lost = [...known].filter(([id, { digests, holds }]) => {
    const digest = there.get(id);
    if (digest === undefined) return true;
    return digest !== digests.get(holds) && [...digests.values()].includes(digest);
  });
  const behind = heads.filter(({ id, digest }) => {
    const journal = known.get(id);
    return journal === undefined || ![...journal.digests.values()].includes(digest);
  });
  return {
    lost: lost.map(([id]) => id),
    behind: behind.map(({ id }) => id),
    size: files.reduce((sum, file) => sum + file.size(), 0),
    completeSize,
    isComplete,
  };
}

function note(known: Map<Id, Known>, meta: Meta): void {
  if (meta.kind === 'forgotten') known.delete(meta.id);
  if (meta.kind !== 'revision' && meta.kind !== 'head') return;
  const layout = known.get(meta.id) ?? { digests: new Map(), holds: 0 };
  known.set(meta.id, layout);
  if (meta.kind === 'revision') layout.digests.set(meta.revision, meta.digest);
  else layout.holds = meta.revision;
}

/** What the files hold of some layouts, the oldest file first. */
export function gatherFrom(
  files: readonly JournalFile[],
  wanted: readonly Id[],
): readonly Gathered[] {
  const found = new Map<Id, Gathered>();
  for (const file of files) {
    for (const record of recordsOf(file)) {
      const { meta } = record;
      if (!('id' in meta) || !wanted.includes(meta.id)) continue;
      if (meta.kind === 'forgotten') found.delete(meta.id);
      else {
        const layout = found.get(meta.id) ?? nothingGathered(meta.id);
        found.set(meta.id, layout);
        gather(layout, record);
      }
    }
  }
  return [...found.values()];
}
