import fc from 'fast-check';
import { expect, it } from 'vitest';
import { PriorityQueue } from '../../src/geometry/priorityQueue.ts';

it('gives everything back, smallest key first, equal keys in the order in which they came', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 0, max: 9 })), (keys) => {
      const queue = new PriorityQueue<number>();
      for (const [i, key] of keys.entries()) queue.push(key, i);
      const out: number[] = [];
      for (let item = queue.pop(); item !== undefined; item = queue.pop()) out.push(item);
      const inOrder = keys
        .map((_, i) => i)
        .sort((i, j) => (keys[i] ?? 0) - (keys[j] ?? 0) || i - j);
      expect(out).toEqual(inOrder);
    }),
  );
});

it('stays in order while entries come and go', () => {
  const step = fc.oneof(fc.double({ min: -5, max: 5, noNaN: true }), fc.constant('pop' as const));
  fc.assert(
    fc.property(fc.array(step), (steps) => {
      const queue = new PriorityQueue<number>();
      const plain: number[] = [];
      for (const entry of steps) {
        if (entry === 'pop') {
          plain.sort((a, b) => a - b);
          expect(queue.pop()).toBe(plain.shift());
        } else {
          queue.push(entry, entry);
          plain.push(entry);
        }
      }
    }),
  );
});
