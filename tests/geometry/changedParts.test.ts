import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changed, changeFrom } from '../../src/geometry/changedParts.ts';
import { sharedParts } from '../../src/geometry/sharedParts.ts';
import { data, objectsIn } from './data.ts';

/** As it comes by message. */
const sent = (before: unknown, now: unknown) => structuredClone(changeFrom(before, now));

/** How much is told, in characters. */
const sizeOf = (before: unknown, now: unknown): number => {
  const { numbers, values } = changeFrom(before, now);
  return JSON.stringify([[...numbers], values]).length;
};

describe('changes of plain data', () => {
  test('the data after a change equal those that it was told of, whatever was there before', () => {
    fc.assert(
      fc.property(data, data, (before, now) => {
        expect(changed(structuredClone(before), sent(before, now))).toStrictEqual(now);
      }),
    );
  });

  test('change after change, each told from what was told before, both sides hold the same', () => {
    fc.assert(
      fc.property(fc.array(data, { maxLength: 6 }), (list) => {
        let here: unknown = null;
        let there: unknown = null;
        for (const now of list) {
          there = changed(there, sent(here, now));
          here = now;
          expect(there).toStrictEqual(now);
        }
      }),
    );
  });

  test('what is equal is no change, and stays the very same', () => {
    fc.assert(
      fc.property(data, (before) => {
        const change = changeFrom(before, structuredClone(before));
        expect(change).toEqual(changeFrom(null, null));
        expect(changed(before, change)).toBe(before);
      }),
    );
  });

  test('parts that did not change stay the very same, those at their place and those that moved', () => {
    const isSame = (made: unknown, alike: unknown, before: unknown): void => {
      if (Object.is(alike, before)) expect(made).toBe(before);
      if (typeof alike !== 'object' || alike === null) return;
      if (typeof before !== 'object' || before === null) return;
      for (const [key, part] of Object.entries(alike)) {
        const there = (before as Record<string, unknown>)[key];
        isSame((made as Record<string, unknown>)[key], part, there);
      }
    };
    fc.assert(
      fc.property(data, data, (before, now) => {
        const made = changed(before, sent(before, now));
        // What could be shared by comparing all of it is shared.
        isSame(made, sharedParts(before, structuredClone(now)), before);
      }),
    );
    const rows = [1, 2, 3, 4].map((id) => ({ id, at: { x: id } }));
    const fewer = changed(rows, sent(rows, structuredClone(rows.slice(1)))) as typeof rows;
    expect(fewer.map((row, i) => row === rows[i + 1])).toEqual([true, true, true]);
    const longer = structuredClone([{ id: 0, at: { x: 0 } }, ...rows]);
    const more = changed(rows, sent(rows, longer)) as typeof rows;
    expect(more.slice(1).map((row, i) => row === rows[i])).toEqual([true, true, true, true]);
  });

  test('comparing the data after a change with those before it would share nothing more', () => {
    const compare = (made: unknown, compared: unknown, known: ReadonlySet<unknown>): void => {
      if (typeof compared !== 'object' || compared === null) return;
      if (known.has(compared)) expect(made).toBe(compared);
      for (const [key, part] of Object.entries(compared)) {
        compare((made as Record<string, unknown>)[key], part, known);
      }
    };
    const row = fc.record({ id: fc.nat(2), parts: fc.array(data, { maxLength: 3 }) });
    fc.assert(
      fc.property(
        fc.array(row, { maxLength: 4 }),
        fc.array(row, { maxLength: 2 }),
        (rows, come) => {
          const now = structuredClone([...come, ...rows.map(({ parts }) => ({ id: 3, parts }))]);
          const made = changed(rows, sent(rows, now));
          compare(made, sharedParts(rows, made), new Set(objectsIn(rows)));
        },
      ),
    );
  });

  test('what is no plain data goes along as it is', () => {
    const now = { when: new Date(1), list: new Float64Array([1, -0]) };
    expect(changed(null, sent(null, now))).toStrictEqual(now);
    const before = { when: new Date(1), list: new Float64Array(2) };
    expect(changed(before, changeFrom(before, now))).toStrictEqual(now);
  });

  test('a message is as long as what changed, not as what is there', () => {
    const rows = Array.from({ length: 500 }, (_, id) => ({ id, at: { x: id, y: id } }));
    const moved = rows.map((row) => (row.id === 250 ? { ...row, at: { x: 0, y: 0 } } : row));
    expect(sizeOf({ rows }, { rows: moved })).toBeLessThan(300);
    const none = sizeOf({ rows: rows.slice(0, 10) }, { rows: rows.slice(0, 10) });
    expect(sizeOf({ rows }, { rows })).toBe(none);
  });

  test('nothing is changed in what was there before', () => {
    fc.assert(
      fc.property(data, data, (before, now) => {
        const copy = structuredClone(before);
        changed(before, changeFrom(before, now));
        expect(before).toStrictEqual(copy);
      }),
    );
  });
});
