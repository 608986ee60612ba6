import { expect, it } from 'vitest';
import { remembered, sameList } from '../../src/geometry/remembered.ts';

it('the same object has the same answer, computed once', () => {
  let times = 0;
  const doubled = remembered(({ value }: { value: number }) => {
    times += 1;
    return { value: 2 * value };
  });
  const [one, other] = [{ value: 1 }, { value: 1 }];
  expect(doubled(one)).toBe(doubled(one));
  expect(doubled(one)).toEqual({ value: 2 });
  expect(times).toBe(1);
  expect(doubled(other)).not.toBe(doubled(one));
});

it('an answer of undefined is remembered too', () => {
  let times = 0;
  const nothing = remembered(() => {
    times += 1;
  });
  const key = {};
  nothing(key);
  nothing(key);
  expect(times).toBe(1);
});

it('a list with the same entries is the last list', () => {
  const same = sameList<number>();
  const first = [1, 2];
  expect(same(first)).toBe(first);
  expect(same([1, 2])).toBe(first);
  expect(same([1, 2, 3])).not.toBe(first);
  expect(same([2, 1])).toEqual([2, 1]);
});
