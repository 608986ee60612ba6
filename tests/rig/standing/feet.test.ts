import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vec2 } from '../../../src/geometry/vector.ts';
import type { StandMount } from '../../../src/layout/mics/mount.ts';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { LEG_RADIUS } from '../../../src/rig/feet.ts';
import type { Footprint } from '../../../src/rig/placed.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';
import { fivePiece, micOn } from '../kits.ts';
import { among, cymbal, kick, stand } from './scenes.ts';

describe('K6, K7: feet', () => {
  const withTurn = (x: number, turn: number) =>
    stand({ base: { x, y: 0 }, turn, tip: { x, y: 600, z: 1400 }, azimuth: 90 });
  const feet = (standing: readonly Standing[]) =>
    standing.filter(({ code }) => code === 'feet-overlap');

  it('legs that point at each other cross or meet; turned between each other they do not', () => {
    // Legs of 330 mm, hubs 600 mm apart: two legs on one line reach 60 mm past each other.
    expect(feet(among([], [[withTurn(0, 0)], [withTurn(600, 180)]]))).toHaveLength(1);
    expect(feet(among([], [[withTurn(0, 180)], [withTurn(600, 0)]]))).toEqual([]);
  });

  it('two tripods are in each other’s way exactly when what they cover of the plan overlaps, by dense sampling', () => {
    const footprintOf = (mount: StandMount): Footprint => {
      const { stand: placed } = placeMic(micOn(mount), fivePiece);
      if (!placed) throw new Error('a stand was expected');
      return placed.footprint;
    };
    const told = { apart: 0, meeting: 0 };
    // Along or square to a leg of the first, so that legs lie side by side as often as they cross.
    const scene = fc.record({
      turn: fc.constantFrom(0, 30, 45, 90, 200),
      turned: fc.constantFrom(0, 60, 90, 120, 180, 183),
      ahead: fc.integer({ min: -650, max: 650 }),
      aside: fc.oneof(fc.integer({ min: -22, max: 22 }), fc.integer({ min: -500, max: 500 })),
    });
    fc.assert(
      fc.property(scene, ({ turn, turned, ahead, aside }) => {
        const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
        const base = { x: ahead * c - aside * s, y: ahead * s + aside * c };
        const tip = { x: base.x, y: base.y + 600, z: 1400 };
        const first = stand({ turn, tip: { x: 0, y: 600, z: 1400 }, azimuth: 90 });
        const second = stand({ base, turn: turn + turned, tip, azimuth: 90 });
        const found = among([], [[first], [second]]).filter(({ code }) => code === 'feet-overlap');
        const apart = sampledGap(footprintOf(first), footprintOf(second));
        // Samples stand 1 mm apart along a leg: the true gap is at most 0.5 mm less.
        if (apart > 0.7) expect(found).toEqual([]);
        if (apart < -1) expect(found).toHaveLength(1);
        if (apart > 0.7 && apart < 40) told.apart += 1;
        if (apart < -1) told.meeting += 1;
      }),
      { numRuns: 250 },
    );
    expect(told.apart).toBeGreaterThan(5);
    expect(told.meeting).toBeGreaterThan(30);
  });

  it('a crossing is as deep as the shorter end past it, as worked by hand', () => {
    // Leg of the first along +x to 330. The second's hub at (200, 230), leg along -y to (200, -100): they cross at (200, 0),
    // 130 and 100 mm before their feet. With half a leg's thickness (8): 108.
    const second = stand({
      base: { x: 200, y: 230 },
      turn: 270,
      tip: { x: 200, y: 830, z: 1400 },
      azimuth: 90,
    });
    const [only] = feet(among([], [[withTurn(0, 0)], [second]]));
    expect(only?.overlap).toBeCloseTo(108, 6);
    expect(only?.place.x).toBeCloseTo(200, 9);
    expect(only?.place.y).toBeCloseTo(0, 9);
  });

  it('a leg on a round base is found, by the depth worked by hand', () => {
    // A disc of 165 mm at 450: a leg of 330 with half its thickness 8 reaches 330 - 285 + 8 = 53 mm onto it.
    const disc = stand({
      stand: 'roundBoom',
      base: { x: 450, y: 0 },
      tip: { x: 450, y: 500, z: 1250 },
      azimuth: 90,
    });
    const [only] = feet(among([], [[withTurn(0, 0)], [disc]]));
    expect(only?.overlap).toBeCloseTo(53, 6);
  });

  it('a leg on a pedal is found; a pedal is not in the way of the hi-hat it plays', () => {
    const pedal: Piece = {
      kind: 'pedal',
      id: 'pedal',
      name: 'Pedal',
      x: 250,
      y: -40,
      turn: 90,
      length: 300,
      width: 100,
      plays: 'hiHat',
      foot: 'left',
    };
    const hiHat: Piece = {
      kind: 'hiHat',
      id: 'hats',
      name: 'Hi-hat',
      x: 0,
      y: 0,
      z: 900,
      tilt: 0,
      tiltToward: 270,
      hands: 'both',
      diameter: 350,
      opening: 20,
      support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 260, turn: 0 },
    };
    expect(feet(among([pedal], [[withTurn(0, 0)]]))[0]?.about).toEqual(['a', 'pedal']);
    expect(feet(among([pedal, hiHat], []))).toEqual([]);
    expect(feet(among([{ ...pedal, plays: 'kick' }, hiHat], []))).toHaveLength(1);
  });

  it('a leg may stand under the flank of a kick as far as it fits', () => {
    const floor = (x: number): Piece => ({
      ...cymbal,
      x,
      z: 1300,
      support: { kind: 'stand', dx: 0, dy: 0, legs: 3, spread: 300, turn: 180 },
    });
    // The foot of a leg toward -x stands at x - 300, on the deck; the shell is 20 mm above it at its lowest, 131 at x = 230.
    expect(feet(among([kick, floor(500)], []))).toEqual([]);
    expect(feet(among([kick, floor(330)], []))).toHaveLength(1);
  });
});

/** The least gap between two footprints on the plan, mm, negative where they overlap: points every mm along the legs of one. */
function sampledGap(p: Footprint, q: Footprint): number {
  let least = Math.hypot(p.hub.x - q.hub.x, p.hub.y - q.hub.y) - p.hubRadius - q.hubRadius;
  for (const [of, other] of [
    [p, q],
    [q, p],
  ] as const) {
    for (const foot of of.feet) {
      const long = Math.hypot(foot.x - of.hub.x, foot.y - of.hub.y);
      for (let along = 0; along <= long; along++) {
        const at = {
          x: of.hub.x + (along / long) * (foot.x - of.hub.x),
          y: of.hub.y + (along / long) * (foot.y - of.hub.y),
        };
        const toHub = Math.hypot(at.x - other.hub.x, at.y - other.hub.y) - other.hubRadius;
        const toLegs = other.feet.map((end) => toSegment(at, other.hub, end) - LEG_RADIUS);
        least = Math.min(least, Math.min(toHub, ...toLegs) - LEG_RADIUS);
      }
    }
  }
  return least;
}

function toSegment(at: Vec2, from: Vec2, to: Vec2): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = ((at.x - from.x) * dx + (at.y - from.y) * dy) / (dx * dx + dy * dy);
  const held = Math.max(0, Math.min(1, share));
  return Math.hypot(at.x - from.x - held * dx, at.y - from.y - held * dy);
}
