import { describe, expect, it } from 'vitest';
import type { Mount, StandMount } from '../../../src/layout/mics/mount.ts';
import { among, kick, stand } from './scenes.ts';

describe('K4: a kick with a port', () => {
  const into = (z: number, depth: number): StandMount =>
    stand({
      stand: 'tripodLow',
      base: { x: 0, y: 3700 },
      turn: 90,
      tip: { x: 0, y: 3200 - depth, z },
      azimuth: 270,
    });

  it('lets a mic through its port and stand inside', () => {
    expect(among([kick], [[into(300, 60), 'kick-dynamic']])).toEqual([]);
  });

  it('finds one that meets the edge of the port, by the difference worked by hand', () => {
    // A body of 80 mm in a port of 120 has 20 mm to spare on every side; 35 mm off centre it overlaps by 15.
    const [only] = among([kick], [[into(335, 60), 'kick-dynamic']]).filter(
      ({ code }) => code === 'mic-in-shell',
    );
    expect(only?.overlap).toBeCloseTo(15, 0);
  });

  it('finds one that reaches the batter head', () => {
    const [only] = among(
      [{ ...kick, depth: 150 }],
      [
        [
          stand({ ...into(300, 0), tip: { x: 0, y: 2920, z: 300 }, base: { x: 0, y: 3500 } }),
          'kick-dynamic',
        ],
      ],
    ).filter(({ code }) => code === 'mic-in-shell');
    // The head is at 3000 - 75 = 2925, the tip 5 mm behind it.
    expect(only?.about).toEqual(['a', 'kick']);
    expect(only?.overlap).toBeCloseTo(5, 3);
  });

  it('finds one that goes in without a port', () => {
    const closed = { ...kick, port: null };
    expect(among([closed], [[into(300, 60), 'kick-dynamic']])[0]).toMatchObject({
      code: 'mic-in-shell',
      about: ['a', 'kick'],
    });
  });

  it('a plate lies in it without being in its way, and cannot come into one without a port', () => {
    const plate: Mount = { kind: 'plateInKick', kick: 'kick', depth: 220 };
    expect(among([kick], [[plate, 'boundary-plate']])).toEqual([]);
    expect(among([{ ...kick, port: null }], [[plate, 'boundary-plate']])[0]?.code).toBe(
      'mic-in-shell',
    );
  });
});
