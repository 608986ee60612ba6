import fc from 'fast-check';
import { expect, test } from 'vitest';
import { differences } from '../../src/layout/differences.ts';
import { canonicalText } from '../../src/layout/digest.ts';

const json = fc.jsonValue({ maxDepth: 4 });

test('there is none exactly when two values are equal as JSON', () => {
  fc.assert(
    fc.property(json, json, fc.boolean(), (first, other, same) => {
      const second = same ? structuredClone(first) : other;
      const isEqual = canonicalText(first) === canonicalText(second);
      expect(differences(first, second).length === 0).toBe(isEqual);
    }),
  );
});

test('swapped, they are the same with before and after swapped', () => {
  const inOrder = (list: readonly unknown[]) =>
    list.map((entry) => JSON.stringify(entry)).toSorted();
  fc.assert(
    fc.property(json, json, (first, second) => {
      const back = differences(second, first).map(({ path, before, after }) => ({
        path,
        before: after,
        after: before,
      }));
      expect(inOrder(back)).toEqual(inOrder(differences(first, second)));
    }),
  );
});

test('name each field by its path', () => {
  const before = { size: 330, support: { kind: 'stand', turn: 10 }, hears: ['snare'] };
  const after = { size: 356, support: { kind: 'held', by: 'kick' }, hears: ['snare', 'hat'] };
  expect(differences(before, after)).toEqual([
    { path: 'size', before: 330, after: 356 },
    { path: 'support.kind', before: 'stand', after: 'held' },
    { path: 'support.turn', before: 10, after: undefined },
    { path: 'support.by', before: undefined, after: 'kick' },
    { path: 'hears.1', before: undefined, after: 'hat' },
  ]);
});
