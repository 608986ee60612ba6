import { z } from 'zod';
import type { Id } from '../layout/fields.ts';
import type { RowNeed } from '../session/rowNeeds.ts';

const KEY = 'strokespace.needs';

const kept = z.strictObject({
  version: z.string(),
  needs: z.record(
    z.string(),
    z.strictObject({
      changedAt: z.number(),
      solve: z.int().nonnegative(),
      look: z.int().nonnegative(),
      signOff: z.enum(['none', 'broken', 'stale', 'holds', 'withheld', 'reworked']),
    }),
  ),
});

/** What was known of the rows when this version of the app was last open; empty where that is not there or not understood. */
export function readNeeds(storage: () => Storage, version: string): ReadonlyMap<Id, RowNeed> {
  try {
    const read = kept.parse(JSON.parse(storage().getItem(KEY) ?? ''));
    return new Map(read.version === version ? Object.entries(read.needs) : []);
  } catch {
    return new Map();
  }
}

/** Keeps what is known of the rows. */
export function keepNeeds(
  storage: () => Storage,
  version: string,
  known: ReadonlyMap<Id, RowNeed>,
): void {
  try {
    storage().setItem(KEY, JSON.stringify({ version, needs: Object.fromEntries(known) }));
  } catch {
    // Refused or full: it is worked out again.
  }
}
