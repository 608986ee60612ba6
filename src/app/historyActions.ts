import type { HistoryActions } from '../session/library.ts';
import type { StoragePort } from '../storage/port.ts';
import type { Autosave } from './autosave.ts';
import type { Workbench } from './workbench.ts';

interface HistorySurroundings {
  readonly storage: StoragePort;
  readonly autosave: Autosave;
  readonly workbench: Workbench;
  inTurn<T>(task: () => Promise<T>): Promise<T>;
}

/** What screens ask of the open layout's history, connected. What can't be done rejects with a message that says why. */
export function historyActions(around: HistorySurroundings): HistoryActions {
  const { storage, autosave, workbench, inTurn } = around;
  const openId = (): string => {
    const open = workbench.openNow();
    if (open === null) throw new Error('no layout is open.');
    return open.id;
  };
  return {
    list: () =>
      inTurn(async () => {
        const id = openId();
        await autosave.flush();
        const rows = await storage.revisions(id);
        if ('ok' in rows) throw new Error(rows.detail);
        return rows.toReversed();
      }),
    read: (revision) =>
      inTurn(async () => (await workbench.loadRevision(openId(), revision)).layout),
    name: (revision, name) =>
      inTurn(async () => {
        marked(await storage.nameRevision(openId(), revision, name.trim().slice(0, 80)));
      }),
    settle: (revision) =>
      inTurn(async () => {
        marked(await storage.settleLine(openId(), revision));
        await workbench.refresh();
      }),
  };
}

function marked(outcome: Awaited<ReturnType<StoragePort['nameRevision']>>): void {
  if (outcome.ok) return;
  throw new Error(outcome.kind === 'missing' ? 'this point is not here any more.' : outcome.detail);
}
