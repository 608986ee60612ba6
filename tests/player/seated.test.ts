import { describe, expect, it } from 'vitest';
import type { Capsule } from '../../src/geometry/capsule.ts';
import { bodyOf } from '../../src/player/body.ts';
import { seatedOf } from '../../src/player/seated.ts';
import table from '../fixtures/reference/ansur_by_stature.csv?raw';
import { average } from './arms.ts';

const [head = '', ...lines] = table.trim().split('\n');
const columns = head.split(',');
/** Means of the public survey (NATICK/TR-15/007), rounded to 0.1 mm. */
const meanOf = (measure: string, stature: number): number => {
  const line = lines.find((one) => one.startsWith(`${measure},`));
  return Number(line?.split(',')[columns.indexOf(`mean_at_${stature}`)]);
};

const topOf = (capsules: readonly Capsule[]): number =>
  Math.max(...capsules.flatMap(({ a, b, radius }) => [a.z + radius, b.z + radius]));
const bottomOf = (capsules: readonly Capsule[]): number =>
  Math.min(...capsules.flatMap(({ a, b, radius }) => [a.z - radius, b.z - radius]));
const breadthOf = (capsules: readonly Capsule[], end: 'a' | 'b'): number =>
  2 * Math.max(...capsules.map((capsule) => capsule[end].x + capsule.radius));

describe('the player at rest', () => {
  it('B2: shoulders from joint to joint as the arms have them, a neck between them and the head', () => {
    const { shoulders, neck } = seatedOf(average);
    const { acromialHeightSitting, biacromialBreadth } = bodyOf(average);
    const joint = { x: biacromialBreadth / 2, y: 0, z: 500 + acromialHeightSitting };
    expect(shoulders).toEqual({ a: { ...joint, x: -joint.x }, b: joint, radius: 62 });
    expect(neck.radius).toBe(60);
    expect(neck.a.z).toBe(joint.z);
    expect(neck.b.z).toBeGreaterThan(bottomOf(seatedOf(average).head));
  });

  it.each([1600, 1750, 1900])(
    'B3: a trunk from the seat to the shoulders, at %s mm as broad as the hips below',
    (stature) => {
      const player = { ...average, stature };
      const { trunk, shoulders } = seatedOf(player);
      expect(bottomOf(trunk)).toBeCloseTo(player.seatHeight, 9);
      expect(topOf(trunk)).toBeGreaterThan(shoulders.a.z);
      const hips = meanOf('hipBreadthSitting', stature);
      expect(Math.abs(breadthOf(trunk, 'a') - hips)).toBeLessThan(0.1);
      // From memory: a chest of 3/4 of the distance between the joints.
      expect(breadthOf(trunk, 'b')).toBeCloseTo(0.75 * 2 * shoulders.b.x, 6);
    },
  );

  it('B3: the three capsules of the trunk leave no dent deeper than 7 mm before or behind', () => {
    const { trunk } = seatedOf(average);
    const [, middle, right] = trunk;
    if (!middle || !right) throw new Error('three capsules were expected');
    const half = (right.a.x - middle.a.x) / 2;
    const { radius } = middle;
    expect(radius - Math.sqrt(radius ** 2 - half ** 2)).toBeLessThan(7);
  });

  it.each([1600, 1750, 1900])(
    'B4: at %s mm the top of the head is 113 mm in 1750 over the eye',
    (stature) => {
      const { head: egg } = seatedOf({ ...average, stature });
      const expected = 500 + meanOf('eyeHeightSitting', stature) + (113 * stature) / 1750;
      expect(Math.abs(topOf(egg) - expected)).toBeLessThan(0.1);
      expect(topOf(egg) - bottomOf(egg)).toBeCloseTo((230 * stature) / 1750, 6);
    },
  );

  it('B4: the head keeps its height over shoulders that were measured', () => {
    const usual = seatedOf(average);
    const { acromialHeightSitting } = bodyOf(average);
    const raised = seatedOf({
      ...average,
      body: { acromialHeightSitting: acromialHeightSitting + 40 },
    });
    expect(topOf(raised.head) - topOf(usual.head)).toBeCloseTo(40, 9);
  });
});
