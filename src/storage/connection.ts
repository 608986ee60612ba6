import { openDB } from 'idb';
import type { Database, LayoutDatabase } from './database.ts';
import type { ClosedWhy } from './port.ts';
import { upgraded } from './upgrade.ts';

const DATABASE_VERSION = 2;
/** How long opening may take before it counts as refused, ms. */
const OPENING_PATIENCE = 10_000;

/** The database can't be opened now; the message says why and what helps. */
export class CannotOpen extends Error {}

export interface Connection {
  /** Runs with an open database; opens it again, once, when the browser had taken it away. */
  use<T>(run: (database: Database) => Promise<T>): Promise<T>;
  close(): void;
}

/**
 * A connection that opens on first use and again after it was lost, as tablets drop it when an app is put away.
 *
 * It closes for a newer version of the app and when all data are cleared, so that it never blocks either, and says so.
 */
export function connectTo(name: string, onClosed: (why: ClosedWhy) => void): Connection {
  let current: Opening | undefined;

  const opening = (): Opening => {
    if (current !== undefined) return current;
    const opened = open(name, (why) => {
      drop(opened);
      if (why !== undefined) onClosed(why);
    });
    current = opened;
    return opened;
  };
  const drop = (gone: Opening): void => {
    if (current === gone) current = undefined;
  };
  const run = async <T>({ database, late }: Opening, work: (database: Database) => Promise<T>) =>
    work(await Promise.race([database, late]));

  return {
    async use(work) {
      const first = opening();
      try {
        return await run(first, work);
      } catch (error) {
        if (!isLostConnection(error)) throw error;
        drop(first);
        return await run(opening(), work);
      }
    },
    close() {
      current?.database.then((database) => database.close()).catch(() => {});
      current = undefined;
    },
  };
}

interface Opening {
  readonly database: Promise<Database>;
  /** Rejects when another tab keeps this one from opening, or the browser does not answer; `database` may still come. */
  readonly late: Promise<never>;
}

/** @param onGone Called when this opening is of no more use: with the reason when it had been open. */
function open(name: string, onGone: (why?: ClosedWhy) => void): Opening {
  let tellLate: (error: CannotOpen) => void = () => {};
  const late = new Promise<never>((_, fail) => {
    tellLate = fail;
  });
  late.catch(() => {});
  const patience = setTimeout(
    () => tellLate(new CannotOpen('The browser did not open its storage.')),
    OPENING_PATIENCE,
  );
  let upgradeError: unknown;
  const opening = async () =>
    openDB<LayoutDatabase>(name, DATABASE_VERSION, {
      async upgrade(database, from, _to, transaction) {
        try {
          await upgraded(database, from, transaction);
        } catch (error) {
          // Without this the browser would commit the half of the upgrade that worked.
          upgradeError = error;
          transaction.done.catch(() => {});
          transaction.abort();
        }
      },
      blocked: () =>
        tellLate(
          new CannotOpen('Another tab holds an older version of the storage open. Close that tab.'),
        ),
      blocking(_from, to, event) {
        (event.target as IDBDatabase).close();
        onGone(to === null ? 'cleared' : 'newer-version');
      },
      terminated: () => onGone('connection-lost'),
    });
  const database = opening()
    .catch((error: unknown) => {
      onGone();
      throw cannotOpen(upgradeError ?? error);
    })
    .finally(() => clearTimeout(patience));
  return { database, late };
}

function cannotOpen(error: unknown): CannotOpen {
  if (error instanceof DOMException && error.name === 'VersionError') {
    return new CannotOpen(
      'A newer version of Strokespace has taken this storage over. Load the page again.',
    );
  }
  return new CannotOpen(error instanceof Error ? error.message : String(error), { cause: error });
}

/** InvalidStateError: the connection is closing; UnknownError: what browsers give when their database process has gone. */
const isLostConnection = (error: unknown): boolean =>
  error instanceof DOMException &&
  (error.name === 'InvalidStateError' || error.name === 'UnknownError');
