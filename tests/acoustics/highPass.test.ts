import { describe, expect, it } from 'vitest';
import type { Style } from '../../src/acoustics/choices.ts';
import { type HighPassSource, highPasses, highPassFor } from '../../src/acoustics/highPass.ts';
import { fivePiece, kits } from '../rig/kits.ts';
import { heardIn, only } from './scenes.ts';

const styles: readonly Style[] = ['rock', 'pop', 'jazz', 'bigBand', 'worship', 'metal'];
const filtered: readonly HighPassSource[] = [
  ...(['kick', 'snare', 'rackTom', 'floorTom'] as const),
  ...(['hiHat', 'cymbal', 'percussion', 'overhead'] as const),
];

describe('H39 starting points by style (common practice, no source)', () => {
  it('are ranges with a reason, within what consoles offer', () => {
    for (const style of styles) {
      for (const source of filtered) {
        const { low, high, reasons } = highPassFor(style, source);
        expect(low).toBeLessThan(high);
        expect(low).toBeGreaterThanOrEqual(20);
        expect(high).toBeLessThanOrEqual(600);
        expect(reasons.length).toBeGreaterThan(0);
      }
    }
  });

  it('overheads are filtered higher for loud music than for jazz and big band', () => {
    const soft = (['jazz', 'bigBand'] as const).map((style) => highPassFor(style, 'overhead'));
    const loud = (['rock', 'pop', 'worship', 'metal'] as const).map((style) =>
      highPassFor(style, 'overhead'),
    );
    expect(Math.max(...soft.map(({ high }) => high))).toBeLessThan(
      Math.min(...loud.map(({ low }) => low)),
    );
    for (const { reasons } of soft) expect(reasons).toEqual(['overheadsCarryKit']);
    for (const { reasons } of loud) expect(reasons).toEqual(['overheadsForCymbals']);
  });

  it('a kick starts below every other drum', () => {
    for (const style of styles) {
      for (const drum of ['snare', 'rackTom'] as const) {
        expect(highPassFor(style, 'kick').high).toBeLessThanOrEqual(highPassFor(style, drum).low);
      }
    }
  });
});

describe('H40 starting points of the mics of a layout', () => {
  it('every mic that hears something has one, overheads as overheads', () => {
    for (const layout of kits) {
      const found = highPasses(heardIn(layout).listeners, 'rock');
      expect(found.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
      for (const { mic, source } of found) {
        expect(source === 'overhead').toBe(mic.startsWith('mic-overhead'));
      }
    }
  });

  it('no close mic of a drum starts above 0.8 of its fundamental, and says so where that decides', () => {
    for (const style of styles) {
      for (const layout of kits) {
        const { listeners } = heardIn(layout);
        for (const { mic, low, high, reasons } of highPasses(listeners, style)) {
          const { own, role } = only(listeners.find(({ id }) => id === mic));
          expect(low).toBeLessThanOrEqual(high);
          if (role !== 'close' || own?.fundamental === undefined) continue;
          expect(high).toBeLessThanOrEqual(0.8 * own.fundamental + 1e-9);
          expect(reasons.includes('keepFundamental')).toBe(high === 0.8 * own.fundamental);
        }
      }
    }
  });

  it("metal's start for a floor tom is held below a low tuning", () => {
    const found = highPasses(heardIn(fivePiece).listeners, 'metal');
    expect(found.find(({ source }) => source === 'floorTom')?.reasons).toContain('keepFundamental');
  });
});
