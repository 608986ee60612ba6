import type { Id } from '../layout/fields.ts';
import { NOTHING_STORED, type StoragePort } from './port.ts';

/**
 * A storage whose refused saves are not lost while the page is open: a shelter in memory takes them, lists them and gives them
 * back. The refusal is still the answer, because nothing in the shelter outlives the page. The next save that the storage
 * takes or finds in conflict ends the shelter: then the caller holds the layout, and the storage what another tab made of it.
 */
export function sheltered(storage: StoragePort, shelter: StoragePort): StoragePort {
  /** Layouts whose latest content is only in the shelter, with the revision that the storage last knew. */
  const bases = new Map<Id, number>();
  const isNew = (id: Id) => bases.get(id) === NOTHING_STORED;

  return {
    ...storage,
    async list() {
      const { rows, refusal } = await storage.list();
      const held = (await shelter.list()).rows.filter(({ id }) => bases.has(id));
      const others = rows.filter(({ id }) => !bases.has(id));
      return {
        rows: [...held, ...others].sort((a, b) => b.changedAt - a.changedAt),
        refusal,
      };
    },
    async load(id) {
      const base = bases.get(id);
      if (base === undefined) return storage.load(id);
      const held = await shelter.load(id);
      return held.ok ? { ...held, revision: base } : held;
    },
    async save(layout, expected) {
      const outcome = await storage.save(layout, expected);
      if (!outcome.ok && outcome.kind === 'refused') {
        const held = await shelter.load(layout.id);
        const kept = await shelter.save(layout, held.ok ? held.revision : NOTHING_STORED);
        if (kept.ok) bases.set(layout.id, expected);
      } else bases.delete(layout.id);
      return outcome;
    },
    remove: (id) => (isNew(id) ? shelter.remove(id) : storage.remove(id)),
    restore: (id) => (isNew(id) ? shelter.restore(id) : storage.restore(id)),
  };
}
