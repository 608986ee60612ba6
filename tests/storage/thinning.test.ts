import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StoredRevision } from '../../src/storage/stored.ts';
import { thinned } from '../../src/storage/thinning.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** A whole day of UTC. */
const NOW = 400 * DAY;

const point = (
  revision: number,
  age: number,
  rest: Partial<StoredRevision> = {},
): StoredRevision => ({
  ...{ id: 'one', revision, parent: revision - 1, at: NOW - age, digest: `${revision}` },
  ...{ name: '', signed: null, shared: false },
  ...rest,
});
const none = new Set<number>();

describe('thinned', () => {
  it('T1 keeps all of the last day', () => {
    const points = Array.from({ length: 50 }, (_, index) => point(index + 1, DAY - 60_000 - index));
    expect(thinned(points, none, NOW).drop).toEqual([]);
  });

  it('T2 keeps the last of every hour of the last 30 days, T3 of every day before', () => {
    const points = [
      point(1, 100 * DAY),
      ...[point(2, 50 * DAY - 1), point(3, 50 * DAY - HOUR), point(4, 50 * DAY - 5 * HOUR)],
      ...[point(5, 3 * DAY - 1), point(6, 3 * DAY - 2), point(7, 3 * DAY - HOUR - 1)],
    ];
    expect(thinned(points, none, NOW).drop).toEqual([2, 3, 5]);
  });

  it('T4 keeps named, signed and shared points, the first one and the tips of lines', () => {
    const points = [
      point(1, 90 * DAY),
      point(2, 50 * DAY - 1, { name: 'Sound check' }),
      point(3, 50 * DAY - 2, { signed: 'Drummer' }),
      point(4, 50 * DAY - 3, { shared: true }),
      ...[point(5, 50 * DAY - 4), point(6, 50 * DAY - 5), point(7, 50 * DAY - 6)],
    ];
    expect(thinned(points, new Set([5, 7]), NOW).drop).toEqual([]);
    expect(thinned(points, new Set([7]), NOW).drop).toEqual([5]);
  });

  it('says when there can be more to drop', () => {
    expect(thinned([point(1, 9), point(2, HOUR)], none, NOW).next).toBe(NOW - HOUR + DAY);
    expect(thinned([point(1, 9), point(2, 2 * DAY)], none, NOW).next).toBe(NOW + 28 * DAY);
    expect(thinned([point(1, 9), point(2, 90 * DAY)], none, NOW).next).toBeNull();
  });

  const anyPoints = fc
    .array(
      fc.record({
        age: fc.integer({ min: 0, max: 120 * DAY }),
        name: fc.constantFrom('', '', '', 'named'),
        signed: fc.constantFrom(null, null, null, 'Drummer'),
      }),
      { maxLength: 60 },
    )
    .map((ages) =>
      ages
        .toSorted((a, b) => b.age - a.age)
        .map(({ age, ...rest }, index) => point(index + 1, age, rest)),
    );

  it('law: thinned again at the same moment nothing more goes', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const drop = new Set(thinned(points, none, NOW).drop);
        const left = points.filter(({ revision }) => !drop.has(revision));
        expect(thinned(left, none, NOW).drop).toEqual([]);
      }),
    );
  });

  it('law: from every point that goes a later kept one is less than a day away', () => {
    fc.assert(
      fc.property(anyPoints, (points) => {
        const drop = new Set(thinned(points, none, NOW).drop);
        for (const gone of points.filter(({ revision }) => drop.has(revision))) {
          expect(gone.name).toBe('');
          expect(gone.signed).toBeNull();
          const next = points.find(
            (one) => one.revision > gone.revision && !drop.has(one.revision),
          );
          expect((next?.at ?? Number.POSITIVE_INFINITY) - gone.at).toBeLessThan(DAY);
        }
      }),
    );
  });

  it('law: whatever moment it is, nothing goes before the moment that was told', () => {
    fc.assert(
      fc.property(anyPoints, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
        const { drop, next } = thinned(points, none, NOW);
        const left = points.filter(({ revision }) => !drop.includes(revision));
        const later = NOW + share * ((next ?? NOW + 900 * DAY) - NOW - 1);
        expect(thinned(left, none, later).drop).toEqual([]);
      }),
    );
  });
});
