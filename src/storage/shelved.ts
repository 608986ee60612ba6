import { digestOf } from '../layout/digest.ts';
import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { packed } from './handOver/pack.ts';
import { type IncomingLayout, type MergeOutcome, mergeInto } from './merge.ts';
import type {
  MarkOutcome,
  Marks,
  RemovedRow,
  RevisionRow,
  SaveOutcome,
  StorageChange,
  StoragePort,
  StoredRow,
} from './port.ts';
import { orRefusal } from './refusal.ts';
import { revisionRow } from './revisionRow.ts';
import type { Shelf, ShelfTurn } from './shelf.ts';
import {
  documentOf,
  findBeforeSave,
  listedFacts,
  loaded,
  NO_HEAD,
  rowOf,
  rowsOf,
  type StoredDocument,
  type StoredHead,
  type StoredRevision,
  storedText,
  type WholeRevision,
} from './stored.ts';
import { thinned } from './thinning.ts';

/** Tells the other ports on the same data, and hears them. */
export interface Channel {
  tell(change: StorageChange): void;
  listen(hear: (change: StorageChange) => void): void;
  close(): void;
}

/** A layout as a copy holds it: its head and every revision with its text. */
export interface WholeLayout {
  readonly head: StoredHead;
  readonly revisions: readonly WholeRevision[];
}

/** The port, and what a second copy, a library file and a merge need besides. These throw what the storage threw. */
export interface FullStorage extends StoragePort {
  heads(): Promise<readonly StoredHead[]>;
  /** One revision as it is stored; undefined when it is not there. */
  whole(id: Id, revision: number): Promise<{ head: StoredHead; one: WholeRevision } | undefined>;
  wholeLayout(id: Id): Promise<WholeLayout | undefined>;
  /** Marks the revisions that hold as shared with another tablet, so that they stay. Returns those that were not. */
  markShared(ids: readonly Id[]): Promise<readonly StoredRevision[]>;
  /** Takes in a layout with its revisions; see {@link mergeInto}. */
  merge(incoming: IncomingLayout): Promise<MergeOutcome>;
}

const DAY = 24 * 3_600_000;

/** The storage port over a shelf. */
export function shelvedStorage(shelf: Shelf, channel: Channel, now: () => number): FullStorage {
  const watchers = new Set<(change: StorageChange) => void>();
  channel.listen((change) => {
    for (const hear of watchers) hear(change);
  });
  const marking = async (
    id: Id,
    kind: 'removed' | 'restored' | 'marked',
    change: (head: StoredHead, turn: ShelfTurn) => Promise<boolean>,
  ): Promise<MarkOutcome> => {
    const outcome = await orRefusal(() =>
      shelf.write(async (turn): Promise<MarkOutcome> => {
        const head = await turn.head(id);
        const done = head !== undefined && (await change(head, turn));
        return done ? { ok: true } : { ok: false, kind: 'missing' };
      }),
    );
    if (outcome.ok) channel.tell({ kind, id });
    return outcome;
  };
  const putting = (id: Id, kind: 'removed' | 'restored' | 'marked', what: Partial<StoredHead>) =>
    marking(id, kind, async (head, turn) => {
      turn.putHead({ ...head, ...what });
      return true;
    });

  return {
    ...reading(shelf),
    ...copying(shelf, channel),
    async save(layout, expected) {
      const outcome = await orRefusal(() => {
        const text = storedText(layout);
        return shelf.write((turn) => saveOn(turn, { layout, text, expected, at: now() }));
      });
      if (outcome.ok) channel.tell({ kind: 'written', id: layout.id });
      return outcome;
    },
    remove: (id) => putting(id, 'removed', { removedAt: now() }),
    restore: (id) => putting(id, 'restored', { removedAt: null }),
    mark: (id, marks) => putting(id, 'marked', ownMarks(marks)),
    nameRevision: (id, revision, name) =>
      marking(id, 'marked', async (_, turn) => {
        const one = await turn.revision(id, revision);
        if (one) turn.putRevision({ ...one, name });
        return one !== undefined;
      }),
    settleLine: (id, revision) =>
      marking(id, 'marked', async (head, turn) => {
        const asides = head.asides.filter((one) => one !== revision);
        turn.putHead({ ...head, asides, otherLines: asides.length });
        return asides.length < head.asides.length;
      }),
    forget: (removedBefore) =>
      orRefusal(() =>
        shelf.write(async (turn) => {
          for (const { id, removedAt } of await turn.heads()) {
            if (removedAt !== null && removedAt < removedBefore) turn.drop(id);
          }
          return null;
        }),
      ),
    thin: () => orRefusal(() => thinAll(shelf, now())),
    watch(tell) {
      watchers.add(tell);
      return () => watchers.delete(tell);
    },
    close() {
      watchers.clear();
      channel.close();
      shelf.close();
    },
  };
}

/** Only the fields that are marks, whatever else the caller's object has. */
const ownMarks = ({ favourite, archived, tags }: Partial<Marks>): Partial<Marks> => ({
  ...(favourite !== undefined && { favourite }),
  ...(archived !== undefined && { archived }),
  ...(tags !== undefined && { tags: [...new Set(tags)] }),
});

