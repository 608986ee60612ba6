import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  along,
  cross,
  distance,
  dot,
  length,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { Arm, FOREARM_RADIUS, HAND_RADIUS } from '../../src/player/arm.ts';
import { anyPlayer, armOf, average, elbowFor, gripRow, shoulderOf } from './arms.ts';

const direction = fc
  .tuple(...[0, 1, 2].map(() => fc.double({ min: -1, max: 1, noNaN: true })))
  .map(([x = 0, y = 0, z = 0]) => unit(vec(x, y, z), vec(0, 1, 0)));
const UP = vec(0, 0, 1);

describe('rule A1: parts', () => {
  it('a hand is a ball of 45 mm, a forearm 40 mm thick each way, a stick as thick as itself', () => {
    expect(HAND_RADIUS).toBe(45);
    expect(FOREARM_RADIUS).toBe(40);
    expect(new Arm(average).parts.map(({ name, radius }) => [name, radius])).toEqual([
      ['stick', 7.25],
      ['hand', 45],
      ['forearm', 40],
    ]);
  });

  it('a stick of 406 mm held 110 mm from its butt reaches 296 mm ahead', () => {
    const arm = new Arm(average);
    expect(arm.ahead).toBe(296);
    expect(arm.behind).toBe(110);
  });

  it('a shoulder stands half the biacromial breadth out, at seat and acromial height', () => {
    const arm = new Arm(average);
    expect(arm.shoulderX).toBeCloseTo(408.4 / 2, 1);
    expect(arm.shoulderZ).toBeCloseTo(500 + 600.5, 1);
  });
});

describe('rules A2 and A3: the elbow', () => {
  it('links of 300 and 400 mm that reach 500 mm meet at a right angle (law of cosines)', () => {
    const arm = armOf(300, 400);
    const shoulder = shoulderOf(arm);
    for (const way of [vec(0, 1, 0), vec(0.6, 0.8, 0), vec(0, 0.6, -0.8)]) {
      const grip = along(shoulder, way, 500);
      const elbow = elbowFor(arm, grip);
      expect(dot(subtract(shoulder, elbow), subtract(grip, elbow))).toBeCloseTo(0, 6);
    }
  });

  it('A2: keeps both links within reach, from folded to 0.98 of the links together', () => {
    fc.assert(
      fc.property(
        anyPlayer,
        direction,
        fc.double({ min: 0, max: 1, noNaN: true }),
        (player, way, k) => {
          const arm = new Arm(player);
          const folded = Math.abs(arm.upper - arm.fore) + 1e-3;
          const far = folded + k * (0.98 * (arm.upper + arm.fore) - folded);
          const grip = along(shoulderOf(arm), way, far);
          const elbow = elbowFor(arm, grip);
          expect(distance(elbow, shoulderOf(arm))).toBeCloseTo(arm.upper, 6);
          expect(distance(elbow, grip)).toBeCloseTo(arm.fore, 6);
        },
      ),
    );
  });

  it('A2: leans toward the grip by what is missing, at most 200 mm, and keeps both links then', () => {
    fc.assert(
      fc.property(
        anyPlayer,
        direction,
        fc.double({ min: 0, max: 200, noNaN: true }),
        (player, way, lean) => {
          const arm = new Arm(player);
          const far = 0.98 * (arm.upper + arm.fore) + lean;
          const grip = along(shoulderOf(arm), way, far);
          const elbow = elbowFor(arm, grip);
          expect(distance(elbow, along(shoulderOf(arm), way, lean))).toBeCloseTo(arm.upper, 6);
          expect(distance(elbow, grip)).toBeCloseTo(arm.fore, 6);
          expect(arm.beyond(grip.x, grip.y, grip.z)).toBeCloseTo(0, 6);
        },
      ),
    );
  });

  it('A2: says by how many mm a grip is beyond arm and lean', () => {
    const arm = armOf(300, 400);
    const ahead = (far: number): number => arm.beyond(arm.shoulderX, far, arm.shoulderZ);
    expect(ahead(0.98 * 700 + 199)).toBe(0);
    expect(ahead(0.98 * 700 + 200)).toBeCloseTo(0, 9);
    expect(ahead(0.98 * 700 + 237.5)).toBeCloseTo(37.5, 9);
  });

  it('A2: beyond all reach the arm stays as at full stretch', () => {
    const arm = armOf(300, 400);
    const at = (far: number): Vec3 => elbowFor(arm, along(shoulderOf(arm), vec(0, 1, 0), far));
    const most = 0.98 * 700 + 200;
    expect(distance(at(most), at(most + 500))).toBeCloseTo(0, 6);
  });

  it('A3: hangs toward the part of (0.5, 0, -0.87) that is square to the arm', () => {
    fc.assert(
      fc.property(direction, fc.double({ min: 150, max: 640, noNaN: true }), (way, far) => {
        const arm = new Arm(average);
        fc.pre(length(cross(way, vec(0.5, 0, -0.87))) > 0.01);
        const grip = along(shoulderOf(arm), way, far);
        const out = subtract(elbowFor(arm, grip), shoulderOf(arm));
        const hang = vec(0.5, 0, -0.87);
        const side = along(hang, way, -dot(hang, way));
        const aside = along(out, way, -dot(out, way));
        // The same direction: nothing across, and forward along it.
        expect(length(cross(unit(aside, UP), unit(side, UP)))).toBeCloseTo(0, 6);
        expect(dot(aside, side)).toBeGreaterThan(0);
      }),
    );
  });

  it('A3: an arm straight ahead has its elbow out and down, 0.5 to 0.87', () => {
    const arm = armOf(300, 400);
    const { x, z } = elbowFor(arm, along(shoulderOf(arm), vec(0, 1, 0), 500));
    expect(x).toBeGreaterThan(arm.shoulderX);
    expect(z).toBeLessThan(arm.shoulderZ);
    expect((x - arm.shoulderX) / (arm.shoulderZ - z)).toBeCloseTo(0.5 / 0.87, 9);
  });

  it('A3: an arm along the hang direction has its elbow outward', () => {
    const arm = armOf(300, 400);
    const way = unit(vec(0.5, 0, -0.87), UP);
    const elbow = elbowFor(arm, along(shoulderOf(arm), way, 500));
    expect(distance(elbow, shoulderOf(arm))).toBeCloseTo(300, 6);
    expect(elbow.x).toBeGreaterThan(arm.shoulderX + 180 * way.x);
  });
});

