import RAPIER from '@dimforge/rapier3d-compat';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Cylinder } from '../../src/geometry/cylinder.ts';
import { cylinderOverlap, OVERLAP_TOLERANCE } from '../../src/geometry/cylinderOverlap.ts';
import { add, along, cross, dot, scale, type Vec3, vec } from '../../src/geometry/vector.ts';
import {
  cylinderAlong,
  direction,
  outsideCylinder,
  pointWithin,
  tenths,
  UP,
} from './axialSolids.ts';

/** Also upright ones: their faces lie along each other. */
const pair = fc.oneof(
  fc.tuple(cylinderAlong(direction), cylinderAlong(direction)),
  fc.tuple(cylinderAlong(fc.constant(UP)), cylinderAlong(direction)),
  fc.tuple(cylinderAlong(fc.constant(UP)), cylinderAlong(fc.constant(UP))),
);

const turned = (p: Vec3, axis: Vec3, angle: number): Vec3 =>
  add(
    add(scale(p, Math.cos(angle)), scale(cross(axis, p), Math.sin(angle))),
    scale(axis, dot(axis, p) * (1 - Math.cos(angle))),
  );
const mirrored = (p: Vec3): Vec3 => vec(-p.x, p.y, p.z);
const depth = (p: Cylinder, q: Cylinder): number => cylinderOverlap(p, q)?.depth ?? 0;
const NEAR = 2 * OVERLAP_TOLERANCE;

describe('cylinderOverlap', () => {
  const drum: Cylinder = { centre: vec(0, 0, 0), axis: UP, radius: 150, halfHeight: 100 };
  const disc: Cylinder = { ...drum, radius: 200, halfHeight: 3 };
  const at = (cylinder: Cylinder, x: number, y: number, z: number): Cylinder => ({
    ...cylinder,
    centre: vec(x, y, z),
  });

  it('agrees with cases worked by hand', () => {
    // Side by side: 300 mm of radii, 290 mm between the centres.
    expect(depth(drum, at(drum, 290, 0, 40))).toBeCloseTo(10, 1);
    expect(depth(drum, at(drum, 301, 0, 40))).toBe(0);
    // One on the other, 15 mm into it.
    expect(depth(drum, at(drum, 30, 60, 185))).toBeCloseTo(15, 1);
    // The same place: the way out is sideways by both radii or upward by both halves, which is less.
    expect(depth(drum, drum)).toBeCloseTo(200, 1);
    // A cymbal over a drum is free; one that cuts 20 mm below the head is lifted by 23.
    expect(depth(drum, at(disc, 0, 0, 104))).toBe(0);
    expect(depth(drum, at(disc, 0, 0, 80))).toBeCloseTo(23, 1);
    // A lying drum under a standing one: 250 mm of height and radius, 240 mm apart.
    const lying = { ...drum, axis: vec(1, 0, 0) };
    expect(depth(lying, at(drum, 0, 0, 240))).toBeCloseTo(10, 1);
  });

  it('shows a point no farther outside either than half the depth', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const found = cylinderOverlap(p, q);
        if (!found) return;
        const most = found.depth / 2 + NEAR;
        expect(outsideCylinder(found.at, p)).toBeLessThan(most);
        expect(outsideCylinder(found.at, q)).toBeLessThan(most);
      }),
    );
  });

  it('is the same the other way round, moved and turned together, and in the mirror', () => {
    fc.assert(
      fc.property(pair, pointWithin(500), direction, tenths(0, 6), ([p, q], shift, axis, angle) => {
        const ours = depth(p, q);
        const move = (c: Cylinder): Cylinder => ({
          ...c,
          centre: add(turned(c.centre, axis, angle), shift),
          axis: turned(c.axis, axis, angle),
        });
        const mirror = (c: Cylinder): Cylinder => ({
          ...c,
          centre: mirrored(c.centre),
          axis: mirrored(c.axis),
        });
        const flip = (c: Cylinder): Cylinder => ({ ...c, axis: scale(c.axis, -1) });
        for (const other of [
          depth(q, p),
          depth(move(p), move(q)),
          depth(mirror(p), mirror(q)),
          depth(flip(p), q),
        ]) {
          expect(Math.abs(other - ours)).toBeLessThan(NEAR);
        }
      }),
    );
  });

  it('two that share a point are found, and no deeper than a shift that frees them', () => {
    fc.assert(
      fc.property(pair, direction, ([p, q], way) => {
        const inP = (s: Vec3) => outsideCylinder(s, p) < -0.5;
        const samples = [-0.9, -0.5, 0, 0.5, 0.9].map((t) =>
          along(q.centre, q.axis, t * q.halfHeight),
        );
        if (samples.some(inP)) expect(depth(p, q)).toBeGreaterThan(0.4);
        const deep = depth(p, q);
        const less = along(q.centre, way, deep * 0.9);
        // Less than the depth frees them in no direction.
        if (deep > 2) expect(depth(p, { ...q, centre: less })).toBeGreaterThan(0);
      }),
    );
  });
});

describe('an independent physics library', () => {
  beforeAll(() => RAPIER.init());
  // Its tolerance is absolute: units of 100 mm suit it.
  const UNIT = 100;
  const inUnits = (p: Vec3) => ({ x: p.x / UNIT, y: p.y / UNIT, z: p.z / UNIT });
  /** A rotation that takes the library's cylinder axis (y) along an axis; a cylinder is the same upside down. */
  const upright = (axis: Vec3) => {
    const y = vec(0, 1, 0);
    const to = axis.y < 0 ? scale(axis, -1) : axis;
    const w = 1 + dot(y, to);
    const { x, y: qy, z } = cross(y, to);
    const size = Math.sqrt(x * x + qy * qy + z * z + w * w);
    return { x: x / size, y: qy / size, z: z / size, w: w / size };
  };
  const shape = (c: Cylinder) => new RAPIER.Cylinder(c.halfHeight / UNIT, c.radius / UNIT);

  it('finds the same depths of cylinders within 1 mm', () => {
    fc.assert(
      fc.property(pair, ([p, q]) => {
        const contact = shape(p).contactShape(
          inUnits(p.centre),
          upright(p.axis),
          shape(q),
          inUnits(q.centre),
          upright(q.axis),
          100,
        );
        const theirs = Math.max(0, -(contact?.distance ?? Number.NaN) * UNIT);
        expect(Math.abs(theirs - depth(p, q))).toBeLessThan(1);
      }),
      { numRuns: 400, endOnFailure: true },
    );
  });
});

describe('a random pair', () => {
  it('overlaps often enough for the laws to mean something', () => {
    const deep = fc.sample(pair, { numRuns: 200, seed: 1 }).filter(([p, q]) => depth(p, q) > 1);
    expect(deep.length).toBeGreaterThan(60);
    expect(deep.length).toBeLessThan(180);
  });
});
