import { describe } from 'vitest';
import { emptyShelf, memoryStorage } from '../../src/storage/memory.ts';
import { storageContract } from './contract.ts';

describe('memoryStorage', () => {
  storageContract('in memory', () => {
    const shelf = emptyShelf();
    let time = 1000;
    let full = false;
    const now = () => {
      if (full) {
        full = false;
        throw new DOMException('no room', 'QuotaExceededError');
      }
      return time++;
    };
    return {
      open: () => memoryStorage(now, shelf),
      async damage(id, text) {
        const [key, document] = [...shelf.documents].findLast(([, one]) => one.id === id) ?? [];
        if (key !== undefined && document) shelf.documents.set(key, { ...document, text });
      },
      fillUp: () => {
        full = true;
      },
      documents: async () => [...shelf.documents.values()],
    };
  });
});
