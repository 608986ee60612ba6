import { describe, expect, it } from 'vitest';
import { BELOW, FALL, type FloorBall, floorBall } from '../../src/clearance/floorBudget.ts';
import { SPOT } from '../../src/clearance/floorField.ts';

type Place = readonly [number, number, number];

/** Shares from 0 to 1. */
const shares = (count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, k) => k / count);

/** How far a step goes on the plan, in which direction, and how far it rises, mm. */
interface Step {
  readonly far: number;
  readonly turn: number;
  readonly rise: number;
}

/** A place so many steps along an axis and so many on its way. */
const placeOf = (along: Step, onward: Step, s: number, t: number): Place => [
  s * along.far * Math.cos(along.turn) + t * onward.far * Math.cos(onward.turn),
  s * along.far * Math.sin(along.turn) + t * onward.far * Math.sin(onward.turn),
  s * along.rise + t * onward.rise,
];

/** Places on the under side of a ball about another, its rim among them. */
const underSide = ([x, y, z]: Place, radius: number): readonly Place[] =>
  shares(8).flatMap((out) =>
    shares(12).map((turn): Place => {
      const rim = radius * Math.sin((out * Math.PI) / 2);
      const about = 2 * Math.PI * turn;
      const down = Math.sqrt(radius * radius - rim * rim);
      return [x + rim * Math.cos(about), y + rim * Math.sin(about), z - down];
    }),
  );

/** How far the grown and lowered balls about samples stay above a place, mm: below 0 where one comes down farther. */
const openAbove = (samples: readonly Place[], [x, y, z]: Place, ball: FloorBall): number =>
  Math.min(
    ...samples.map((sample) => {
      const far = Math.hypot(sample[0] - x, sample[1] - y);
      const grown = ball.radius + ball.grown;
      if (far > grown) return Number.POSITIVE_INFINITY;
      return sample[2] - FALL - Math.sqrt(grown * grown - far * far) - z;
    }),
  );

/** The most that balls about places stay above those about some samples, mm. */
const worst = (places: readonly Place[], samples: readonly Place[], ball: FloorBall): number =>
  Math.max(
    ...places.flatMap((place) =>
      underSide(place, ball.radius).map((under) => openAbove(samples, under, ball)),
    ),
  );

describe.each([3, 6, 7, 20, 45])('rule F3: balls of %d mm', (radius) => {
  const ball = floorBall(radius);
  const { stride } = ball;
  const pairs = [Math.PI / 2, Math.PI / 3, 0.1].flatMap((turn) =>
    [-FALL, 0, FALL].flatMap((rise) =>
      [-FALL, 0, FALL].map((drop): readonly [Step, Step] => [
        { far: stride, turn: 0, rise },
        { far: stride, turn, rise: drop },
      ]),
    ),
  );

  it('are off by no more than the 15 mm of rule F1, on the plan and in height', () => {
    const { grown, bow, lowered } = ball;
    expect(1.5 * SPOT * Math.SQRT2 + bow + bow + grown).toBeLessThanOrEqual(BELOW + 1e-9);
    expect(bow + lowered + grown).toBeLessThan(BELOW);
  });

  it.each([
    ['a stride apart', pairs],
    [
      'over each other',
      pairs.map(([along, onward]): readonly [Step, Step] => [along, { ...onward, far: 0 }]),
    ],
  ])('about samples %s come down as far as one about any place between', (_, steps) => {
    for (const [along, onward] of steps) {
      const samples = [0, 1].flatMap((s) => [0, 1].map((t) => placeOf(along, onward, s, t)));
      const places = shares(10).flatMap((s) => shares(10).map((t) => placeOf(along, onward, s, t)));
      expect(worst(places, samples, ball)).toBeLessThanOrEqual(1e-9);
    }
  });

  it('about the outermost samples come down as far as one about a place beyond', () => {
    // Beyond the samples an axis goes and rises by no more than this.
    const end = (step: Step): Step => ({ far: ball.end, turn: step.turn, rise: step.rise / 2 });
    for (const [along, onward] of pairs) {
      const samples = [0, 1].map((t) => placeOf(along, onward, 0, t));
      const beyond = shares(10).map((t): Place => {
        const [x, y, z] = placeOf(along, onward, 0, t);
        const [dx, dy, dz] = placeOf(end(along), onward, -1, 0);
        return [x + dx, y + dy, z + dz];
      });
      expect(worst(beyond, samples, ball)).toBeLessThanOrEqual(1e-9);
      const corner = placeOf(end(along), end(onward), -1, -1);
      expect(worst([corner], [[0, 0, 0]], ball)).toBeLessThanOrEqual(1e-9);
    }
  });
});
