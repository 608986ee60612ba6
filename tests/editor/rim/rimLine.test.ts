import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { besideRim, RING_OUT, ringAngleAt } from '../../../src/editor/rim/rimLine.ts';
import { kitToScreen } from '../../../src/editor/view/kitView.ts';
import { subtract } from '../../../src/geometry/vector.ts';
import { surfaceOf } from '../../../src/rig/surface.ts';
import { turnBetween } from '../../../src/units/angle.ts';
import { kit, pieceOf, viewOf } from '../support.ts';

const layout = kit('five-piece-two-racks');
const flat = pieceOf(layout, 'rackTom');
const angle = fc.double({ min: 0, max: 359.9, noNaN: true });
const tilt = fc.double({ min: 0, max: 45, noNaN: true });

describe('the line of the ring', () => {
  test('lies in the head’s plane, so far outside the hoop, over its azimuth', () => {
    fc.assert(
      fc.property(angle, tilt, angle, (at, leaned, toward) => {
        const drum = { ...flat, tilt: leaned, tiltToward: toward };
        const { centre, normal, radius } = surfaceOf(drum);
        const arm = subtract(besideRim(drum, at, 25), centre);
        expect(arm.x * normal.x + arm.y * normal.y + arm.z * normal.z).toBeCloseTo(0, 6);
        expect(Math.hypot(arm.x, arm.y, arm.z)).toBeCloseTo(radius + drum.rim.width + 25, 6);
        const seen = (Math.atan2(arm.y, arm.x) * 180) / Math.PI;
        expect(Math.abs(turnBetween(at, seen))).toBeLessThan(1e-6);
      }),
    );
  });

  test('is met by a finger on it, from either side of the plan, and not by one beside it', () => {
    for (const seenFrom of ['house', 'player'] as const) {
      const view = viewOf(layout, seenFrom);
      fc.assert(
        fc.property(angle, tilt, (at, leaned) => {
          const drum = { ...flat, tilt: leaned, tiltToward: 280 };
          const out = RING_OUT / view.view.scale;
          const found = ringAngleAt(drum, view, kitToScreen(view, besideRim(drum, at, out)));
          expect(Math.abs(turnBetween(at, found ?? Number.NaN))).toBeLessThan(1e-6);
          const beyond = kitToScreen(view, besideRim(drum, at, out + 60 / view.view.scale));
          expect(ringAngleAt(drum, view, beyond)).toBeNull();
        }),
      );
      expect(ringAngleAt(flat, view, kitToScreen(view, flat))).toBeNull();
    }
  });
});
