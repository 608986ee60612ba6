import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  electricalFacts,
  RESISTANCE_BY_SECTION,
  SOURCE_IMPEDANCE,
  USUAL_CABLE,
  USUAL_LOAD,
} from '../../src/cabling/electrical.ts';

interface Entry {
  readonly id: string;
  readonly value: number;
  readonly tol: number;
}
const path = new URL('../fixtures/reference/values.json', import.meta.url);
const entries: readonly Entry[] = JSON.parse(readFileSync(path, 'utf8'));
const published = (prefix: string): readonly Entry[] => {
  const found = entries.filter(({ id }) => id.startsWith(prefix));
  if (found.length === 0) throw new Error(`no reference value starts with ${prefix}`);
  return found;
};

const metres = (length: number, source = 200) =>
  electricalFacts({ length: 1000 * length, source, load: USUAL_LOAD, temperature: 20 });

describe('what a cable does to a signal', () => {
  it('has the resistances of IEC 60228 and DIN VDE 0295', () => {
    for (const { id, value, tol } of published('cable.R20.class5.')) {
      const section = Number(/class5\.(.*)mm2/.exec(id)?.[1]);
      expect(Math.abs((RESISTANCE_BY_SECTION.get(section) ?? 0) - value)).toBeLessThanOrEqual(tol);
    }
    expect(RESISTANCE_BY_SECTION.get(0.22)).toBe(USUAL_CABLE.resistance);
  });

  it('E3: has the corners worked out in the reference', () => {
    for (const { id, value, tol } of published('cable.f3dB.')) {
      const [, source, length] = /R(\d+)\.L(\d+)m/.exec(id) ?? [];
      const { corner } = metres(Number(length), Number(source));
      expect(Math.abs(corner / 1000 - value)).toBeLessThanOrEqual(Math.max(tol, 0.01));
    }
  });

  it('E3: takes 0.266 dB at 20 kHz from 200 ohm over 100 m, 0.978 over 200 (reference, section 6)', () => {
    expect(metres(100).lossAt20k).toBeCloseTo(0.266, 3);
    expect(metres(200).lossAt20k).toBeCloseTo(0.978, 3);
    expect(metres(397.9).corner / 1000).toBeCloseTo(20, 2);
  });

  it('E1: is out and back, and rises with temperature', () => {
    expect(metres(1000).loop).toBeCloseTo(192, 9);
    const warm = { length: 1_000_000, source: 200, load: USUAL_LOAD, temperature: 40 };
    expect(electricalFacts(warm).loop).toBeCloseTo(192 * 1.0786, 9);
  });

  it('E2: takes what the divider takes', () => {
    const { levelLoss } = metres(100);
    expect(levelLoss).toBeCloseTo(20 * Math.log10(1719.2 / 1700), 12);
  });

  it('E4: is told only when it matters, never for the length of a kit', () => {
    for (const source of Object.values(SOURCE_IMPEDANCE))
      expect(metres(30, source).matters).toEqual([]);
    expect(metres(30).corner).toBeGreaterThan(200_000);
    expect(metres(200).matters).toEqual(['corner']);
    expect(metres(700, 150).matters).toEqual(['loop', 'corner']);
  });

  it('is nothing for no cable', () => {
    const none = { levelLoss: 0, loop: 0, corner: Number.POSITIVE_INFINITY, lossAt20k: 0 };
    expect(metres(0)).toEqual({ ...none, matters: [] });
  });
});
