import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Drift, driftBound } from '../../src/clearance/question.ts';
import { unit, type Vec3, vec } from '../../src/geometry/vector.ts';

const coordinate = fc.double({ min: -200, max: 200, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate).map(([x, y, z]) => vec(x, y, z));

describe('rule C6: the bound of a point that drifts', () => {
  it('is nowhere exceeded by a point that keeps within its room and goes no farther away than its drift', () => {
    let told = 0;
    fc.assert(
      fc.property(
        point,
        fc.double({ min: 0.1, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.array(point, { minLength: 30, maxLength: 30 }),
        (gap, room, share, ways) => {
          const apart = Math.hypot(gap.x, gap.y, gap.z);
          fc.pre(apart > 1e-3);
          const away = share * room;
          const heard: number[] = [];
          const drift: Drift = {
            along: (_, __, way) => {
              // Asked for the way that leads off from what is met.
              expect(way.x * gap.x + way.y * gap.y + way.z * gap.z).toBeCloseTo(-apart, 6);
              return away;
            },
            bounded: (bound) => heard.push(bound),
          };
          const radii = 12;
          const bound = driftBound(drift, { solid: 0, s: 0, room }, gap, radii);
          if (bound === Number.POSITIVE_INFINITY) {
            expect(heard).toEqual([]);
            return;
          }
          told += 1;
          expect(heard).toEqual([bound]);
          expect(bound).toBeLessThan(apart + room - radii);
          const off: Vec3 = unit(vec(-gap.x, -gap.y, -gap.z), vec(0, 0, 1));
          for (const way of ways) {
            const u = unit(way, off);
            const moved = vec(room * u.x, room * u.y, room * u.z);
            const along = moved.x * off.x + moved.y * off.y + moved.z * off.z;
            if (along > away) continue;
            const left = Math.hypot(gap.x - moved.x, gap.y - moved.y, gap.z - moved.z);
            expect(left - radii).toBeLessThanOrEqual(bound + 1e-6);
          }
        },
      ),
      { numRuns: 300 },
    );
    expect(told).toBeGreaterThan(50);
  });

  it('says nothing of points that meet: there is no way between them', () => {
    const drift: Drift = { along: () => 0, bounded: () => expect.fail('nothing was bounded') };
    expect(driftBound(drift, { solid: 0, s: 0, room: 5 }, vec(0, 0, 0), 12)).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
});
