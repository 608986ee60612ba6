import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  along,
  distance,
  dot,
  length,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { Arm } from '../../src/player/arm.ts';
import type { Move } from '../../src/player/move.ts';
import { playingOf } from '../../src/player/moves.ts';
import type { Strike } from '../../src/player/strike.ts';
import { arriving, leaving, Travel } from '../../src/player/travel.ts';
import { randomKit } from '../support/randomKit.ts';
import { average, pointsAt, shoulderOf } from './arms.ts';

const arm = new Arm(average);
const time = fc.double({ min: 0, max: 1, noNaN: true });
const FORWARD = vec(0, 1, 0);

/** A strike that does not rise, with the grip at a place about the shoulder and the stick along a direction. */
const still = (r: number, degrees: number, z: number, stick: Vec3 = FORWARD): Strike => ({
  grip: vec(
    arm.shoulderX + r * Math.cos((degrees * Math.PI) / 180),
    r * Math.sin((degrees * Math.PI) / 180),
    z,
  ),
  stick,
  upward: vec(0, 0, 1),
  turn: 0,
  rise: 0,
});
const between = (from: Strike, to: Strike): Travel =>
  new Travel('right', { from: leaving('a', from, arm), to: arriving('b', to, arm) }, arm);
const polar = (p: Vec3) => ({
  r: Math.hypot(p.x - arm.shoulderX, p.y),
  degrees: (Math.atan2(p.y, p.x - arm.shoulderX) * 180) / Math.PI,
  z: p.z,
});

/** All moves of a random kit, with its strokes by hand and piece. */
const movesOfKit = randomKit.map(({ player, pieces }) => {
  const playing = playingOf(player, pieces);
  const strokes = new Map(
    playing.moves
      .filter(({ from }) => from === null)
      .map((move) => [`${move.side} ${move.on}`, move]),
  );
  return { ...playing, travels: playing.moves.filter(({ from }) => from !== null), strokes };
});

/** All four points of two positions agree. */
function expectSame(move: Move, t: number, other: Move | undefined, s: number): void {
  if (!other) throw new Error('a stroke of the same hand was expected');
  const [p, q] = [pointsAt(move, t), pointsAt(other, s)];
  for (const point of ['elbow', 'grip', 'butt', 'tip'] as const) {
    expect(distance(p[point], q[point])).toBeLessThan(1e-6);
  }
}

describe('rule M2: a travel leaves from half a stroke and arrives at a full one', () => {
  it('equals the strokes at its ends, in every point', () => {
    fc.assert(
      fc.property(movesOfKit, ({ travels, strokes }) => {
        for (const travel of travels) {
          expectSame(travel, 0, strokes.get(`${travel.side} ${travel.from}`), 0.5);
          expectSame(travel, 1, strokes.get(`${travel.side} ${travel.on}`), 1);
        }
      }),
    );
  });
});

describe('rule M3: round the upright line through the shoulder', () => {
  it('radius, direction and height change evenly, worked by hand', () => {
    // From 300 mm at 60 degrees to 500 mm at 120 degrees, at one height: half way 400 mm at 90 degrees.
    const half = pointsAt(between(still(300, 60, 900), still(500, 120, 900)), 0.5).grip;
    expect(half.x).toBeCloseTo(arm.shoulderX, 9);
    expect(half.y).toBeCloseTo(400, 9);
    const quarter = polar(pointsAt(between(still(300, 60, 900), still(500, 120, 900)), 0.25).grip);
    expect(quarter.r).toBeCloseTo(350, 9);
    expect(quarter.degrees).toBeCloseTo(75, 9);
  });

  it.each([
    [170, -170, 180],
    [-170, 170, 180],
    [10, 350, 0],
    [100, 20, 60],
  ])('goes the short way round from %s to %s degrees, over %s', (from, to, over) => {
    const half = polar(pointsAt(between(still(400, from, 900), still(400, to, 900)), 0.5).grip);
    expect(Math.cos(((half.degrees - over) * Math.PI) / 180)).toBeCloseTo(1, 9);
    expect(half.r).toBeCloseTo(400, 9);
  });
});

