import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cross, distance, dot, subtract, unit, type Vec3, vec } from '../../src/geometry/vector.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Pedal } from '../../src/layout/pieces/pedal.ts';
import { type Leg, legsOf } from '../../src/player/legs.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { randomKit } from '../support/randomKit.ts';
import { average } from './arms.ts';

const pedal = (foot: Pedal['foot'], x: number, y: number, id = `pedal-${foot}`): Pedal => ({
  kind: 'pedal',
  id,
  name: 'Pedal',
  x,
  y,
  turn: 90,
  length: 280,
  width: 100,
  plays: 'kick',
  foot,
});
const only = (legs: readonly Leg[], side: Leg['side']): Leg => {
  const found = legs.find((leg) => leg.side === side);
  if (!found) throw new Error(`a ${side} leg was expected`);
  return found;
};
const flipped = ({ x, y, z }: Vec3): string => JSON.stringify([0 - x, y + 0, z + 0]);
const plain = ({ x, y, z }: Vec3): string => JSON.stringify([x + 0, y + 0, z + 0]);

describe('legs at rest', () => {
  it('L1: thigh 75 mm, shin 55 mm; from (90, 60, seat + 90) to 90 mm over the heel of the pedal', () => {
    const legs = legsOf(average, [pedal('right', 210, 560), pedal('left', -260, 540)]);
    const { thigh, shin, pedal: on } = only(legs, 'right');
    expect([thigh.radius, shin.radius]).toEqual([75, 55]);
    expect(thigh.a).toMatchObject({ x: 90, y: 60, z: 590 });
    expect(shin.b).toMatchObject({ x: 210, y: 560, z: 90 });
    expect(on).toBe('pedal-right');
    const left = only(legs, 'left');
    expect(left.thigh.a).toMatchObject({ x: -90, y: 60, z: 590 });
    expect(left.shin.b).toMatchObject({ x: -260, y: 540, z: 90 });
  });

  it('L2: links are buttock-knee length less 100 mm and knee height sitting less 90 mm', () => {
    // At 1750 mm the published means are 619.6 and 552.7 mm (tests/fixtures/reference/ansur_by_stature.csv).
    const { thigh, shin } = only(legsOf(average, [pedal('right', 210, 560)]), 'right');
    expect(distance(thigh.a, thigh.b)).toBeCloseTo(519.6, 1);
    expect(distance(shin.a, shin.b)).toBeCloseTo(462.7, 1);
    expect(thigh.b).toEqual(shin.a);
  });

  it('L3: the knee stands up out of the line from hip to ankle, in the upright plane through it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -300, max: 500 }),
        fc.integer({ min: 250, max: 800 }),
        (x, y) => {
          const { thigh, shin } = only(legsOf(average, [pedal('right', x, y)]), 'right');
          const line = subtract(shin.b, thigh.a);
          const knee = subtract(thigh.b, thigh.a);
          const plane = unit(cross(line, vec(0, 0, 1)), vec(1, 0, 0));
          expect(dot(knee, plane)).toBeCloseTo(0, 6);
          const share = dot(knee, line) / dot(line, line);
          expect(thigh.b.z).toBeGreaterThan(thigh.a.z + share * line.z - 1e-6);
        },
      ),
    );
  });

  it('L3: a leg too short for the way is straight', () => {
    const { thigh, shin } = only(legsOf(average, [pedal('right', 90, 1500)]), 'right');
    expect(distance(thigh.a, thigh.b)).toBeCloseTo(519.6, 1);
    expect(distance(thigh.a, thigh.b) + distance(shin.a, shin.b)).toBeCloseTo(
      distance(thigh.a, shin.b),
      6,
    );
  });

  it('L3: a thigh shorter than the way the shin is too long for keeps its length', () => {
    const short = {
      ...average,
      seatHeight: 300,
      body: { buttockKneeLength: 400, kneeHeightSitting: 750 },
    };
    const { thigh } = only(legsOf(short, [pedal('right', 90, 60)]), 'right');
    expect(distance(thigh.a, thigh.b)).toBeCloseTo(300, 6);
  });

  it('L4: without a pedal the foot rests 150 mm out, below a thigh that lies forward', () => {
    const { thigh, shin, pedal: on } = only(legsOf(average, []), 'right');
    expect(on).toBeNull();
    expect(shin.b.x).toBe(150);
    expect(shin.b.z).toBe(90);
    expect(shin.b.y).toBeCloseTo(60 + 0.95 * 519.6, 0);
    expect(thigh.b.z).toBeGreaterThan(450);
  });

  it('a foot with two pedals has a leg on each, the other foot rests', () => {
    const legs = legsOf(average, [
      pedal('left', -260, 540, 'hi-hat'),
      pedal('left', -100, 600, 'second'),
    ]);
    expect(legs.map(({ side, pedal: on }) => [side, on]).toSorted()).toEqual([
      ['left', 'hi-hat'],
      ['left', 'second'],
      ['right', null],
    ]);
  });

  it('agree with a second implementation', () => {
    fc.assert(
      fc.property(randomKit, ({ player, pieces }) => {
        const oracle = oracleMotion(player, pieces).legs;
        const legs = legsOf(player, pieces);
        expect(legs).toHaveLength(oracle.length);
        for (const { foot, pedal: on, hip, knee, ankle } of oracle) {
          const leg = legs.find(({ side, pedal: own }) => side === foot && own === on);
          if (!leg) throw new Error('the same leg was expected');
          expect(distance(leg.thigh.a, hip)).toBeLessThan(1e-6);
          expect(distance(leg.thigh.b, knee)).toBeLessThan(1e-5);
          expect(distance(leg.shin.b, ankle)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('a mirrored kit has exactly mirrored legs, in the same order, with the sides swapped', () => {
    fc.assert(
      fc.property(randomKit, (kit) => {
        const text = (legs: readonly Leg[], point: (p: Vec3) => string, swap: boolean) =>
          legs.map(({ side, pedal: on, thigh, shin }) => {
            const shown = swap ? (side === 'right' ? 'left' : 'right') : side;
            return [shown, on, point(thigh.a), point(thigh.b), point(shin.b)];
          });
        const other = mirrorKit(kit);
        expect(text(legsOf(other.player, other.pieces), plain, true)).toEqual(
          text(legsOf(kit.player, kit.pieces), flipped, false),
        );
      }),
    );
  });
});
