import { describe, expect, it } from 'vitest';
import { takeInFiles } from '../../../src/views/library/takeInFiles.ts';

/** A library that knows files by their names: layouts, libraries, some that are neither, and some with which the storage fails. */
function shelf() {
  const done: string[] = [];
  return {
    done,
    isLibrary: async ({ name }: { name: string }) => name.endsWith('.layouts'),
    importLibrary: async ({ name }: { name: string }) => {
      if (name.startsWith('torn')) throw new Error('it is no library of this app');
      done.push(name);
    },
    importFile: async ({ name }: { name: string }) => {
      if (name.startsWith('full')) throw new Error('the storage is full');
      if (name.startsWith('bad')) {
        return { ok: false as const, problems: [{ path: 'margin', message: 'expected a number' }] };
      }
      done.push(name);
      return { ok: true as const, id: `id of ${name}` };
    },
  };
}
const files = (...names: readonly string[]) => names.map((name) => new File(['{}'], name));

describe('files that are taken in together', () => {
  it('are all taken, in their order, and none keeps the others away', async () => {
    const library = shelf();
    const names = ['a.json', 'bad.json', 'all.layouts', 'full.json', 'torn.layouts', 'b.json'];
    const taken = await takeInFiles(library, files(...names));
    expect(library.done).toEqual(['a.json', 'all.layouts', 'b.json']);
    expect(taken.layouts).toEqual(['id of a.json', 'id of b.json']);
    expect(taken.refused).toEqual([
      {
        ok: false,
        file: 'bad.json',
        problems: [{ path: 'margin', message: 'expected a number' }],
      },
      { ok: false, file: 'full.json', problems: [{ path: '', message: 'the storage is full' }] },
      {
        ok: false,
        file: 'torn.layouts',
        problems: [{ path: '', message: 'it is no library of this app' }],
      },
    ]);
  });

  it('a single one fails with what failed', async () => {
    await expect(takeInFiles(shelf(), files('full.json'))).rejects.toThrow('the storage is full');
    expect(await takeInFiles(shelf(), [])).toEqual({ layouts: [], refused: [] });
  });
});
