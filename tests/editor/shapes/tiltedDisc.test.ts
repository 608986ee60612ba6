import fc from 'fast-check';
import { expect, test } from 'vitest';
import { palettes } from '../../../src/editor/palette.ts';
import { addTiltedDisc } from '../../../src/editor/shapes/tiltedDisc.ts';
import { cross, dot, unit, vec } from '../../../src/geometry/vector.ts';
import { surfaceOf } from '../../../src/rig/surface.ts';
import { kit, pieceOf } from '../support.ts';

const number = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });

test('the drawn ellipse is the projection of the disc: every point of its edge lies on it', () => {
  const cymbal = pieceOf(kit('four-piece-jazz'), 'ride');
  fc.assert(
    fc.property(number(0, 89), number(0, 360), number(0, 6.28), (tilt, tiltToward, round) => {
      const disc = surfaceOf({ ...cymbal, tilt, tiltToward });
      const drawn: number[] = [];
      const canvas = { ellipse: (...numbers: number[]) => drawn.push(...numbers) };
      addTiltedDisc(
        { canvas: canvas as unknown as CanvasRenderingContext2D, px: 1, colours: palettes.dark },
        disc,
      );
      const [x = 0, y = 0, along = 0, across = 0, turn = 0] = drawn;
      // A point of the disc's edge in space, by two directions square to its normal.
      const first = unit(cross(disc.normal, vec(0.3, 0.5, 0.8)), vec(1, 0, 0));
      const second = cross(disc.normal, first);
      const edge = vec(
        disc.centre.x + disc.radius * (Math.cos(round) * first.x + Math.sin(round) * second.x),
        disc.centre.y + disc.radius * (Math.cos(round) * first.y + Math.sin(round) * second.y),
        0,
      );
      const p = vec(edge.x - x, edge.y - y, 0);
      const u = dot(p, vec(Math.cos(turn), Math.sin(turn), 0)) / along;
      const v = dot(p, vec(-Math.sin(turn), Math.cos(turn), 0)) / across;
      expect(u * u + v * v).toBeCloseTo(1, 5);
    }),
  );
});
