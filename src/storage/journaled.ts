import type { Id } from '../layout/fields.ts';
import type { CheckAnswer } from './journal/journal.ts';
import type { SecondCopy } from './journal/secondCopy.ts';
import type { MarkOutcome } from './port.ts';
import {
  fromRecords,
  headRecord,
  layoutRecords,
  pointRecord,
  revisionRecord,
} from './records/layoutRecords.ts';
import { recordBytes, type StoredRecord } from './records/record.ts';
import type { FullStorage } from './shelved.ts';

/**
 * Rules of a storage with a second copy, quoted by the tests:
 *
 * K1 A save is answered once it stands in the database and in the journal; where the journal can't take it, the save is good
 *    and the state says that there is one copy.
 * K2 At the start the database is compared with the journal before anything is called missing, and before anything is written.
 * K3 What the database lost comes back with its history, and is told; what the journal lacks is added to it.
 * K4 What failed to reach the journal is offered to it again with the next write.
 * K5 A journal that has grown to several times of what is kept is written anew; the old one stays until that is done.
 */
export type CopyState =
  | { readonly kind: 'checking' }
  /** Everything stands in two places. */
  | { readonly kind: 'kept' }
  /** There is one copy only, and why. */
  | { readonly kind: 'missing'; readonly why: string };

/** What the check found of the database's losses. */
export interface Restored {
  /** Names of layouts that are back. */
  readonly names: readonly string[];
  /** Names of layouts that can't be brought back, and why. */
  readonly failed: readonly { readonly name: string; readonly why: string }[];
}

export interface CopySurroundings {
  /** How long the check waits at the start, ms, so that the list of layouts is shown before it. */
  readonly startsAfter: number;
  onState(state: CopyState): void;
  onRestored(restored: Restored): void;
}

/** How long anything waits for the check, ms; a journal that does not answer keeps nobody from working. */
const PATIENCE = 8000;
const SPARE = 32 * 1_048_576;

export function journaled(
  storage: FullStorage,
  copy: SecondCopy,
  around: CopySurroundings,
): FullStorage {
  const keeper = new CopyKeeper(storage, copy, around);
  const { ready } = keeper;
  const marking = async (id: Id, outcome: Promise<MarkOutcome>): Promise<MarkOutcome> => {
    const answer = await outcome;
    if (answer.ok) await keeper.keepHead(id);
    return answer;
  };
  return {
    ...storage,
    async list() {
      const first = await storage.list();
      if (first.rows.length > 0) return first;
      await ready;
      return storage.list();
    },
    async load(id) {
      const first = await storage.load(id);
      if (first.ok || first.kind !== 'missing') return first;
      await ready;
      return storage.load(id);
    },
    async save(layout, expected) {
      await ready;
      const outcome = await storage.save(layout, expected);
      if (outcome.ok) await keeper.keepRevision(layout.id, outcome.revision);
      return outcome;
    },
    remove: (id) => marking(id, storage.remove(id)),
    restore: (id) => marking(id, storage.restore(id)),
    mark: (id, marks) => marking(id, storage.mark(id, marks)),
    settleLine: (id, revision) => marking(id, storage.settleLine(id, revision)),
    async nameRevision(id, revision, name) {
      const outcome = await storage.nameRevision(id, revision, name);
      if (outcome.ok) await keeper.keepPoint(id, revision);
      return outcome;
    },
    async markShared(ids) {
      const marked = await storage.markShared(ids);
      if (marked.length > 0) await keeper.keep(marked.map(pointRecord), []);
      return marked;
    },
    async forget(removedBefore) {
      await ready;
      const before = await storage.removed();
      const refusal = await storage.forget(removedBefore);
      if (refusal !== null || 'ok' in before) return refusal;
      const gone = before.filter(({ removedAt }) => removedAt < removedBefore);
      await keeper.keep(
        gone.map(({ id }) => forgotten(id)),
        [],
      );
      return null;
    },
    async merge(incoming) {
      await ready;
      const outcome = await storage.merge(incoming);
      if (outcome.kind !== 'nothing-new') await keeper.keepLayout(incoming.id);
      return outcome;
    },
  };
}

const forgotten = (id: Id): StoredRecord => ({
  meta: { kind: 'forgotten', id },
  body: new Uint8Array(),
});

