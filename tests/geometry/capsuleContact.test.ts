import RAPIER from '@dimforge/rapier3d-compat';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Capsule } from '../../src/geometry/capsule.ts';
import {
  CONTACT_TOLERANCE,
  capsuleToCapsule,
  capsuleToCylinder,
  capsuleToPiercedDisc,
  capsuleToTube,
} from '../../src/geometry/capsuleContact.ts';
import type { Cylinder, PiercedDisc, Tube } from '../../src/geometry/cylinder.ts';
import {
  add,
  along,
  cross,
  dot,
  length,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { fromPiercedDisc, outsideCylinder, outsideTube } from './axialSolids.ts';

const UP = vec(0, 0, 1);
const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const point = fc
  .tuple(number(-400, 400), number(-400, 400), number(-400, 400))
  .map((p) => vec(...p));
const direction = point.filter((p) => length(p) > 1).map((p) => unit(p, UP));
const capsule: fc.Arbitrary<Capsule> = fc.record({ a: point, b: point, radius: number(1, 60) });
const cylinder: fc.Arbitrary<Cylinder> = fc.record({
  centre: point,
  axis: direction,
  radius: number(20, 300),
  halfHeight: number(3, 300),
});
const tube: fc.Arbitrary<Tube> = fc
  .tuple(point, direction, number(20, 300), number(0, 40), number(0, 40))
  .map(([centre, axis, innerRadius, width, halfHeight]) => ({
    centre,
    axis,
    innerRadius,
    outerRadius: innerRadius + width,
    halfHeight,
  }));

const rigidMotion = fc.record({ shift: point, axis: direction, angle: number(0, 6) });

/** p turned by the angle (radians) about the unit axis (Rodrigues' formula). */
const turned = (p: Vec3, axis: Vec3, angle: number): Vec3 =>
  add(
    add(scale(p, Math.cos(angle)), scale(cross(axis, p), Math.sin(angle))),
    scale(axis, dot(axis, p) * (1 - Math.cos(angle))),
  );
const mirrored = (p: Vec3): Vec3 => vec(-p.x, p.y, p.z);
const sampled = ({ a, b, radius }: Capsule, from: (p: Vec3) => number): number => {
  const values = Array.from({ length: 2001 }, (_, i) => from(along(a, subtract(b, a), i / 2000)));
  return Math.min(...values) - radius;
};

describe('capsuleToCylinder', () => {
  it('agrees with cases worked by hand', () => {
    const drum: Cylinder = { centre: vec(0, 0, 0), axis: UP, radius: 100, halfHeight: 50 };
    const gap = (a: Vec3, b: Vec3) => capsuleToCylinder({ a, b, radius: 10 }, drum).gap;
    expect(gap(vec(-300, 0, 80), vec(300, 0, 80))).toBeCloseTo(20, 6);
    expect(gap(vec(130, -300, 0), vec(130, 300, 0))).toBeCloseTo(20, 6);
    // Past the edge: 30 mm outside the side and 40 mm above the end are 50 mm from the edge.
    expect(gap(vec(130, 0, 90), vec(330, 0, 90))).toBeCloseTo(40, 6);
    // A tip 20 mm below the head lies 20 mm deep, and its radius deeper.
    expect(gap(vec(0, 0, 30), vec(0, 0, 300))).toBeCloseTo(-30, 6);
  });

  it('does not change when both are moved and turned together', () => {
    fc.assert(
      fc.property(capsule, cylinder, rigidMotion, (c, d, { shift, axis, angle }) => {
        const move = (p: Vec3) => add(turned(p, axis, angle), shift);
        const movedCapsule = { ...c, a: move(c.a), b: move(c.b) };
        const moved = { ...d, centre: move(d.centre), axis: turned(d.axis, axis, angle) };
        expect(capsuleToCylinder(movedCapsule, moved).gap).toBeCloseTo(
          capsuleToCylinder(c, d).gap,
          3,
        );
      }),
    );
  });

  it('is exactly the same in a mirror', () => {
    fc.assert(
      fc.property(capsule, cylinder, (c, d) => {
        const here = capsuleToCylinder(c, d);
        const there = capsuleToCylinder(
          { ...c, a: mirrored(c.a), b: mirrored(c.b) },
          { ...d, centre: mirrored(d.centre), axis: mirrored(d.axis) },
        );
        expect(there.gap).toBe(here.gap);
        expect(there.at.x === -here.at.x).toBe(true);
        expect([there.at.y, there.at.z]).toEqual([here.at.y, here.at.z]);
      }),
    );
  });

  it('does not depend on which way round the capsule or the cylinder is given', () => {
    fc.assert(
      fc.property(capsule, cylinder, (c, d) => {
        const gap = capsuleToCylinder(c, d).gap;
        expect(capsuleToCylinder({ ...c, a: c.b, b: c.a }, d).gap).toBeCloseTo(gap, 3);
        expect(capsuleToCylinder(c, { ...d, axis: scale(d.axis, -1) }).gap).toBeCloseTo(gap, 9);
      }),
    );
  });

  it('is never above dense samples and within 1 mm below them', () => {
    fc.assert(
      fc.property(capsule, cylinder, (c, d) => {
        const gap = capsuleToCylinder(c, d).gap;
        const dense = sampled(c, (p) => outsideCylinder(p, d));
        expect(gap).toBeLessThanOrEqual(dense + 1e-3);
        expect(gap).toBeGreaterThan(dense - 1);
      }),
    );
  });
});

describe('capsuleToCylinder against a general physics library (rapier3d, single precision: 1 mm)', () => {
  beforeAll(() => RAPIER.init());

  // Its own stopping tolerance is absolute: 10 mm off in metres, 0.6 mm in units of 100 mm, both seen over 2400 pairs.
  const UNIT = 100;
  const inUnits = (p: Vec3) => ({ x: p.x / UNIT, y: p.y / UNIT, z: p.z / UNIT });
  /** The rotation that takes the library's cylinder and capsule axis (y) to a direction. */
  const upright = (to: Vec3) => {
    const y = vec(0, 1, 0);
    const w = 1 + dot(y, to);
    const { x, y: qy, z } = cross(y, to);
    const size = Math.sqrt(x * x + qy * qy + z * z + w * w);
    return { x: x / size, y: qy / size, z: z / size, w: w / size };
  };

  it('finds the same gap for pairs that are apart', () => {
    fc.assert(
      fc.property(capsule, cylinder, (c, d) => {
        const way = subtract(c.b, c.a);
        const ours = capsuleToCylinder(c, d).gap;
        fc.pre(length(way) > 1 && ours > 1 && way.y > -0.99 * length(way) && d.axis.y > -0.99);
        const contact = new RAPIER.Capsule(length(way) / 2 / UNIT, c.radius / UNIT).contactShape(
          inUnits(along(c.a, way, 0.5)),
          upright(unit(way, UP)),
          new RAPIER.Cylinder(d.halfHeight / UNIT, d.radius / UNIT),
          inUnits(d.centre),
          upright(d.axis),
          100,
        );
        expect(contact).not.toBeNull();
        expect(Math.abs((contact?.distance ?? Number.NaN) * UNIT - ours)).toBeLessThan(1);
      }),
      { numRuns: 300, endOnFailure: true },
    );
  });
});

describe('capsuleToCapsule', () => {
  it('agrees with crossing rods worked by hand: 3 mm and 4 mm apart across are 5 mm', () => {
    const first = { a: vec(-50, 0, 0), b: vec(50, 0, 0), radius: 1 };
    const second = { a: vec(10, 3, 4), b: vec(10, 90, 120), radius: 1.5 };
    const { gap, at } = capsuleToCapsule(first, second);
    expect(gap).toBeCloseTo(2.5, 9);
    expect(at).toEqual(vec(10, 0, 0));
  });

  it('is the gap to a cylinder as thin as the other, where its ends are far away', () => {
    fc.assert(
      fc.property(
        capsule,
        fc.tuple(point, direction, number(1, 60)),
        (c, [centre, axis, radius]) => {
          const halfHeight = 5000;
          const long = {
            a: along(centre, axis, -halfHeight),
            b: along(centre, axis, halfHeight),
            radius,
          };
          const gap = capsuleToCylinder(c, { centre, axis, radius, halfHeight }).gap;
          expect(capsuleToCapsule(c, long).gap).toBeCloseTo(gap, 3);
        },
      ),
    );
  });
});

describe('capsuleToTube', () => {
  it('lets a capsule stand inside the ring and finds one that lies across it', () => {
    const hoop: Tube = {
      centre: vec(0, 0, 5),
      axis: UP,
      innerRadius: 150,
      outerRadius: 160,
      halfHeight: 5,
    };
    expect(
      capsuleToTube({ a: vec(0, 0, 5), b: vec(120, 0, 5), radius: 10 }, hoop).gap,
    ).toBeGreaterThanOrEqual(0);
    // Through the wall at mid height: 5 mm to either side of the ring's section, and the radius.
    expect(
      capsuleToTube({ a: vec(100, 0, 5), b: vec(300, 0, 5), radius: 10 }, hoop).gap,
    ).toBeCloseTo(-15, 0);
  });

  it('is within its tolerance of dense samples wherever they touch, and never below', () => {
    fc.assert(
      fc.property(capsule, tube, (c, t) => {
        const gap = capsuleToTube(c, t).gap;
        const dense = sampled(c, (p) => outsideTube(p, t));
        if (dense < 0) expect(gap).toBeLessThanOrEqual(dense + CONTACT_TOLERANCE);
        if (gap < 0) expect(gap).toBeGreaterThan(dense - 1);
      }),
    );
  });
});

describe('capsuleToPiercedDisc', () => {
  const head = {
    centre: vec(0, 0, 0),
    axis: UP,
    radius: 280,
    holeCentre: vec(120, 0, 0),
    holeRadius: 60,
  };
  const through = (x: number, radius: number) =>
    capsuleToPiercedDisc({ a: vec(x, 0, -100), b: vec(x, 0, 100), radius }, head).gap;

  it('lets a capsule pass through the hole until it meets the edge', () => {
    expect(through(120, 40)).toBeGreaterThanOrEqual(0);
    // 30 mm beside the hole's centre, 30 mm remain to its edge.
    expect(through(150, 40)).toBeCloseTo(-10, 0);
    expect(through(0, 40)).toBeCloseTo(-40, 0);
  });

  it('measures balls beside, before and over the hole as worked by hand', () => {
    const ball = (x: number, z: number) =>
      capsuleToPiercedDisc({ a: vec(x, 0, z), b: vec(x, 0, z), radius: 60 }, head).gap + 60;
    expect(ball(0, 25)).toBeCloseTo(25, 9);
    // 20 mm inside the hole's edge and 15 mm above: 25 mm from the edge (3-4-5).
    expect(ball(160, 15)).toBeCloseTo(25, 9);
    expect(ball(-310, 40)).toBeCloseTo(50, 9);
  });

  it('is within its tolerance of dense samples wherever they touch, and never below', () => {
    const disc: fc.Arbitrary<PiercedDisc> = fc
      .tuple(point, direction, number(100, 300), number(10, 90), number(0, 6))
      .map(([centre, axis, radius, holeRadius, angle]) => {
        const beside = unit(cross(axis, Math.abs(axis.z) < 0.9 ? UP : vec(1, 0, 0)), UP);
        const way = turned(beside, axis, angle);
        return {
          centre,
          axis,
          radius,
          holeRadius,
          holeCentre: along(centre, way, radius - holeRadius),
        };
      });
    fc.assert(
      fc.property(capsule, disc, (c, d) => {
        const gap = capsuleToPiercedDisc(c, d).gap;
        const dense = sampled(c, (p) => fromPiercedDisc(p, d));
        if (dense < 0) expect(gap).toBeLessThanOrEqual(dense + CONTACT_TOLERANCE);
        if (gap < 0) expect(gap).toBeGreaterThan(dense - 1);
      }),
    );
  });
});
