import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sharedParts } from '../../src/geometry/sharedParts.ts';
import { data, objectsIn } from './data.ts';

describe('data made of what was there before', () => {
  test('equal what they were made from, whatever was there before', () => {
    fc.assert(
      fc.property(data, data, (before, now) => {
        expect(sharedParts(before, now)).toStrictEqual(now);
      }),
    );
  });

  test('are the very same where all is equal', () => {
    fc.assert(
      fc.property(data, (before) => {
        expect(sharedParts(before, structuredClone(before))).toBe(before);
      }),
    );
  });

  test('share all that did not change beside one part that did', () => {
    fc.assert(
      fc.property(fc.array(data, { minLength: 1, maxLength: 5 }), data, (parts, other) => {
        const before = { parts, other: { kept: other } };
        const now = structuredClone({ ...before, parts: [...parts.slice(0, -1), 'changed'] });
        const made = sharedParts(before, now);
        expect(made.other).toBe(before.other);
        for (const [i, part] of parts.slice(0, -1).entries()) expect(made.parts[i]).toBe(part);
      }),
    );
  });

  test('rows go on being the same when one comes in or goes before them', () => {
    const rows = [1, 2, 3, 4].map((id) => ({ id, at: { x: id } }));
    const fewer = sharedParts(rows, structuredClone(rows.slice(1)));
    expect(fewer.map((row, i) => row === rows[i + 1])).toEqual([true, true, true]);
    const more = sharedParts(rows, structuredClone([{ id: 0, at: { x: 0 } }, ...rows]));
    expect(more.slice(1).map((row, i) => row === rows[i])).toEqual([true, true, true, true]);
  });

  test('nothing is changed in what was there before or what came', () => {
    fc.assert(
      fc.property(data, data, (before, now) => {
        const [first, second] = [structuredClone(before), structuredClone(now)];
        for (const one of [...objectsIn(before), ...objectsIn(now)]) Object.freeze(one);
        sharedParts(before, now);
        expect([before, now]).toStrictEqual([first, second]);
      }),
    );
  });

  test('what is no plain data counts as changed', () => {
    const before = { when: new Date(1), list: new Float64Array(2) };
    const now = { when: new Date(1), list: new Float64Array(2) };
    expect(sharedParts(before, now).when).toBe(now.when);
    expect(sharedParts(before, now).list).toBe(now.list);
  });
});