function reading(
  shelf: Shelf,
): Pick<FullStorage, 'list' | 'load' | 'removed' | 'revisions' | 'loadRevision'> {
  return {
    async list() {
      const heads = await orRefusal(() => shelf.read((turn) => turn.heads()));
      if ('ok' in heads) return { rows: [] as readonly StoredRow[], refusal: heads };
      return { rows: rowsOf(heads), refusal: null };
    },
    load: (id) =>
      orRefusal(() =>
        shelf.read(async (turn) => {
          const head = await turn.head(id);
          if (head === undefined || head.removedAt !== null) return { ok: false, kind: 'missing' };
          const { revision, changedAt } = head;
          return loaded(head, { revision, at: changedAt }, await turn.document(id, revision));
        }),
      ),
    removed: () =>
      orRefusal(async () =>
        (await shelf.read((turn) => turn.heads()))
          .flatMap((head): RemovedRow[] =>
            head.removedAt === null ? [] : [{ ...rowOf(head), removedAt: head.removedAt }],
          )
          .sort((a, b) => b.removedAt - a.removedAt),
      ),
    revisions: (id) =>
      orRefusal(() =>
        shelf.read(async (turn) => {
          const head = await turn.head(id);
          const rows = await turn.revisions(id);
          if (head === undefined) return [];
          const told: RevisionRow[] = [];
          for (const one of rows) {
            const document =
              one.signed === null ? undefined : await turn.document(id, one.revision);
            told.push(revisionRow(head, one, document));
          }
          return told;
        }),
      ),
    loadRevision: (id, revision) =>
      orRefusal(() =>
        shelf.read(async (turn) => {
          const [head, one] = [await turn.head(id), await turn.revision(id, revision)];
          if (head === undefined || one === undefined) return { ok: false, kind: 'missing' };
          return loaded(head, one, await turn.document(id, revision));
        }),
      ),
  };
}

function copying(
  shelf: Shelf,
  channel: Channel,
): Pick<FullStorage, 'heads' | 'whole' | 'wholeLayout' | 'markShared' | 'merge'> {
  return {
    heads: () => shelf.read((turn) => turn.heads()),
    whole: (id, revision) =>
      shelf.read(async (turn) => {
        const head = await turn.head(id);
        const [one, document] = [
          await turn.revision(id, revision),
          await turn.document(id, revision),
        ];
        if (!head || !one || !document) return undefined;
        return { head, one: { ...one, packed: packedOf(document) } };
      }),
    wholeLayout: (id) =>
      shelf.read(async (turn) => {
        const head = await turn.head(id);
        if (head === undefined) return undefined;
        const texts = new Map((await turn.documents(id)).map((one) => [one.revision, one]));
        const revisions = (await turn.revisions(id)).flatMap((one) => {
          const document = texts.get(one.revision);
          return document ? [{ ...one, packed: packedOf(document) }] : [];
        });
        return { head, revisions };
      }),
    markShared: (ids) =>
      shelf.write(async (turn) => {
        const marked: StoredRevision[] = [];
        for (const id of ids) {
          const head = await turn.head(id);
          const one = head && (await turn.revision(id, head.revision));
          if (one && !one.shared) marked.push({ ...one, shared: true });
        }
        for (const one of marked) turn.putRevision(one);
        return marked;
      }),
    async merge(incoming) {
      const outcome = await shelf.write((turn) => mergeInto(turn, incoming));
      if (outcome.kind !== 'nothing-new') channel.tell({ kind: 'written', id: incoming.id });
      return outcome;
    },
  };
}

/** The packed text; an older version of the app stored it plain. */
const packedOf = ({ text, packed: bytes }: StoredDocument): Uint8Array =>
  text === undefined ? (bytes ?? new Uint8Array()) : packed(text);

interface Write {
  readonly layout: Layout;
  readonly text: string;
  readonly expected: number;
  readonly at: number;
}

/** Rules S1, S2, S7 and S8. */
async function saveOn(turn: ShelfTurn, write: Write): Promise<SaveOutcome> {
  const { layout, text, expected, at } = write;
  const { id } = layout;
  const head = await turn.head(id);
  const holding = head && (await turn.document(id, head.revision));
  const found = findBeforeSave(head, holding, { expected, text });
  if (found === 'same' && head) return { ok: true, revision: head.revision, at: head.changedAt };
  if (found !== 'fits') return { ok: false, kind: 'conflict' };
  const revision = (head?.last ?? expected) + 1;
  const [digest, facts] = [digestOf(text), listedFacts(layout)];
  const news = layout.signOffs.find((signOff) => !head?.signOffs.includes(signOff.id));
  turn.addRevision(
    {
      id,
      revision,
      parent: expected,
      at,
      digest,
      name: '',
      signed: news?.name ?? null,
      shared: false,
    },
    documentOf(id, revision, text),
  );
  const thinAt = Math.min(head?.thinAt ?? Number.POSITIVE_INFINITY, at + DAY);
  turn.putHead({
    ...NO_HEAD,
    ...head,
    id,
    ...facts,
    changedAt: at,
    revision,
    last: revision,
    digest,
    thinAt,
  });
  return { ok: true, revision, at };
}

/** Thins what can be thinned now, one layout in a turn, so that a save never waits long. */
async function thinAll(shelf: Shelf, now: number): Promise<number> {
  const heads = await shelf.read((turn) => turn.heads());
  let dropped = 0;
  for (const { id, thinAt } of heads) {
    if (thinAt !== null && thinAt <= now) {
      dropped += await shelf.write((turn) => thinOne(turn, id, now));
    }
  }
  return dropped;
}

async function thinOne(turn: ShelfTurn, id: Id, now: number): Promise<number> {
  const head = await turn.head(id);
  if (head === undefined) return 0;
  const tips = new Set([head.revision, ...head.asides]);
  const { drop, next } = thinned(await turn.revisions(id), tips, now);
  for (const revision of drop) turn.dropRevision(id, revision);
  turn.putHead({ ...head, thinAt: next });
  return drop.length;
}