describe('elbowRoom', () => {
  /** The farthest the elbow gets from the nearer of its ends on a straight way of the grip. */
  function farthest(arm: Arm, from: Vec3, way: Vec3, room: number): number {
    const at = (k: number): Vec3 => elbowFor(arm, along(from, way, k * room));
    const [first, last] = [at(0), at(1)];
    const between = Array.from({ length: 40 }, (_, k) => at((k + 0.5) / 40));
    return Math.max(...between.map((p) => Math.min(distance(p, first), distance(p, last))));
  }
  const place = fc.tuple(direction, fc.double({ min: 0, max: 900, noNaN: true }));
  const rooms = fc.double({ min: -3, max: 2.5, noNaN: true }).map((power) => 10 ** power);

  it('is never less than how far the elbow gets, wherever the grip goes', () => {
    fc.assert(
      fc.property(anyPlayer, place, direction, rooms, (player, [out, far], way, room) => {
        const arm = new Arm(player);
        const from = along(shoulderOf(arm), out, far);
        const bound = arm.elbowRoom(gripRow(from), 0, room);
        expect(bound).toBeGreaterThanOrEqual(farthest(arm, from, way, room) - 1e-6);
      }),
      { numRuns: 3000 },
    );
  });

  it('holds beside the line the elbow hangs along, and where the arm folds flat', () => {
    const hang = unit(vec(0.5, 0, -0.87), UP);
    const one = fc.double({ min: -0.05, max: 0.05, noNaN: true });
    const near = fc.tuple(fc.boolean(), one, one);
    fc.assert(
      fc.property(near, direction, rooms, ([hanging, a, b], way, room) => {
        const arm = armOf(280, 380);
        const out = hanging
          ? unit(along(along(hang, vec(0, 1, 0), a), vec(0.87, 0, 0.5), b), UP)
          : way;
        const from = along(shoulderOf(arm), out, hanging ? 560 : 100 + 400 * a);
        const bound = arm.elbowRoom(gripRow(from), 0, room);
        expect(bound).toBeGreaterThanOrEqual(farthest(arm, from, way, room) - 1e-6);
      }),
      { numRuns: 3000 },
    );
  });

  it('holds on ways across that line, on which the elbow goes round', () => {
    const hang = unit(vec(0.5, 0, -0.87), UP);
    const [across, beside] = [vec(0, 1, 0), cross(hang, vec(0, 1, 0))];
    const turn = fc.double({ min: 0, max: 2 * Math.PI, noNaN: true });
    const off = fc.double({ min: -6, max: 6, noNaN: true });
    const size = fc.double({ min: 5, max: 60, noNaN: true });
    // In reach, where the trunk leans, and beyond all reach.
    const away = fc.constantFrom(560, 700, 900);
    fc.assert(
      fc.property(turn, off, size, away, (angle, aside, room, far) => {
        const arm = armOf(280, 380);
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const way = along(along(vec(0, 0, 0), across, c), beside, s);
        const square = along(along(vec(0, 0, 0), across, -s), beside, c);
        const middle = along(along(shoulderOf(arm), hang, far), square, aside);
        const from = along(middle, way, -room / 2);
        const bound = arm.elbowRoom(gripRow(from), 0, room);
        expect(bound).toBeGreaterThanOrEqual(farthest(arm, from, way, room) - 1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it('is never more than two upper arms and the way, even where the hand comes to its shoulder', () => {
    fc.assert(
      fc.property(anyPlayer, place, rooms, fc.boolean(), (player, [out, far], room, close) => {
        const arm = new Arm(player);
        const from = along(shoulderOf(arm), out, close ? room * (1 + far / 1e5) : far);
        expect(arm.elbowRoom(gripRow(from), 0, room)).toBeLessThanOrEqual(2 * arm.upper + room);
      }),
      { numRuns: 1000 },
    );
  });

  it('goes to nothing with the way, beside that line and inside the fold too', () => {
    const hang = unit(vec(0.5, 0, -0.87), UP);
    const arm = armOf(280, 380);
    const grips = [
      along(shoulderOf(arm), vec(0, 1, 0), 500),
      along(shoulderOf(arm), unit(along(hang, vec(0, 1, 0), 0.005), UP), 560),
      along(shoulderOf(arm), vec(0, 1, 0), 60),
      along(shoulderOf(arm), vec(0, 1, 0), 100.001),
      along(shoulderOf(arm), vec(0, 1, 0), 800),
    ];
    for (const grip of grips) {
      expect(arm.elbowRoom(gripRow(grip), 0, 1e-5)).toBeLessThan(0.05);
    }
  });
});
