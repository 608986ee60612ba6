import type { Refusal, StoragePort } from './port.ts';

/** Stands in where the browser gives no storage that can be relied on; `detail` says why. */
export function refusingStorage(detail: string): StoragePort {
  const refusal: Refusal = { ok: false, kind: 'refused', reason: 'unavailable', detail };
  const refuse = async () => refusal;
  return {
    list: async () => ({ rows: [], refusal }),
    load: refuse,
    save: refuse,
    remove: refuse,
    restore: refuse,
    forget: refuse,
    watch: () => () => {},
    close() {},
  };
}