describe('rule M4: the hop', () => {
  it('adds a fifth of the way, at most 100 mm, in the middle', () => {
    const near = between(still(300, 90, 900), still(400, 90, 900));
    expect(pointsAt(near, 0.5).grip.z).toBeCloseTo(900 + 20, 9);
    const far = between(still(400, 0, 900), still(400, 120, 1000));
    // The straight way is 692.8 mm and more: the hop stops at 100 mm.
    expect(pointsAt(far, 0.5).grip.z).toBeCloseTo(950 + 100, 9);
    expect(pointsAt(far, 0.25).grip.z).toBeCloseTo(925 + 75, 9);
    expect(pointsAt(far, 0).grip.z).toBeCloseTo(900, 9);
    expect(pointsAt(far, 1).grip.z).toBeCloseTo(1000, 9);
  });
});

describe('rule M5: the stick on the way', () => {
  it('points along the even blend of its two directions', () => {
    fc.assert(
      fc.property(movesOfKit, time, ({ arm: own, travels, strokes }, t) => {
        for (const travel of travels) {
          const stick = ({ grip, tip }: { grip: Vec3; tip: Vec3 }): Vec3 =>
            scale(subtract(tip, grip), 1 / own.ahead);
          const from = strokes.get(`${travel.side} ${travel.from}`);
          const to = strokes.get(`${travel.side} ${travel.on}`);
          if (!from || !to) throw new Error('strokes of the same hand were expected');
          const [p, q] = [stick(pointsAt(from, 0.5)), stick(pointsAt(to, 1))];
          const blend = add(scale(p, 1 - t), scale(q, t));
          fc.pre(length(blend) > 1e-6);
          expect(distance(stick(pointsAt(travel, t)), unit(blend, p))).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('a stick across and a stick ahead make a stick half way between', () => {
    const { grip, tip } = pointsAt(
      between(still(300, 60, 900, vec(1, 0, 0)), still(500, 120, 900)),
      0.5,
    );
    expect(
      distance(unit(subtract(tip, grip), FORWARD), vec(Math.SQRT1_2, Math.SQRT1_2, 0)),
    ).toBeLessThan(1e-9);
  });

  it('opposite sticks keep the first one where they have no direction between them', () => {
    const { grip, tip } = pointsAt(
      between(still(300, 60, 900), still(500, 120, 900, vec(0, -1, 0))),
      0.5,
    );
    expect(distance(unit(subtract(tip, grip), FORWARD), FORWARD)).toBeLessThan(1e-9);
  });
});

describe('every position', () => {
  it('has the stick straight through the grip, as long as it is', () => {
    fc.assert(
      fc.property(movesOfKit, time, ({ arm: own, moves }, t) => {
        for (const move of moves) {
          const { butt, grip, tip } = pointsAt(move, t);
          expect(distance(grip, tip)).toBeCloseTo(own.ahead, 6);
          expect(distance(grip, butt)).toBeCloseTo(own.behind, 6);
          expect(distance(butt, tip)).toBeCloseTo(own.ahead + own.behind, 6);
        }
      }),
    );
  });

  it('A2: keeps the upper arm at its length from a shoulder leaned by at most the player’s lean', () => {
    fc.assert(
      fc.property(movesOfKit, time, ({ arm: own, moves }, t) => {
        for (const move of moves) {
          const { elbow, grip } = pointsAt(move, t);
          const far = distance(grip, shoulderOf(own));
          const lean = Math.min(own.lean, Math.max(0, far - own.easy));
          const way = scale(subtract(grip, shoulderOf(own)), 1 / far);
          expect(distance(elbow, along(shoulderOf(own), way, lean))).toBeCloseTo(own.upper, 5);
          if (far <= own.easy + own.lean && far >= Math.abs(own.upper - own.fore)) {
            expect(distance(elbow, grip)).toBeCloseTo(own.fore, 5);
          }
          expect(dot(way, way)).toBeCloseTo(1, 9);
        }
      }),
    );
  });
});
