import fc from 'fast-check';
import { expect, it } from 'vitest';
import { listed } from '../../src/geometry/listed.ts';

it('makes what map makes, in order, each entry once', () => {
  fc.assert(
    fc.property(fc.array(fc.integer()), (things) => {
      const asked: number[] = [];
      const make = (thing: number, i: number): string => {
        asked.push(i);
        return `${thing} at ${i}`;
      };
      expect(listed(things, make)).toEqual(things.map((thing, i) => `${thing} at ${i}`));
      expect(asked).toEqual([...things.keys()]);
    }),
  );
});
