import fc from 'fast-check';
import { expect, it } from 'vitest';
import { footSpace } from '../../src/cabling/footSpace.ts';
import { convexHull, isInside } from '../../src/geometry/convexPolygon.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { usualPedal } from '../../src/layout/catalogue/defaults/usualPieces.ts';
import { mirroredPiece } from '../../src/layout/edit/mirror.ts';
import type { Pedal } from '../../src/layout/pieces/pedal.ts';
import { placePedal } from '../../src/rig/pieces/pedalPiece.ts';

const pedal: fc.Arbitrary<Pedal> = fc
  .record({
    x: fc.integer({ min: -800, max: 800 }),
    y: fc.integer({ min: -300, max: 900 }),
    turn: fc.integer({ min: 0, max: 359 }),
    length: fc.integer({ min: 150, max: 500 }),
    width: fc.integer({ min: 60, max: 300 }),
  })
  .map((place) => ({ ...usualPedal('pedal'), ...place }));

const holds = (space: readonly Vec2[], p: Vec2): boolean => {
  const hull = convexHull(space);
  return hull !== undefined && isInside(hull, p);
};

it('F1: holds the whole pedal, and the straight way from under the throne to its heel', () => {
  fc.assert(
    fc.property(pedal, fc.double({ min: 0, max: 1, noNaN: true }), (piece, t) => {
      const space = footSpace(piece);
      const [outline = []] = placePedal(piece).outlines;
      expect(outline.length).toBe(4);
      for (const corner of outline) expect(holds(space, corner)).toBe(true);
      expect(holds(space, { x: t * piece.x, y: t * piece.y })).toBe(true);
    }),
  );
});

it('F1: leaves 100 mm behind the heel, 50 mm beside the pedal and 20 mm before its toe', () => {
  const space = footSpace({ ...usualPedal('pedal'), x: 0, y: 1000, turn: 90 });
  const [inside, outside] = [0.5, -0.5];
  for (const [by, expected] of [
    [inside, true],
    [outside, false],
  ] as const) {
    expect(holds(space, { x: 0, y: 1000 + 300 + 20 - by })).toBe(expected);
    expect(holds(space, { x: 100 - by, y: 1319.9 })).toBe(expected);
    expect(holds(space, { x: by - 100, y: 1319.9 })).toBe(expected);
  }
  // Turned away from the throne there is no way in front of the heel.
  const away = footSpace({ ...usualPedal('pedal'), x: 0, y: 1000, turn: 270 });
  expect(holds(away, { x: 0, y: 1099.5 })).toBe(true);
  expect(holds(away, { x: 0, y: 1100.5 })).toBe(false);
});

it('F1: is mirrored with the pedal', () => {
  fc.assert(
    fc.property(pedal, (piece) => {
      const other = mirroredPiece(piece);
      if (other.kind !== 'pedal') throw new Error('a pedal was expected');
      const mirrored = footSpace(other);
      for (const p of footSpace(piece)) {
        const nearest = Math.min(...mirrored.map((q) => Math.hypot(q.x + p.x, q.y - p.y)));
        expect(nearest).toBeLessThan(1e-6);
      }
    }),
  );
});
