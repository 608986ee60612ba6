import type { Refusal, StoragePort } from '../../src/storage/port.ts';

/** A storage that refuses everything, as a browser without any does; `detail` is what it says. */
export function refusingStorage(detail: string): StoragePort {
  const refusal: Refusal = { ok: false, kind: 'refused', reason: 'unavailable', detail };
  const refuse = async () => refusal;
  return {
    list: async () => ({ rows: [], refusal }),
    load: refuse,
    save: refuse,
    remove: refuse,
    restore: refuse,
    removed: refuse,
    mark: refuse,
    revisions: refuse,
    loadRevision: refuse,
    nameRevision: refuse,
    settleLine: refuse,
    thin: refuse,
    forget: refuse,
    watch: () => () => {},
    close() {},
  };
}
