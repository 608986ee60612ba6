import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isInside, passesThrough } from '../../src/geometry/convexPolygon.ts';
import { Sieve } from '../../src/geometry/sieve.ts';
import { obstacles, planPoint } from './planScenes.ts';

describe('the quick tests of a stretch', () => {
  it('never leave out a polygon that the exact test finds, and call none that it denies', () => {
    fc.assert(
      fc.property(obstacles(8), planPoint, planPoint, (scene, a, b) => {
        const sieve = new Sieve(scene);
        const near = [...sieve.found.subarray(0, sieve.findNear(a, b))];
        for (const [i, polygon] of scene.entries()) {
          const passes = passesThrough(polygon, a, b);
          if (passes) expect(near).toContain(i);
          expect([undefined, passes]).toContain(sieve.passes(a, b, i));
        }
      }),
      { numRuns: 2000 },
    );
  });

  it('find the same among many polygons as among each alone', () => {
    fc.assert(
      fc.property(
        fc.array(obstacles(8), { minLength: 9, maxLength: 9 }),
        planPoint,
        planPoint,
        (scenes, a, b) => {
          const scene = scenes.flat();
          const sieve = new Sieve(scene);
          const near = [...sieve.found.subarray(0, sieve.findNear(a, b))];
          const alone = scene.flatMap((polygon, i) =>
            new Sieve([polygon]).findNear(a, b) > 0 ? [i] : [],
          );
          expect(near).toEqual(alone);
        },
      ),
    );
  });

  it('decide what is not near to call', () => {
    fc.assert(
      fc.property(obstacles(4), planPoint, planPoint, (scene, a, b) => {
        const sieve = new Sieve(scene);
        for (const [i, polygon] of scene.entries()) {
          const middle = {
            x: polygon.corners.reduce((sum, { x }) => sum + x, 0) / polygon.corners.length,
            y: polygon.corners.reduce((sum, { y }) => sum + y, 0) / polygon.corners.length,
          };
          const through = { x: middle.x + a.x + 31.4, y: middle.y + b.y + 27.1 };
          if (isInside(polygon, middle)) expect(sieve.passes(middle, through, i)).not.toBe(false);
          const far = { x: 1000 + a.x, y: b.y };
          expect(sieve.passes(far, { x: 1000 + b.x, y: 50 + a.y }, i)).toBe(false);
        }
      }),
    );
  });
});
