import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ConvexPolygon, convexHull, isInside } from '../../src/geometry/convexPolygon.ts';
import { lookAround, rectangleGap, waysOut } from '../../src/geometry/leave.ts';
import { gap } from '../../src/geometry/plan.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { obstacles, planPoint } from './planScenes.ts';

const region = { low: { x: -20, y: -20 }, high: { x: 20, y: 20 } };
const none: readonly ConvexPolygon[] = [];
const rules = { walls: () => none, region, most: 6 };
const clear = (scene: readonly ConvexPolygon[], p: Vec2): boolean =>
  !scene.some((obstacle) => isInside(obstacle, p));
const box = (x0: number, y0: number, x1: number, y1: number): ConvexPolygon => {
  const found = convexHull([
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ]);
  if (!found) throw new Error('a rectangle was expected');
  return found;
};

describe('the ways out of obstacles', () => {
  it('are only the point itself where it stands clear', () => {
    fc.assert(
      fc.property(obstacles(5), planPoint, (scene, p) => {
        fc.pre(clear(scene, p));
        expect(waysOut(p, scene, rules)).toEqual([p]);
      }),
    );
  });

  it('L4: stay the same whatever stands farther off than was looked', () => {
    fc.assert(
      fc.property(obstacles(8), planPoint, fc.constantFrom(1, 6), (scene, p, most) => {
        const { out, within } = lookAround(p, scene, { ...rules, most });
        const near = scene.filter((obstacle) => rectangleGap(obstacle, p) <= within);
        const nearWalls = { ...rules, most, walls: () => near };
        expect(lookAround(p, near, { ...rules, most }).out).toEqual(out);
        expect(lookAround(p, near, nearWalls).out).toEqual(
          lookAround(p, near, { ...nearWalls, walls: () => scene }).out,
        );
      }),
    );
  });

  it('L1: are clear, nearest first, and no clear point of a fine search is nearer than the first', () => {
    fc.assert(
      fc.property(obstacles(6), planPoint, (scene, p) => {
        fc.pre(!clear(scene, p));
        const found = waysOut(p, scene, rules);
        const [first] = found;
        expect(first).toBeDefined();
        expect(found.every((out) => clear(scene, out))).toBe(true);
        expect(found.map((out) => gap(p, out))).toEqual(
          found.map((out) => gap(p, out)).sort((a, b) => a - b),
        );
        const nearest = first ? gap(p, first) : 0;
        for (let ring = 1; ring <= 20; ring += 1) {
          const radius = ((nearest - 0.01) * ring) / 20;
          for (let k = 0; k < 48; k += 1) {
            const at = {
              x: p.x + radius * Math.cos((k * Math.PI) / 24),
              y: p.y + radius * Math.sin((k * Math.PI) / 24),
            };
            if (radius > 0) expect(clear(scene, at)).toBe(false);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('L1: lead to the corner between two outlines where that is nearest', () => {
    const [first] = waysOut({ x: 1, y: 1 }, [box(-9, -9, 1.5, 9), box(-9, -9, 9, 1.5)], rules);
    expect(first?.x).toBeCloseTo(1.5, 6);
    expect(first?.y).toBeCloseTo(1.5, 6);
  });

  it('L2: do not lead through a wall while another way is open', () => {
    const room = [box(-5, -5, 5, 5)];
    const wall = box(2, -5, 3, 5);
    const [through] = waysOut({ x: 1, y: 0 }, room, rules);
    expect(through?.x).toBeCloseTo(5, 6);
    const [open] = waysOut({ x: 1, y: 0 }, room, { ...rules, walls: () => [wall] });
    expect(open?.x).not.toBeCloseTo(5, 6);
    const [inWall] = waysOut({ x: 2.5, y: 0 }, room, { ...rules, walls: () => [wall] });
    expect(inWall?.x).toBeCloseTo(5, 6);
  });

  it('L3: stay in the region, and are none when it is covered', () => {
    const scene = [box(-5, -5, 5, 5)];
    const narrow = { low: { x: -5, y: -9 }, high: { x: 5, y: 9 } };
    const out = waysOut({ x: 4, y: 0 }, scene, { ...rules, region: narrow });
    expect(out.every(({ x }) => Math.abs(x) <= 5)).toBe(true);
    expect(out.length).toBeGreaterThan(0);
    // The nearest clear point straight ahead is outside; the outline's crossing with the border is nearer than the far side.
    const overEdge = { low: { x: -9, y: -9 }, high: { x: 4.5, y: 9 } };
    const tip = [box(3, -1, 6, 1), box(-9, -9, -8, -8)];
    const [atBorder] = waysOut({ x: 4.4, y: 0.5 }, tip, { ...rules, region: overEdge });
    expect(atBorder?.x).toBeCloseTo(4.4, 6);
    expect(atBorder?.y).toBeCloseTo(1, 6);
    const edge = { low: { x: 4, y: -9 }, high: { x: 4, y: 9 } };
    const alongEdge = waysOut({ x: 4, y: 0.5 }, tip, { ...rules, region: edge });
    expect(alongEdge.map(({ x }) => x)).toEqual(alongEdge.map(() => 4));
    expect(alongEdge.map(({ y }) => Math.round(y * 1000) / 1000)).toContain(1);
    expect(alongEdge.map(({ y }) => Math.round(y * 1000) / 1000)).toContain(-1);
    const covered = { low: { x: -4, y: -4 }, high: { x: 4, y: 4 } };
    expect(waysOut({ x: 3, y: 0 }, scene, { ...rules, region: covered })).toEqual([]);
  });
});
