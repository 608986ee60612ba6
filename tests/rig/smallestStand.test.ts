import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vec } from '../../src/geometry/vector.ts';
import { STAND_CLASSES, standSpec } from '../../src/layout/catalogue/standClasses.ts';
import { smallestStand } from '../../src/rig/smallestStand.ts';
import { standReach } from '../../src/rig/standReach.ts';

const base = { x: 0, y: 0 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('smallestStand (S4)', () => {
  it('takes the low tripod for a kick, the tall one for overheads, nothing for the ceiling', () => {
    expect(smallestStand(vec(400, 0, 300), base)).toBe('tripodLow');
    expect(smallestStand(vec(600, 0, 900), base)).toBe('tripodMedium');
    expect(smallestStand(vec(700, 0, 1900), base)).toBe('tripodTall');
    expect(smallestStand(vec(700, 0, 3500), base)).toBeUndefined();
  });

  it('serves, and no class before it does', () => {
    fc.assert(
      fc.property(mm(0, 1000), mm(0, 2500), (x, z) => {
        const hold = vec(x, 0, z);
        const found = smallestStand(hold, base);
        const order = STAND_CLASSES.map(({ standClass }) => standClass);
        const before = found ? order.slice(0, order.indexOf(found)) : order;
        for (const stand of before) {
          expect(standReach(standSpec(stand), base, hold, null).beyondReach).toBeGreaterThan(0);
        }
        if (found) expect(standReach(standSpec(found), base, hold, null).beyondReach).toBe(0);
      }),
    );
  });
});
