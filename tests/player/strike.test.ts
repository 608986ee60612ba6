import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  along,
  distance,
  dot,
  length,
  perpendicular,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { isStruck, type Struck } from '../../src/layout/pieces/piece.ts';
import { Arm } from '../../src/player/arm.ts';
import { mirrored } from '../../src/player/hands.ts';
import { raisedTo, type Strike, strikeOn } from '../../src/player/strike.ts';
import { surfaceOf } from '../../src/rig/surface.ts';
import { randomKit } from '../support/randomKit.ts';
import { asKind, average, levelDrum } from './arms.ts';

const KINDS = [
  'snare',
  'rackTom',
  'floorTom',
  'percussion',
  'hiHat',
  'ride',
  'crash',
  'splash',
  'china',
] as const;
/** Where the sticks meet each kind: radii toward the shoulder, attack in degrees, mm behind the tip (model, section 3). */
const TABLE = {
  snare: [0, 10, 0],
  rackTom: [0, 10, 0],
  floorTom: [0, 10, 0],
  percussion: [0, 10, 0],
  hiHat: [0.8, 10, 0],
  ride: [0.55, 10, 0],
  crash: [1, -10, 80],
  splash: [1, -10, 80],
  china: [1, -10, 80],
} as const;

const arm = new Arm(average);
const DEGREE = Math.PI / 180;

/** Where the stick meets the surface, for a strike raised by s. */
function contactPoint(kind: Struck['kind'], own: Arm, strike: Strike, s: number): Vec3 {
  const { grip, stick } = raisedTo(strike, s);
  return along(grip, stick, own.ahead - TABLE[kind][2]);
}

/** Strikes of both hands on all pieces of a kit. */
const struckKit = randomKit.map((kit) => {
  const own = new Arm(kit.player);
  return {
    own,
    strokeHeight: kit.player.strokeHeight,
    strikes: kit.pieces.filter(isStruck).flatMap((piece) =>
      ([1, -1] as const).map((sign) => ({
        piece,
        strike: strikeOn(piece, sign, own, kit.player.strokeHeight),
        centre: mirrored(surfaceOf(piece).centre, sign),
        normal: mirrored(surfaceOf(piece).normal, sign),
      })),
    ),
  };
});

describe('a level snare straight ahead of the shoulder, worked by hand', () => {
  const strike = strikeOn(levelDrum(arm.shoulderX, 400, 700), 1, arm, 305);

  it('S2: the grip is 296 mm back along a stick that points 10 degrees down', () => {
    expect(strike.grip.x).toBeCloseTo(arm.shoulderX, 9);
    expect(strike.grip.y).toBeCloseTo(400 - 296 * Math.cos(10 * DEGREE), 9);
    expect(strike.grip.z).toBeCloseTo(700 + 296 * Math.sin(10 * DEGREE), 9);
    expect(strike.grip.y).toBeCloseTo(108.4969, 3);
    expect(strike.grip.z).toBeCloseTo(751.3999, 3);
    expect(strike.stick.x).toBeCloseTo(0, 12);
    expect(strike.stick.y).toBeCloseTo(0.984808, 6);
    expect(strike.stick.z).toBeCloseTo(-0.173648, 6);
  });

  it('S3: the hand rises by a third of 305 mm, the stick turns up by 40.88 degrees, the tip ends at 1005 mm', () => {
    // asin(sin(-10) + 203.333/296) = asin(0.513289) = 30.883 degrees.
    expect(strike.rise).toBeCloseTo(101.6667, 4);
    expect(strike.turn / DEGREE).toBeCloseTo(40.883, 3);
    const { grip, stick } = raisedTo(strike, 1);
    expect(grip.z).toBeCloseTo(853.0666, 3);
    expect(along(grip, stick, 296).z).toBeCloseTo(1005, 9);
    expect(stick.x).toBeCloseTo(0, 12);
  });

  it('is played by the left hand across the body', () => {
    const left = strikeOn(levelDrum(arm.shoulderX, 400, 700), -1, arm, 305);
    const way = vec(-2 * arm.shoulderX, 400, 0);
    expect(left.stick.x / left.stick.y).toBeCloseTo(way.x / way.y, 9);
  });
});

describe('rule S1: where the sticks meet each kind', () => {
  it.each(KINDS)('%s', (kind) => {
    const [share, attack] = TABLE[kind];
    const drum = levelDrum(arm.shoulderX, 500, 800);
    const strike = strikeOn(asKind(kind, drum), 1, arm, 305);
    // Straight ahead: the point toward the shoulder is nearer to the player by the share of the radius.
    const met = contactPoint(kind, arm, strike, 0);
    expect(met.x).toBeCloseTo(arm.shoulderX, 9);
    expect(met.y).toBeCloseTo(500 - share * 177.8, 9);
    expect(met.z).toBeCloseTo(800, 9);
    expect(Math.asin(strike.stick.z) / DEGREE).toBeCloseTo(-attack, 9);
  });

  it('the contact point lies on the surface, the right share of the radius from its centre, toward the shoulder', () => {
    fc.assert(
      fc.property(struckKit, ({ own, strikes }) => {
        for (const { piece, strike, centre, normal } of strikes) {
          const met = subtract(contactPoint(piece.kind, own, strike, 0), centre);
          const share = TABLE[piece.kind][0];
          expect(dot(met, normal)).toBeCloseTo(0, 6);
          expect(length(met)).toBeCloseTo((share * piece.diameter) / 2, 6);
          const shoulder = perpendicular(
            subtract(vec(own.shoulderX, 0, own.shoulderZ), centre),
            normal,
          );
          if (share > 0) expect(dot(unit(met, normal), unit(shoulder, normal))).toBeCloseTo(1, 9);
        }
      }),
    );
  });
});

