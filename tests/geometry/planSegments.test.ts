import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  crossing,
  outsideOutline,
  type PlanSegment,
  planMeeting,
} from '../../src/geometry/planSegments.ts';
import { closestBetweenSegments } from '../../src/geometry/segments.ts';
import { type Vec2, vec } from '../../src/geometry/vector.ts';
import { cosDeg, sinDeg } from '../../src/units/angle.ts';

const point: fc.Arbitrary<Vec2> = fc.record({
  x: fc.integer({ min: -500, max: 500 }),
  y: fc.integer({ min: -500, max: 500 }),
});
const segment: fc.Arbitrary<PlanSegment> = fc.tuple(point, point);
const mirrored = ([a, b]: PlanSegment): PlanSegment => [
  { x: -a.x, y: a.y },
  { x: -b.x, y: b.y },
];

describe('crossing', () => {
  it('agrees with a case worked by hand', () => {
    const place = crossing(
      [
        { x: 0, y: 0 },
        { x: 10, y: 10 },
      ],
      [
        { x: 0, y: 10 },
        { x: 10, y: 0 },
      ],
    );
    expect(place).toEqual({ x: 5, y: 5 });
  });

  it('does not count touching ends and shared lines', () => {
    const along: PlanSegment = [
      { x: 0, y: 0 },
      { x: 10, y: 0 },
    ];
    expect(
      crossing(along, [
        { x: 5, y: 0 },
        { x: 5, y: 9 },
      ]),
    ).toBeUndefined();
    expect(
      crossing(along, [
        { x: 2, y: 0 },
        { x: 8, y: 0 },
      ]),
    ).toBeUndefined();
  });

  it('is the same whichever segment comes first', () => {
    fc.assert(
      fc.property(segment, segment, (p, q) => {
        const [one, other] = [crossing(p, q), crossing(q, p)];
        expect(one === undefined).toBe(other === undefined);
        if (one && other) {
          expect(one.x).toBeCloseTo(other.x, 6);
          expect(one.y).toBeCloseTo(other.y, 6);
        }
      }),
    );
  });
});

describe('planMeeting', () => {
  it('is the distance of the same segments in space, measured by another method', () => {
    const flat = ([a, b]: PlanSegment) => [vec(a.x, a.y, 0), vec(b.x, b.y, 0)] as const;
    fc.assert(
      fc.property(segment, segment, (p, q) => {
        const inSpace = closestBetweenSegments(flat(p), flat(q)).distance;
        expect(planMeeting(p, q).distance).toBeCloseTo(inSpace, 5);
      }),
    );
  });

  it('is exactly the same in a mirror', () => {
    fc.assert(
      fc.property(segment, segment, (p, q) => {
        const there = planMeeting(mirrored(p), mirrored(q));
        expect(there.distance).toBe(planMeeting(p, q).distance);
      }),
    );
  });
});

describe('outsideOutline', () => {
  const square: Vec2[] = [
    { x: -100, y: -100 },
    { x: 100, y: -100 },
    { x: 100, y: 100 },
    { x: -100, y: 100 },
  ];

  it('is negative inside, 0 on the outline and the distance outside, as worked by hand', () => {
    expect(outsideOutline(square, { x: 90, y: 0 })).toBe(-10);
    expect(outsideOutline(square, { x: 100, y: 50 })).toBeCloseTo(0, 12);
    expect(outsideOutline(square, { x: 130, y: 140 })).toBe(50);
  });

  it('does not change when outline and point are turned together', () => {
    fc.assert(
      fc.property(point, fc.integer({ min: -180, max: 180 }), (p, turn) => {
        const [c, s] = [cosDeg(turn), sinDeg(turn)];
        const turned = (q: Vec2): Vec2 => ({ x: c * q.x - s * q.y, y: s * q.x + c * q.y });
        expect(outsideOutline(square.map(turned), turned(p))).toBeCloseTo(
          outsideOutline(square, p),
          6,
        );
      }),
    );
  });
});
