import fc from 'fast-check';
import { expect, test } from 'vitest';
import { z } from 'zod';
import { settled } from '../../../src/layout/edit/settle.ts';

const schema = z.strictObject({
  size: z.number().min(1).max(10),
  count: z.number().int().min(0).max(5),
  name: z.string().min(1).max(4),
  code: z.string().regex(/^[a-z]$/),
  side: z.enum(['left', 'right']),
  spare: z.number().min(0).max(1).nullable(),
  hint: z.number().min(0).max(1).optional(),
  list: z.array(z.number().min(0).max(9)).max(3),
  shape: z.discriminatedUnion('kind', [
    z.strictObject({ kind: z.literal('disc'), radius: z.number().min(1).max(9) }),
    z.strictObject({ kind: z.enum(['box', 'slab']), edge: z.number().min(1).max(9) }),
  ]),
});
type Value = z.infer<typeof schema>;
const before: Value = {
  size: 5,
  count: 2,
  name: 'one',
  code: 'a',
  side: 'left',
  spare: null,
  list: [1, 2],
  shape: { kind: 'disc', radius: 3 },
};
const changed = (change: object): Value => settled<Value>(schema, before, { ...before, ...change });

test.each([
  ['a number over its limit stops there', { size: 99 }, { size: 10 }],
  ['a number under its limit stops there', { size: -99 }, { size: 1 }],
  ['infinity is over every limit', { size: Infinity }, { size: 10 }],
  ['not a number stays as it was', { size: Number.NaN, count: 4 }, { count: 4 }],
  ['a whole number is rounded', { count: 3.6 }, { count: 4 }],
  ['a text is cut', { name: 'twelve' }, { name: 'twel' }],
  ['an empty name stays as it was', { name: '', count: 4 }, { count: 4 }],
  ['a text of the wrong form stays as it was', { code: 'A', count: 4 }, { count: 4 }],
  ['no choice stays as it was', { side: 'top', count: 4 }, { count: 4 }],
  ['none becomes some, inside its limits', { spare: 7 }, { spare: 1 }],
  ['what is optional comes', { hint: 0.5 }, { hint: 0.5 }],
  ['a list is cut and its entries fitted', { list: [1, 20, 3, 4] }, { list: [1, 9, 3] }],
  ['an unknown field is dropped', { colour: 'red', count: 4 }, { count: 4 }],
  [
    'another kind comes with its own fields',
    { shape: { kind: 'slab', edge: 12 } },
    { shape: { kind: 'slab', edge: 9 } },
  ],
  ['an unknown kind stays as it was', { shape: { kind: 'ball' }, count: 4 }, { count: 4 }],
  ['-0 is 0', { list: [-0] }, { list: [0] }],
])('%s', (_, change, result) => {
  expect(changed(change)).toStrictEqual({ ...before, ...result });
});

test('what comes out equal is the same object, inner parts too', () => {
  expect(changed({})).toBe(before);
  expect(changed({ shape: { ...before.shape }, list: [...before.list] })).toBe(before);
  expect(changed({ size: 6 }).shape).toBe(before.shape);
});

test('what was optional and is undefined goes', () => {
  const hinted: Value = { ...before, hint: 0.5 };
  expect(settled<Value>(schema, hinted, { ...before })).toStrictEqual(before);
});

test('whatever comes, the result passes the schema', () => {
  fc.assert(
    fc.property(fc.dictionary(fc.constantFrom(...Object.keys(before)), fc.anything()), (change) => {
      expect(schema.safeParse(changed(change)).success).toBe(true);
    }),
    { numRuns: 500 },
  );
});
