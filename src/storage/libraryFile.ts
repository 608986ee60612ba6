import type { Id } from '../layout/fields.ts';
import type { MergeOutcome } from './merge.ts';
import {
  fromRecords,
  type Gathered,
  gather,
  layoutRecords,
  nothingGathered,
} from './records/layoutRecords.ts';
import { RecordReader, recordBytes, type StoredRecord } from './records/record.ts';
import type { FullStorage } from './shelved.ts';

/**
 * A whole library as one file, quoted by the tests:
 *
 * B1 It holds every layout with every revision, those deleted less than 30 days ago too, as the journal does: records, each checked.
 * B2 It is read piece by piece, so that a large one needs no more memory than a layout does.
 * B3 A bad layout is named; all the others come in, each by itself, merged as `merge.ts` says. Nothing that is here is changed.
 * B4 A file that is cut off, of a newer version, too large or something else is said to be that.
 */
export interface LibraryFile {
  readonly name: string;
  readonly parts: readonly Uint8Array[];
}

/** A large file on its way in; browsers' own `File` is one. */
export interface OfferedBytes {
  readonly size: number;
  slice(from: number, to: number): { arrayBuffer(): Promise<ArrayBuffer> };
}

const VERSION = 1;
const ENDING = '.layouts';
/** Bytes of a file at most: a thousand layouts with a hundred points each have about 300 MB. */
export const MOST_FILE_BYTES = 500_000_000;
/** Bytes of one layout at most. */
const MOST_LAYOUT_BYTES = 100_000_000;
const PIECE = 1_048_576;
const NOTHING = new Uint8Array();

/** Whether a file says of itself that it is a library, whatever is in it then. */
export async function isLibraryFile(
  file: OfferedBytes & { readonly name: string },
): Promise<boolean> {
  if (file.name.toLowerCase().endsWith(ENDING)) return true;
  const start = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  return new TextDecoder().decode(start) === 'SSr1';
}

/** The whole library as a file (B1). From now on the revisions that hold count as shared. */
export async function libraryFile(storage: FullStorage, now: number): Promise<LibraryFile> {
  const heads = await storage.heads();
  await storage.markShared(heads.map(({ id }) => id));
  const layouts = heads.length;
  const parts = [
    recordBytes([{ meta: { kind: 'library', version: VERSION, madeAt: now, layouts } }]),
  ];
  for (const { id } of heads) {
    const whole = await storage.wholeLayout(id);
    if (whole) parts.push(recordBytes(layoutRecords(whole)));
  }
  parts.push(recordBytes([{ meta: { kind: 'end', layouts } }]));
  return { name: `Strokespace ${new Date(now).toISOString().slice(0, 10)}${ENDING}`, parts };
}

/** What became of one layout of the file. */
export type TakenIn =
  | {
      readonly ok: true;
      readonly id: Id;
      readonly name: string;
      readonly kind: MergeOutcome['kind'];
    }
  | { readonly ok: false; readonly name: string; readonly why: string };

export interface LibraryRead {
  readonly layouts: readonly TakenIn[];
  /** The end of the file is missing. */
  readonly isCutOff: boolean;
  /** Layouts that the file says to hold. */
  readonly promised: number;
  /** Bytes, and points of layouts, that could not be read. */
  readonly damagedBytes: number;
  readonly damagedPoints: number;
}

/** Why nothing of a file was taken in. */
export class NoLibrary extends Error {}

/**
 * Takes a library in, layout by layout.
 *
 * @param tell Called after each layout, with how many were read and how many there are.
 * @throws {NoLibrary} With what the file is instead, before anything is changed.
 */
export async function takeInLibrary(
  storage: FullStorage,
  file: OfferedBytes,
  tell: (read: number, promised: number) => void,
): Promise<LibraryRead> {
  if (file.size > MOST_FILE_BYTES) {
    throw new NoLibrary(
      `expected at most ${MOST_FILE_BYTES / 1e6} MB, found ${Math.round(file.size / 1e6)} MB.`,
    );
  }
  const taking = new Taking(storage);
  const reader = new RecordReader();
  for (let at = 0; at < file.size; at += PIECE) {
    const piece = new Uint8Array(
      await file.slice(at, Math.min(at + PIECE, file.size)).arrayBuffer(),
    );
    const records = reader.push(piece);
    await taking.take(records);
    if (at === 0) taking.mustHaveBegun();
    tell(taking.layouts.length, taking.promised);
  }
  await taking.take(reader.end());
  taking.mustHaveBegun();
  await taking.finish();
  return {
    layouts: taking.layouts,
    isCutOff: !taking.hasEnded,
    promised: taking.promised,
    damagedBytes: reader.passedOver,
    damagedPoints: taking.damagedPoints,
  };
}

/** Gathers layouts and takes each in when its head, the last of its records, has come. */
class Taking {
  readonly layouts: TakenIn[] = [];
  readonly #storage: FullStorage;
  readonly #open = new Map<Id, Gathered & { bytes: number }>();
  #begun: number | null = null;
  promised = 0;
  hasEnded = false;
  damagedPoints = 0;

  constructor(storage: FullStorage) {
    this.#storage = storage;
  }

  /** The first record stands at the very start, or it is no library. */
  mustHaveBegun(): void {
    if (this.#begun !== null) return;
    throw new NoLibrary('it is no library of this app, or damaged from its first byte on.');
  }

  async take(records: readonly StoredRecord[]): Promise<void> {
    for (const record of records) {
      const { meta } = record;
      if (meta.kind === 'library') this.#begin(meta.version, meta.layouts);
      else if (this.#begun === null) throw new NoLibrary('it does not begin as a library does.');
      else if (meta.kind === 'end') this.hasEnded = true;
      else if ('id' in meta) await this.#add(meta.id, record);
    }
  }

  /** What has no head never got its end. */
  async finish(): Promise<void> {
    for (const gathered of this.#open.values()) await this.#takeIn(gathered);
    this.#open.clear();
  }

  #begin(version: number, promised: number): void {
    if (version > VERSION) {
      throw new NoLibrary('it was written by a newer version of the app. Update this one first.');
    }
    this.#begun = version;
    this.promised = promised;
  }

  async #add(id: Id, record: StoredRecord): Promise<void> {
    const gathered = this.#open.get(id) ?? { ...nothingGathered(id), bytes: 0 };
    this.#open.set(id, gathered);
    gathered.bytes += record.body.length;
    // What is too much for one layout is let go; its revisions are then missing, and that is said.
    if (gathered.bytes > MOST_LAYOUT_BYTES) gathered.revisions.clear();
    gather(gathered, { ...record, body: record.body.length > 0 ? record.body : NOTHING });
    if (record.meta.kind !== 'head') return;
    this.#open.delete(id);
    await this.#takeIn(gathered);
  }

  async #takeIn(gathered: Gathered): Promise<void> {
    const from = fromRecords(gathered);
    if (!from.ok) {
      this.layouts.push(from);
      return;
    }
    const { id, facts } = from.incoming;
    this.damagedPoints += from.damaged;
    try {
      const { kind } = await this.#storage.merge(from.incoming);
      this.layouts.push({ ok: true, id, name: facts.name, kind });
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      this.layouts.push({ ok: false, name: facts.name, why });
    }
  }
}
