import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { axesOf, type View } from '../../src/editor/view/view.ts';
import { cross, distance, dot, subtract, type Vec3, vec } from '../../src/geometry/vector.ts';
import { type Facing, type SeenFrom, standpointOf } from '../../src/rig/standpoint.ts';

const number = fc.double({ min: -3000, max: 3000, noNaN: true });
const spot = fc.tuple(number, number, number).map(([x, y, z]) => vec(x, y, z));
const deck = fc
  .tuple(number, number, fc.double({ min: 0, max: 359, noNaN: true }))
  .map(([x, y, turn]) => ({ kit: { x, y, turn } }));
const facing = fc.constantFrom<Facing>('front', 'side');
const seenFrom = fc.constantFrom<SeenFrom>('house', 'player');
const level = { kit: { x: 0, y: 0, turn: 0 } };

const close = (p: Vec3, q: Vec3): void => expect(distance(p, q)).toBeLessThan(1e-6);

describe('a standpoint', () => {
  test('E1: keeps every distance and never mirrors', () => {
    fc.assert(
      fc.property(deck, facing, seenFrom, fc.tuple(spot, spot, spot), (at, way, seen, spots) => {
        const { point, direction } = standpointOf(at, way, seen);
        const [p, q, r] = spots;
        expect(distance(point(p), point(q))).toBeCloseTo(distance(p, q), 5);
        close(direction(subtract(q, p)), subtract(point(q), point(p)));
        const [a, b] = [subtract(q, p), subtract(r, p)];
        const turned = cross(direction(a), direction(b));
        expect(dot(turned, direction(cross(a, b))) >= 0).toBe(true);
      }),
    );
  });

  test('E1: height is up, and lengths on the screen are those of the drawing', () => {
    fc.assert(
      fc.property(deck, facing, seenFrom, spot, (at, way, seen, p) => {
        expect(standpointOf(at, way, seen).point(p).y).toBe(p.z);
      }),
    );
  });

  test('the front runs along the screen as the plan does, from either side', () => {
    for (const seen of ['house', 'player'] as const) {
      const { point } = standpointOf(level, 'front', seen);
      const view: View = {
        seenFrom: seen,
        size: { width: 1, height: 1 },
        centre: { x: 0, y: 0 },
        scale: 1,
      };
      expect(Math.sign(point(vec(100, 0, 0)).x)).toBe(Math.sign(axesOf(view).x));
    }
    // The audience looks at the front: what is nearer to it is nearer to the viewer.
    expect(standpointOf(level, 'front', 'house').point(vec(0, 500, 0)).z).toBe(500);
    expect(standpointOf(level, 'front', 'player').point(vec(0, 500, 0)).z).toBe(-500);
  });

  test('the side has the audience on the right and is looked at from the player’s right', () => {
    for (const seen of ['house', 'player'] as const) {
      const { point } = standpointOf(level, 'side', seen);
      expect(point(vec(0, 500, 0)).x).toBe(500);
      expect(point(vec(300, 0, 0)).z).toBe(300);
    }
  });

  test('it is that of the deck, however the kit stands on it', () => {
    const { point } = standpointOf({ kit: { x: 200, y: 100, turn: 90 } }, 'front', 'player');
    // A quarter turn to the left: the kit's forward is the deck's left.
    const p = point(vec(0, 400, 50));
    expect(p.x).toBeCloseTo(-200, 9);
    expect(p.y).toBe(50);
    expect(p.z).toBeCloseTo(-100, 9);
  });
});
