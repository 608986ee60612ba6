import type { IDBPTransaction } from 'idb';
import { digestOf } from '../layout/digest.ts';
import { readLayout } from '../layout/read.ts';
import type { Database, LayoutDatabase, Stores } from './database.ts';
import { listedFacts, NO_HEAD, type StoredHead } from './stored.ts';

type Change = IDBPTransaction<LayoutDatabase, Stores, 'versionchange'>;

/** What version 1 kept of a layout beside its document. */
type FirstHead = Pick<
  StoredHead,
  'id' | 'name' | 'venue' | 'pieces' | 'mics' | 'changedAt' | 'revision' | 'removedAt'
>;
/** A document of version 1: the only one of its layout, as plain text. */
interface FirstDocument {
  readonly id: string;
  readonly revision: number;
  readonly parent: number;
  readonly at: number;
  readonly text: string;
}

/**
 * Brings the database from an older version to this one; nothing that it holds is dropped, and the documents stay as they are.
 *
 * @throws What the browser throws; the caller then takes the whole upgrade back.
 */
export async function upgraded(database: Database, from: number, change: Change): Promise<void> {
  database.createObjectStore('revisions', { keyPath: ['id', 'revision'] });
  if (from < 1) {
    database.createObjectStore('heads', { keyPath: 'id' });
    database.createObjectStore('documents', { keyPath: ['id', 'revision'] });
    return;
  }
  const heads = change.objectStore('heads');
  const documents = change.objectStore('documents');
  const revisions = change.objectStore('revisions');
  for (const head of (await heads.getAll()) as readonly FirstHead[]) {
    const document = (await documents.get([head.id, head.revision])) as FirstDocument | undefined;
    const text = document?.text ?? '';
    const digest = digestOf(text);
    const read = readLayout(text);
    const { id, revision, changedAt: at } = head;
    const facts = read.ok ? listedFacts(read.layout) : UNREAD;
    await heads.put({ ...NO_HEAD, ...facts, ...head, last: revision, digest });
    const parent = document?.parent ?? 0;
    await revisions.put({
      id,
      revision,
      parent,
      at,
      digest,
      name: '',
      signed: null,
      shared: false,
    });
  }
}

/** Of a document that can't be read the list shows what it showed before. */
const UNREAD = { date: null, player: '', picture: '', signOff: 'none', signOffs: [] } as const;
