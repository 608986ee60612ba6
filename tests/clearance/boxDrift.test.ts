import { describe, expect, it } from 'vitest';
import { BoxDrift } from '../../src/clearance/boxDrift.ts';
import { type Vec3, vec } from '../../src/geometry/vector.ts';
import { boxesOf, familiesOf, ROUNDED } from './spotFamilies.ts';

const boxes = boxesOf([...familiesOf('clip'), ...familiesOf('stand')], 3);

const WAYS: readonly Vec3[] = [
  vec(1, 0, 0),
  vec(-0.6, 0.8, 0),
  vec(0, -0.6, 0.8),
  vec(0.48, 0.6, -0.64),
  vec(0, 0, -1),
];

const on = ({ a, b }: { a: Vec3; b: Vec3 }, s: number, way: Vec3): number =>
  (a.x + s * (b.x - a.x)) * way.x +
  (a.y + s * (b.y - a.y)) * way.y +
  (a.z + s * (b.z - a.z)) * way.z;

describe('rule C6: how far a box of spots drifts in one direction', () => {
  it('no point of any solid goes farther that way in any spot of the box', () => {
    const faults: string[] = [];
    let bounded = 0;
    for (const { name, family, values, halves, spot, leeway, others } of boxes) {
      const drift = new BoxDrift({ family, values, halves, spot, bends: leeway.bends });
      for (const [g, group] of spot.groups.entries()) {
        for (const [s, { part, capsule }] of group.entries()) {
          for (const [k, way] of WAYS.entries()) {
            const along = k / (WAYS.length - 1);
            const most = drift.ofGroup(g).along(s, along, way);
            if (Number.isFinite(most)) bounded += 1;
            for (const other of others) {
              const there = other.spot.groups[g]?.[s]?.capsule;
              const moved = there ? on(there, along, way) - on(capsule, along, way) : Infinity;
              if (moved > most + ROUNDED)
                faults.push(`${name}: ${part} ${moved}, not over ${most}`);
            }
          }
        }
      }
    }
    expect(bounded).toBeGreaterThan(2000);
    expect(faults).toEqual([]);
  }, 240_000);

  it('a value has the share of what it does, and nothing is told before something was bounded', () => {
    const shared = boxes.filter(({ halves }) => halves.filter((half) => half > 0).length > 1);
    let asked = 0;
    for (const { family, values, halves, spot, leeway } of shared) {
      const drift = new BoxDrift({ family, values, halves, spot, bends: leeway.bends });
      const group = drift.ofGroup(0);
      expect(drift.share(0, leeway)).toBeUndefined();
      if (!Number.isFinite(group.along(0, 0, vec(1, 0, 0)))) continue;
      group.bounded(10, 0);
      const still = { rooms: [], bends: [] };
      const parts = values.map((_, k) => drift.share(k, still) ?? Number.NaN);
      for (const [k, half] of halves.entries()) if (half === 0) expect(parts[k]).toBe(0);
      expect(parts.every((part) => part >= 0)).toBe(true);
      asked += 1;
    }
    expect(asked).toBeGreaterThan(20);
  });
});
