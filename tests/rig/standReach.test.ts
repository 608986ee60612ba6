import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { vec } from '../../src/geometry/vector.ts';
import { STAND_CLASSES, standSpec } from '../../src/layout/catalogue/standClasses.ts';
import { standReach } from '../../src/rig/standReach.ts';

const spec = standSpec('tripodMedium');
const base = { x: 0, y: 0 };
const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const withBoom = fc.constantFrom(...STAND_CLASSES.filter(({ boomMax }) => boomMax > 0));

describe('standReach', () => {
  it('S1: a free mast takes the height of the hold point within its range, so that the boom lies level', () => {
    fc.assert(
      fc.property(withBoom, mm(0, 2000), mm(200, 500), (stand, z, x) => {
        const { clutch } = standReach(stand, base, vec(x, 0, z), null);
        expect(clutch.z).toBe(Math.min(stand.mastMax, Math.max(stand.mastMin, z)));
      }),
    );
  });

  it('S1: no other height of the mast makes the boom lie more nearly level', () => {
    fc.assert(
      fc.property(withBoom, mm(0, 2000), mm(0, 1), (stand, z, share) => {
        const other = stand.mastMin + share * (stand.mastMax - stand.mastMin);
        const { clutch } = standReach(stand, base, vec(300, 0, z), null);
        expect(Math.abs(clutch.z - z)).toBeLessThanOrEqual(Math.abs(other - z));
      }),
    );
  });

  it('S2: reaches to exactly its boom, and not a millimetre farther', () => {
    const at = (x: number) => standReach(spec, base, vec(x, 0, 800), null).beyondReach;
    expect(at(spec.boomMax)).toBe(0);
    expect(at(spec.boomMax + 1)).toBeCloseTo(1, 9);
    expect(at(spec.boomMax + 0.01)).toBeCloseTo(0.01, 9);
    expect(at(spec.boomMin)).toBe(0);
    expect(at(spec.boomMin - 1)).toBeCloseTo(1, 9);
  });

  it('S2: above its mast the boom must lean, by Pythagoras', () => {
    // 300 mm above the highest clutch and 400 mm beside it: a boom of 500 mm.
    const { boomLength, beyondReach } = standReach(
      spec,
      base,
      vec(400, 0, spec.mastMax + 300),
      null,
    );
    expect(boomLength).toBeCloseTo(500, 9);
    expect(beyondReach).toBe(0);
  });

  it('S2: a mast asked for beyond its range goes as far as it can and says by how much it is short', () => {
    const asked = standReach(spec, base, vec(400, 0, 1000), spec.mastMax + 120);
    expect(asked.clutch.z).toBe(spec.mastMax);
    expect(asked.beyondReach).toBeCloseTo(120, 9);
    const low = standReach(spec, base, vec(400, 0, spec.mastMin), spec.mastMin - 120);
    expect(low.clutch.z).toBe(spec.mastMin);
    expect(low.beyondReach).toBeCloseTo(120, 9);
  });

  it('S2: moving the mic one way never brings it back into reach', () => {
    fc.assert(
      fc.property(withBoom, mm(0, 2000), mm(150, 1500), mm(0, 500), (stand, z, x, more) => {
        const near = standReach(stand, base, vec(x, 0, z), null).beyondReach;
        const far = standReach(stand, base, vec(x + more, 0, z), null).beyondReach;
        fc.pre(x >= stand.boomMin);
        expect(far).toBeGreaterThanOrEqual(near - 1e-9);
      }),
    );
  });

  it('S3: without a boom the mic must be over its base', () => {
    const straight = standSpec('roundStraight');
    expect(standReach(straight, base, vec(0, 0, 1200), null)).toMatchObject({
      boomLength: 0,
      beyondReach: 0,
    });
    const aside = standReach(straight, base, vec(30, 40, 1200), null);
    expect(aside.boomLength).toBe(0);
    expect(aside.beyondReach).toBeCloseTo(50, 9);
  });
});
