import { digestOf } from '../../layout/digest.ts';
import type { Id } from '../../layout/fields.ts';
import { readLayout } from '../../layout/read.ts';
import { unpacked } from '../handOver/pack.ts';
import type { IncomingLayout } from '../merge.ts';
import type { WholeLayout } from '../shelved.ts';
import {
  listedFacts,
  type StoredHead,
  type StoredRevision,
  type WholeRevision,
} from '../stored.ts';
import type { HeadMeta, RevisionMeta } from './meta.ts';
import type { StoredRecord } from './record.ts';

export function headRecord(head: StoredHead): StoredRecord {
  const { id, name, revision, asides, removedAt, favourite, archived, tags } = head;
  const marks = { favourite, archived, tags: [...tags] };
  const meta = { id, name, revision, asides: [...asides], removedAt, ...marks };
  return { meta: { kind: 'head', ...meta }, body: new Uint8Array() };
}

export function revisionRecord(one: WholeRevision): StoredRecord {
  const { packed: body, id, revision, parent, at, digest, name, signed, shared } = one;
  const meta = { id, revision, parent, at, digest, name, signed, shared };
  return { meta: { kind: 'revision', ...meta }, body };
}

export function pointRecord({ id, revision, name, shared }: StoredRevision): StoredRecord {
  return { meta: { kind: 'point', id, revision, name, shared }, body: new Uint8Array() };
}

/** All records of a layout, the one of its head last. */
export const layoutRecords = ({ head, revisions }: WholeLayout): readonly StoredRecord[] => [
  ...revisions.map(revisionRecord),
  headRecord(head),
];

/** What records say of one layout, gathered in their order. */
export interface Gathered {
  readonly id: Id;
  head: HeadMeta | null;
  readonly revisions: Map<number, { meta: RevisionMeta; readonly body: Uint8Array }>;
}

export const nothingGathered = (id: Id): Gathered => ({ id, head: null, revisions: new Map() });

/** Adds what one record says of its layout. */
export function gather(into: Gathered, { meta, body }: StoredRecord): void {
  if (meta.kind === 'head') into.head = meta;
  if (meta.kind === 'revision') into.revisions.set(meta.revision, { meta, body });
  if (meta.kind === 'point') {
    const known = into.revisions.get(meta.revision);
    if (known) known.meta = { ...known.meta, name: meta.name, shared: meta.shared };
  }
}

/** A layout out of its records, or why it is none. `damaged`: points in its history that could not be read and are left out. */
export type FromRecords =
  | { readonly ok: true; readonly incoming: IncomingLayout; readonly damaged: number }
  | { readonly ok: false; readonly name: string; readonly why: string };

/**
 * Checks what was gathered of one layout: every text is what its digest says, and the one that holds passes the layout's own
 * check. When that one is damaged, the last good one before it holds.
 */
export function fromRecords({ id, head, revisions }: Gathered): FromRecords {
  const name = head?.name ?? id;
  if (head === null) return { ok: false, name, why: 'its head is missing' };
  const whole = [...revisions.values()]
    .sort((a, b) => a.meta.revision - b.meta.revision)
    .map(({ meta: { kind: _, ...meta }, body }): WholeRevision => ({ ...meta, packed: body }))
    .filter(isSound);
  const others = new Set(head.asides);
  const candidates = whole.filter(
    ({ revision }) => revision <= head.revision && !others.has(revision),
  );
  let why = 'the point that holds is missing or damaged';
  for (const { revision, packed } of candidates.toReversed().slice(0, 5)) {
    const read = readLayout(unpacked(packed) ?? '');
    if (read.ok && read.layout.id === id) {
      const { removedAt, favourite, archived, tags, asides } = head;
      const marks = { removedAt, favourite, archived, tags };
      const facts = listedFacts(read.layout);
      const incoming = { id, revision, asides, revisions: whole, facts, ...marks };
      return { ok: true, incoming, damaged: revisions.size - whole.length };
    }
    const [first] = read.ok ? [] : read.problems;
    if (first)
      why = `${first.path === '' ? '' : `${first.path}: `}expected ${first.expected}, found ${first.actual}`;
  }
  return { ok: false, name, why };
}

const isSound = ({ packed, digest }: WholeRevision): boolean => {
  const text = unpacked(packed);
  return text !== null && digestOf(text) === digest;
};
