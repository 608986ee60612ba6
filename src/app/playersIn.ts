import type { Id } from '../layout/fields.ts';
import type { Player } from '../layout/player.ts';
import type { StoragePort } from '../storage/port.ts';

/**
 * Every player of the stored layouts, each once, the last changed layout's first. The layout `except` is passed over, and so is one that
 * can't be read: the list of layouts says what is wrong with it.
 *
 * @throws {Error} When the storage can't list anything; the message is what it said.
 */
export async function playersIn(
  storage: Pick<StoragePort, 'list' | 'load'>,
  except: Id | undefined,
): Promise<readonly Player[]> {
  const { rows, refusal } = await storage.list();
  if (refusal !== null && rows.length === 0) throw new Error(refusal.detail);
  const players = new Map<string, Player>();
  for (const { id } of rows) {
    if (id === except) continue;
    const there = await storage.load(id);
    if (!there.ok) continue;
    const { player } = there.layout;
    // Loading puts the fields in the schema's order, so that players who are the same are the same text.
    const key = JSON.stringify(player);
    if (!players.has(key)) players.set(key, player);
  }
  return [...players.values()];
}
