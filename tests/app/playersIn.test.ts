import { describe, expect, it } from 'vitest';
import { playersIn } from '../../src/app/playersIn.ts';
import type { Player } from '../../src/layout/player.ts';
import { memoryStorage } from '../../src/storage/memory.ts';
import { NOTHING_STORED } from '../../src/storage/port.ts';
import { refusingStorage } from '../storage/refusing.ts';
import { sample } from '../storage/sample.ts';

/** A storage with a layout for each player, the first stored first. */
async function holding(...players: readonly Partial<Player>[]) {
  let now = 0;
  const storage = memoryStorage(() => (now += 1));
  for (const [index, player] of players.entries()) {
    const layout = sample(`layout-${index}`);
    await storage.save({ ...layout, player: { ...layout.player, ...player } }, NOTHING_STORED);
  }
  return storage;
}

const names = async (...asked: Parameters<typeof playersIn>) =>
  (await playersIn(...asked)).map(({ name, stature }) => `${name} ${stature}`);

describe('the players of the library', () => {
  it('are listed each once, the last changed layout’s first', async () => {
    const storage = await holding(
      { name: 'A' },
      { name: 'B', stature: 1800 },
      { name: 'A' },
      { name: 'A', stature: 1600 },
    );
    expect(await names(storage, undefined)).toEqual(['A 1600', 'A 1750', 'B 1800']);
  });

  it('the open layout’s own is passed over, unless another layout has it too', async () => {
    const storage = await holding({ name: 'A' }, { name: 'B' }, { name: 'B' });
    expect(await names(storage, 'layout-0')).toEqual(['B 1750']);
    expect(await names(storage, 'layout-1')).toEqual(['B 1750', 'A 1750']);
  });

  it('a layout that can’t be read is passed over', async () => {
    const storage = await holding({ name: 'A' }, { name: 'B' });
    const fickle = {
      list: storage.list,
      load: async (id: string) =>
        id === 'layout-1' ? ({ ok: false, kind: 'missing' } as const) : storage.load(id),
    };
    expect(await names(fickle, undefined)).toEqual(['A 1750']);
  });

  it('a storage that refuses says why', async () => {
    await expect(playersIn(refusingStorage('No storage today.'), undefined)).rejects.toThrow(
      'No storage today.',
    );
  });

  it('an empty library has none', async () => {
    expect(await playersIn(await holding(), undefined)).toEqual([]);
  });
});
