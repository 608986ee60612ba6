import fc from 'fast-check';

const leaf = fc.oneof(
  fc.integer({ min: 0, max: 3 }),
  fc.constantFrom('a', 'b', null, undefined, true, Number.NaN, Number.POSITIVE_INFINITY, -0),
);

/** Plain data of any shape, small enough that two of them are often alike. */
export const { data } = fc.letrec<{ data: unknown }>((tie) => ({
  data: fc.oneof(
    { depthSize: 'small' },
    leaf,
    fc.array(tie('data'), { maxLength: 4 }),
    fc.dictionary(fc.constantFrom('p', 'q', 'r', 's'), tie('data'), { noNullPrototype: true }),
  ),
}));

/** Every object in some data. */
export function objectsIn(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(objectsIn)];
}