class CopyKeeper {
  /** Resolves once the check is done, or can't be. */
  readonly ready: Promise<void>;
  readonly #storage: FullStorage;
  readonly #copy: SecondCopy;
  readonly #around: CopySurroundings;
  /** Layouts that the journal does not have as they are. */
  readonly #behind = new Set<Id>();

  constructor(storage: FullStorage, copy: SecondCopy, around: CopySurroundings) {
    this.#storage = storage;
    this.#copy = copy;
    this.#around = around;
    around.onState({ kind: 'checking' });
    const late = new Promise<never>((_, fail) => {
      setTimeout(() => fail(new Error('it did not answer')), PATIENCE);
    });
    const begun = new Promise<void>((go) => setTimeout(go, around.startsAfter));
    this.ready = Promise.race([begun.then(() => this.#check()), late]).catch((error: unknown) =>
      this.#miss(error),
    );
  }

  async keepRevision(id: Id, revision: number): Promise<void> {
    const there = await this.#storage.whole(id, revision).catch(() => undefined);
    if (there) await this.keep([revisionRecord(there.one), headRecord(there.head)], [id]);
  }

  async keepHead(id: Id): Promise<void> {
    const head = (await this.#storage.heads()).find((one) => one.id === id);
    if (head) await this.keep([headRecord(head)], [id]);
  }

  async keepPoint(id: Id, revision: number): Promise<void> {
    const there = await this.#storage.whole(id, revision);
    if (there) await this.keep([pointRecord(there.one)], [id]);
  }

  async keepLayout(id: Id): Promise<void> {
    const whole = await this.#storage.wholeLayout(id);
    if (whole) await this.keep(layoutRecords(whole), [id]);
  }

  /** Appends records, after what the journal was behind with (K4). @param about The layouts that they are about. */
  async keep(records: readonly StoredRecord[], about: readonly Id[]): Promise<void> {
    const bytes = recordBytes(records);
    const due = [...this.#behind].filter((id) => !about.includes(id));
    for (const id of about) this.#behind.add(id);
    try {
      await this.#copy.append(bytes);
      for (const id of about) this.#behind.delete(id);
      await this.#catchUp(due);
      this.#around.onState({ kind: 'kept' });
    } catch (error) {
      this.#miss(error);
    }
  }

  async #check(): Promise<void> {
    const heads = await this.#storage.heads();
    const answer = await this.#copy.check(heads.map(({ id, digest }) => ({ id, digest })));
    if (answer.lost.length > 0) await this.#bringBack(answer.lost);
    for (const id of answer.behind) this.#behind.add(id);
    this.#around.onState({ kind: 'kept' });
    // Nobody waits for this.
    this.#tidy(answer).catch((error: unknown) => this.#miss(error));
  }

  /** K3. */
  async #bringBack(lost: readonly Id[]): Promise<void> {
    const names: string[] = [];
    const failed: { name: string; why: string }[] = [];
    for (const gathered of await this.#copy.gather(lost)) {
      const from = fromRecords(gathered);
      if (!from.ok) failed.push({ name: from.name, why: from.why });
      else {
        const { kind } = await this.#storage.merge(from.incoming);
        if (kind !== 'nothing-new' && from.incoming.removedAt === null) {
          names.push(from.incoming.facts.name);
        }
      }
    }
    if (names.length + failed.length > 0) this.#around.onRestored({ names, failed });
  }

  /** K5, and what the journal was behind with. */
  async #tidy({ size, completeSize, isComplete, behind }: CheckAnswer): Promise<void> {
    if (isComplete) await this.#copy.dropOlder();
    if (size > 4 * completeSize + SPARE) {
      await this.#copy.startAnew();
      await this.#catchUp((await this.#storage.heads()).map(({ id }) => id));
      await this.#copy.append(recordBytes([{ meta: { kind: 'complete' } }]));
    } else await this.#catchUp(behind);
  }

  async #catchUp(ids: readonly Id[]): Promise<void> {
    for (const id of ids) {
      const whole = await this.#storage.wholeLayout(id);
      if (whole) await this.#copy.append(recordBytes(layoutRecords(whole)));
      this.#behind.delete(id);
    }
  }

  #miss(error: unknown): void {
    const why = error instanceof Error ? error.message : String(error);
    this.#around.onState({ kind: 'missing', why });
  }
}
