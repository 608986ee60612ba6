import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { highPassFor } from '../../src/acoustics/highPass.ts';
import { MIC_CLASSES } from '../../src/layout/catalogue/micClasses.ts';
import type { MusicStyle } from '../../src/layout/patch.ts';
import { pickupsOf } from '../../src/patch/pickup.ts';
import { highPassStart, insertStart, padStart } from '../../src/patch/starts.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { largeWithMore } from './scenes.ts';

const STYLES = ['rock', 'pop', 'jazz', 'bigBand', 'worship', 'metal'] as const;
const SOURCES = [
  'kick',
  'snare',
  'rackTom',
  'floorTom',
  'hiHat',
  'cymbal',
  'percussion',
  'overhead',
] as const;
const pickup = (id: string) => {
  const found = pickupsOf(buildRig(largeWithMore)).find(({ placed }) => placed.mic.id === id);
  if (!found) throw new RangeError(`No mic ${id}`);
  return found;
};

describe('B1 high-pass', () => {
  it('is inside its range, for all styles and sources of the acoustics', () => {
    for (const style of STYLES) {
      for (const source of SOURCES) {
        const range = highPassFor(style, source);
        const start = highPassStart(range);
        expect(start).toBeGreaterThanOrEqual(range.low);
        expect(start).toBeLessThanOrEqual(range.high);
      }
    }
  });

  it('is inside any range, never falls when the range rises, and is the range where that is one value', () => {
    const hz = fc.double({ min: 10, max: 2000, noNaN: true });
    fc.assert(
      fc.property(hz, hz, fc.double({ min: 1, max: 3, noNaN: true }), (a, b, up) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const start = highPassStart({ low, high });
        expect(start >= low && start <= high).toBe(true);
        expect(highPassStart({ low: low * up, high: high * up })).toBeGreaterThanOrEqual(start);
        expect(highPassStart({ low, high: low })).toBe(low);
      }),
    );
  });

  // By hand: sqrt(30 * 40) = 34.6, to 5 Hz 35; sqrt(80 * 120) = 97.98, to 5 Hz 100; sqrt(200 * 400) = 282.8, to 10 Hz 280.
  it('is the geometric middle on the steps of a desk', () => {
    expect(highPassStart({ low: 30, high: 40 })).toBe(35);
    expect(highPassStart({ low: 80, high: 120 })).toBe(100);
    expect(highPassStart({ low: 200, high: 400 })).toBe(280);
  });
});

// Common practice, no source.
describe('B2 inserts and B3 pads', () => {
  it('in loud styles: kick and snare top gate and compressor, snare bottom and toms a gate, cymbals none', () => {
    for (const style of ['rock', 'pop', 'worship', 'metal'] satisfies MusicStyle[]) {
      const of = (id: string) => insertStart(pickup(id), style);
      expect(of('mic-kick-in')).toBe('gateAndCompressor');
      expect(of('mic-snare')).toBe('gateAndCompressor');
      expect(of('mic-snare-bottom')).toBe('gate');
      expect(of('mic-rack-1')).toBe('gate');
      expect(of('mic-floor-tom-2')).toBe('gate');
      expect(of('mic-ride')).toBe('none');
      expect(of('mic-overhead-centre')).toBe('none');
    }
  });

  it('in soft styles: nothing', () => {
    for (const style of ['jazz', 'bigBand'] satisfies MusicStyle[]) {
      for (const each of pickupsOf(buildRig(largeWithMore))) {
        expect(insertStart(each, style)).toBe('none');
        for (const micClass of MIC_CLASSES) expect(padStart(each, micClass, style)).toBe(0);
      }
    }
  });

  it('a pad only on condensers and plates close to a drum that is hit hard', () => {
    const padOf = (id: string) => padStart(pickup(id), pickup(id).placed.micClass, 'rock');
    expect(padOf('mic-snare-condenser')).toBe(10);
    expect(padOf('mic-kick-plate')).toBe(10);
    expect(padOf('mic-snare')).toBe(0);
    expect(padOf('mic-overhead-centre')).toBe(0);
    expect(padOf('mic-hi-hat')).toBe(0);
  });
});
