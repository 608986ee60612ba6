import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Standing, TOUCHING, worstOfEach } from '../../../src/rig/standing/standing.ts';
import { among, tom } from './scenes.ts';

const found: fc.Arbitrary<Standing> = fc
  .record({
    code: fc.constantFrom('piece-in-piece' as const, 'feet-overlap' as const),
    overlap: fc.double({ min: -1, max: 3, noNaN: true }),
  })
  .map((own) => ({ ...own, about: ['a', 'b'], place: { x: 0, y: 0, z: 0 } }));

describe('K1: what merely touches', () => {
  it('is told from more than 0.2 mm on, each code once, by its worst', () => {
    expect(TOUCHING).toBe(0.2);
    fc.assert(
      fc.property(fc.array(found), (all) => {
        const told = worstOfEach(all);
        const deep = all.filter(({ overlap }) => overlap > 0.2);
        const codes = [...new Set(deep.map(({ code }) => code))];
        expect(told.map(({ code }) => code).toSorted()).toEqual(codes.toSorted());
        for (const { code, overlap } of told) {
          expect(overlap).toBe(
            Math.max(...deep.filter((one) => one.code === code).map((one) => one.overlap)),
          );
        }
      }),
    );
  });

  it('drums that touch are not in each other, drums a millimetre nearer are', () => {
    // Shells of 150 mm with hoops of 10 mm: they touch at 320 mm.
    const apart = (x: number) =>
      among([tom, { ...tom, id: 'tom-2', x }], []).map(({ code }) => code);
    expect(apart(320)).not.toContain('piece-in-piece');
    expect(apart(319)).toContain('piece-in-piece');
  });
});
