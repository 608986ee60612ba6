import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Lanes, lowestBit, WORD } from '../../src/geometry/lanes.ts';

const place = fc.double({ min: -2000, max: 2000, noNaN: true });
const range = fc.tuple(place, place).map(([p, q]) => [Math.min(p, q), Math.max(p, q)] as const);
const rangesAndOne = fc.tuple(fc.array(range, { minLength: 1, maxLength: 80 }), range);

function told(
  ranges: readonly (readonly [number, number])[],
  [low, high]: readonly [number, number],
) {
  const lanes = new Lanes(
    Float64Array.from(ranges, ([from]) => from),
    Float64Array.from(ranges, ([, to]) => to),
  );
  const found: number[] = [];
  for (let word = 0; word < lanes.words; word += 1) {
    let bits = lanes.met(lanes.laneOf(low), lanes.laneOf(high), word);
    for (; bits !== 0; bits &= bits - 1) found.push(word * WORD + lowestBit(bits));
  }
  return found;
}

test('all ranges that another one meets are told, once and in order, and none that is farther off than two lanes', () => {
  fc.assert(
    fc.property(rangesAndOne, ([ranges, one]) => {
      const found = told(ranges, one);
      expect(found).toEqual([...new Set(found)].sort((p, q) => p - q));
      const ends = ranges.flat();
      const twoLanes = (2 * (Math.max(...ends) - Math.min(...ends))) / 32;
      const [low, high] = one;
      const isOff = ([from, to]: readonly [number, number], by: number) =>
        from > high + by || to < low - by;
      for (const [i, other] of ranges.entries()) {
        if (!isOff(other, 0)) expect(found).toContain(i);
        else if (isOff(other, twoLanes) && isInside(one, ends)) expect(found).not.toContain(i);
      }
    }),
    { numRuns: 500 },
  );
});

/** Beyond all lanes everything is in the first or the last of them. */
const isInside = ([low, high]: readonly [number, number], ends: readonly number[]): boolean =>
  low >= Math.min(...ends) && high <= Math.max(...ends);

test('ranges that are all one place are told of each other', () => {
  expect(
    told(
      [
        [5, 5],
        [5, 5],
      ],
      [5, 5],
    ),
  ).toEqual([0, 1]);
});