describe('rule S2: how the stick lies', () => {
  it('makes the attack angle with the surface, away from the shoulder as seen from above the surface', () => {
    fc.assert(
      fc.property(struckKit, ({ own, strikes }) => {
        for (const { piece, strike, normal } of strikes) {
          expect(length(strike.stick)).toBeCloseTo(1, 12);
          const attack = TABLE[piece.kind][1];
          expect(dot(strike.stick, normal)).toBeCloseTo(-Math.sin(attack * DEGREE), 9);
          const met = contactPoint(piece.kind, own, strike, 0);
          const away = unit(vec(met.x - own.shoulderX, met.y, 0), vec(0, 0, 1));
          const flat = unit(perpendicular(away, normal), away);
          const lying = unit(perpendicular(strike.stick, normal), away);
          expect(distance(lying, flat)).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('S1 and S2 hold on a surface that faces the shoulder upright, where no direction lies nearer than another', () => {
    for (const kind of KINDS) {
      for (const z of [900, arm.shoulderZ]) {
        for (const tiltToward of [270, 90]) {
          const wall = { ...levelDrum(arm.shoulderX, 500, z), tilt: 90, tiltToward };
          const strike = strikeOn(asKind(kind, wall), 1, arm, 305);
          const [share, attack] = TABLE[kind];
          const facing = tiltToward === 270 ? 1 : -1;
          expect(length(strike.stick), kind).toBeCloseTo(1, 9);
          expect(strike.stick.y, kind).toBeCloseTo(facing * Math.sin(attack * DEGREE), 9);
          const met = contactPoint(kind, arm, strike, 0);
          expect(met.y, kind).toBeCloseTo(500, 9);
          expect(Math.hypot(met.x - arm.shoulderX, met.z - z), kind).toBeCloseTo(share * 177.8, 9);
        }
      }
    }
  });
});

describe('rule S3: how a stroke rises', () => {
  it('lifts a tip by the stroke height, where the stick need not stop at 85 degrees or upright', () => {
    fc.assert(
      fc.property(struckKit, ({ own, strokeHeight, strikes }) => {
        for (const { strike } of strikes) {
          const tip = (s: number): Vec3 => {
            const { grip, stick } = raisedTo(strike, s);
            return along(grip, stick, own.ahead);
          };
          const top = Math.asin(raisedTo(strike, 1).stick.z);
          if (strike.turn > 0 && top < 84.99 * DEGREE) {
            expect(tip(1).z - tip(0).z).toBeCloseTo(strokeHeight, 6);
          } else {
            expect(tip(1).z - tip(0).z).toBeLessThanOrEqual(strokeHeight + 1e-6);
          }
          expect(raisedTo(strike, 1).grip.z - strike.grip.z).toBeCloseTo(strokeHeight / 3, 9);
        }
      }),
    );
  });

  it('lifts the meeting point on an edge less, as it is nearer to the hand', () => {
    const crash = asKind('crash', levelDrum(arm.shoulderX, 600, 1100));
    const strike = strikeOn(crash, 1, arm, 305);
    // The tip rises by 305 mm; 80 mm behind it the turn lifts only 216/296 of 2/3 of that.
    const rise = contactPoint('crash', arm, strike, 1).z - contactPoint('crash', arm, strike, 0).z;
    expect(rise).toBeCloseTo(305 / 3 + ((2 * 305) / 3) * (216 / 296), 6);
  });

  it('stops at 85 degrees for strokes higher than the stick can turn', () => {
    const strike = strikeOn(levelDrum(arm.shoulderX, 400, 700), 1, arm, 600);
    expect(Math.asin(raisedTo(strike, 1).stick.z) / DEGREE).toBeCloseTo(85, 6);
    expect(strike.turn / DEGREE).toBeCloseTo(95, 6);
  });

  it('turns the stick in its own upright plane, never down', () => {
    fc.assert(
      fc.property(struckKit, fc.double({ min: 0, max: 1, noNaN: true }), ({ strikes }, s) => {
        for (const { strike } of strikes) {
          const { stick } = raisedTo(strike, s);
          expect(length(stick)).toBeCloseTo(1, 9);
          expect(strike.turn).toBeGreaterThanOrEqual(0);
          // No part across the upright plane through the stick at contact.
          expect(stick.x * strike.stick.y - stick.y * strike.stick.x).toBeCloseTo(0, 9);
          const cosine = dot(stick, strike.stick);
          expect(cosine).toBeCloseTo(Math.cos(s * strike.turn), 9);
        }
      }),
    );
  });
});
