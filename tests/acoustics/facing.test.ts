import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimAt, facingOf, startOf } from '../../src/acoustics/facing.ts';
import { PATTERNS } from '../../src/acoustics/pattern.ts';
import { type Ear, radiatingDisc } from '../../src/acoustics/radiation.ts';
import type { Source } from '../../src/acoustics/source.ts';
import {
  along,
  distance,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { fivePiece } from '../rig/kits.ts';
import { heardIn, only, sourceIn } from './scenes.ts';

const { sources, listeners } = heardIn(fivePiece);
const ear = (tip: Vec3, axis: Vec3): Ear => ({ tip, axis, pattern: PATTERNS.cardioid });
/** A mic on a drum's axis, `before` the struck head (negative: behind it), that looks toward that head or away from it. */
const onAxis = ({ struck }: Source, before: number, looks: 'at' | 'away'): Ear =>
  ear(
    along(struck.centre, struck.normal, before),
    scale(struck.normal, looks === 'at' ? -Math.sign(before) : Math.sign(before)),
  );

describe('H21 and H22 which side a mic is on, and how a stroke first arrives there', () => {
  const snare = sourceIn(sources, 'snare');
  const kick = sourceIn(sources, 'kick');
  const told = (one: Ear, source: Source) => {
    const { surface, first, sure } = facingOf(one, source);
    return [surface.name, first, sure];
  };

  it('above a snare air is thinned first, below it pressed together: opposite starts', () => {
    const above = onAxis(snare, 50, 'at');
    const below = onAxis(snare, -snare.depth - 50, 'at');
    expect(told(above, snare)).toEqual(['batter', 'rarefaction', true]);
    expect(told(below, snare)).toEqual(['resonant', 'compression', true]);
    expect(startOf(facingOf(above, snare), facingOf(below, snare))).toBe('opposite');
  });

  it('in front of a kick and inside it, looking at the beater, both start pressed together', () => {
    const front = onAxis(kick, -kick.depth - 60, 'at');
    const inside = onAxis(kick, -200, 'at');
    expect(told(front, kick)).toEqual(['resonant', 'compression', true]);
    expect(told(inside, kick)).toEqual(['batter', 'compression', true]);
    expect(startOf(facingOf(front, kick), facingOf(inside, kick))).toBe('equal');
  });

  it('at the beater, on the side of the pedal, it starts opposite to inside', () => {
    const behind = onAxis(kick, 80, 'at');
    expect(told(behind, kick)).toEqual(['batter', 'rarefaction', true]);
    expect(startOf(facingOf(behind, kick), facingOf(onAxis(kick, -200, 'at'), kick))).toBe(
      'opposite',
    );
  });

  it('inside a shell, looking at the back of the other head, air is thinned', () => {
    expect(told(onAxis(kick, -200, 'away'), kick)).toEqual(['resonant', 'rarefaction', true]);
  });

  it('above and below a cymbal start opposite', () => {
    const ride = sourceIn(sources, 'ride');
    expect(told(onAxis(ride, 300, 'at'), ride)).toEqual(['cymbal', 'rarefaction', true]);
    expect(told(onAxis(ride, -300, 'at'), ride)).toEqual(['cymbal', 'compression', true]);
  });

  it('from beside, neither is certain', () => {
    const { struck } = snare;
    const beside = along(struck.centre, vec(1, 0, 0), 900);
    expect(facingOf(ear(beside, vec(-1, 0, 0)), snare).sure).toBe(false);
  });

  it('every clip of the five-piece kit faces the batter head it is clipped over', () => {
    for (const mic of listeners.filter(({ placed }) => placed.mic.mount.kind === 'clip')) {
      expect(told(mic.ear, only(mic.own))).toEqual(['batter', 'rarefaction', true]);
    }
  });
});

describe('H23 where a mic aims', () => {
  const radius = 100;
  const head = {
    name: 'batter' as const,
    share: 1,
    ...radiatingDisc(vec(0, 0, 0), vec(0, 0, 1), radius),
  };
  const aimedAt = (x: number) => {
    const tip = vec(-150, 0, 90);
    return aimAt(ear(tip, unit(subtract(vec(x, 0, 0), tip), vec(0, 0, -1))), head);
  };

  it('finds the point it was pointed at', () => {
    fc.assert(
      fc.property(fc.double({ min: -120, max: 200, noNaN: true }), (x) => {
        const aim = only(aimedAt(x));
        expect(distance(aim.point, vec(x, 0, 0))).toBeLessThan(1e-9);
        expect(aim.fromCentre).toBeCloseTo(Math.abs(x), 9);
        expect(aim.distance).toBeCloseTo(Math.hypot(x + 150, 90), 9);
      }),
    );
  });

  it('names the zone by the share of the radius', () => {
    const zones = [0, 24, 26, 65, 68, 99, 101].map((x) => aimedAt(x)?.zone);
    expect(zones).toEqual(['centre', 'centre', 'between', 'between', 'edge', 'edge', 'beside']);
  });

  it('there is none along the head or away from it', () => {
    expect(aimAt(ear(vec(-150, 0, 90), vec(1, 0, 0)), head)).toBeUndefined();
    expect(aimAt(ear(vec(-150, 0, 90), vec(0, 0, 1)), head)).toBeUndefined();
  });
});
