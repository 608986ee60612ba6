import type { Id } from '../layout/fields.ts';
import { NOTHING_STORED, type Refusal, type StoragePort } from './port.ts';

/** What the storage last knew of a layout whose latest content it refused. */
interface Held {
  readonly base: number;
  readonly refusal: Refusal;
}

export interface ShelteredStorage extends StoragePort {
  /** Offers all that was refused to the storage again. Not while one of these layouts is open: its opener would not know. */
  offerAgain(): Promise<void>;
  /** The layouts whose latest content is in the shelter and not in the storage. */
  held(): readonly Id[];
}

/**
 * A storage whose refused saves are not lost while the page is open: a shelter in memory takes them, lists them and gives them
 * back. The refusal is still the answer, because nothing in the shelter outlives the page. The next save that the storage
 * takes or finds in conflict ends the shelter: then the caller holds the layout, and the storage what another tab made of it.
 */
export function sheltered(storage: StoragePort, shelter: StoragePort): ShelteredStorage {
  const held = new Map<Id, Held>();
  const homeOf = (id: Id) => (held.get(id)?.base === NOTHING_STORED ? shelter : storage);

  const save: StoragePort['save'] = async (layout, expected) => {
    const outcome = await storage.save(layout, expected);
    if (!outcome.ok && outcome.kind === 'refused') {
      const before = await shelter.load(layout.id);
      const kept = await shelter.save(layout, before.ok ? before.revision : NOTHING_STORED);
      if (kept.ok) held.set(layout.id, { base: expected, refusal: outcome });
    } else held.delete(layout.id);
    return outcome;
  };

  return {
    ...storage,
    save,
    async list() {
      const { rows, refusal } = await storage.list();
      const inShelter = (await shelter.list()).rows.filter(({ id }) => held.has(id));
      const others = rows.filter(({ id }) => !held.has(id));
      const [first] = inShelter;
      return {
        rows: [...inShelter, ...others].sort((a, b) => b.changedAt - a.changedAt),
        refusal: refusal ?? (first && held.get(first.id)?.refusal) ?? null,
      };
    },
    async load(id) {
      const known = held.get(id);
      if (known === undefined) return storage.load(id);
      const there = await shelter.load(id);
      return there.ok ? { ...there, revision: known.base, at: null } : there;
    },
    remove: (id) => homeOf(id).remove(id),
    restore: (id) => homeOf(id).restore(id),
    async offerAgain() {
      for (const [id, { base }] of [...held]) {
        const there = await shelter.load(id);
        if (there.ok) await save(there.layout, base);
      }
    },
    held: () => [...held.keys()],
  };
}
