import { describe, expect, it } from 'vitest';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';
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
