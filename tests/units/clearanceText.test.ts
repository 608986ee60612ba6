import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Judged,
  showClearance,
  showInside,
  showMargin,
  showSpare,
  writeMargin,
} from '../../src/units/clearanceText.ts';
import { fromInches } from '../../src/units/inch.ts';
import { readLength } from '../../src/units/lengthText.ts';

const judged: fc.Arbitrary<Judged> = fc.record({
  margin: fc.oneof(
    fc.integer({ min: 0, max: 200 }),
    fc.integer({ min: 0, max: 2000 }).map((tenths) => tenths / 10),
    fc.integer({ min: 0, max: 80 }).map((tenths) => fromInches(tenths / 10)),
    fc.integer({ min: 0, max: 8000 }).map((thousandths) => fromInches(thousandths / 1000)),
    fc.integer({ min: 0, max: 200_000 }).map((thousandths) => thousandths / 1000),
  ),
  units: fc.constantFrom('mm', 'in'),
});

/** A margin and clearances about it, many of them nearer to it than the last digit shown. */
const pairs = judged.chain((by) =>
  fc.record({
    by: fc.constant(by),
    clearance: fc.oneof(
      fc.integer({ min: -50_000, max: 400_000 }).map((thousandths) => thousandths / 1000),
      fc.integer({ min: -3000, max: 3000 }).map((thousandths) => by.margin + thousandths / 1000),
      fc.constantFrom(by.margin, by.margin - 1e-7, 0),
    ),
  }),
);

/** What is written, as a number of its unit; `under 1 mm` is as good as nothing. */
const said = (text: string): number =>
  text.startsWith('under') ? 0 : Number.parseFloat(text.replace('−', '-'));

describe('clearances and their margin in writing', () => {
  it('what a clear one has to spare is never more than there is, nor than what is written of both', () => {
    expect(showSpare(50, { margin: 50, units: 'mm' })).toBe('0 mm');
    expect(showSpare(62.9, { margin: 50, units: 'mm' })).toBe('12 mm');
    expect(showSpare(fromInches(2.3), { margin: fromInches(2), units: 'in' })).toBe('0.3 in');
    fc.assert(
      fc.property(pairs, ({ by, clearance }) => {
        fc.pre(clearance >= by.margin);
        const spare = said(showSpare(clearance, by));
        const written =
          said(showClearance(clearance, by)) - Number(writeMargin(by.margin, by.units));
        expect(spare).toBeGreaterThanOrEqual(0);
        expect(spare).toBeLessThanOrEqual(Math.max(0, written) + 1e-5);
        const over = clearance - by.margin;
        expect(by.units === 'mm' ? spare : fromInches(spare)).toBeLessThanOrEqual(over + 1e-4);
      }),
    );
  });

  it('M1 a margin is written in full where it was typed, else rounded down, never to another whole number', () => {
    expect(showMargin({ margin: 50, units: 'mm' })).toBe('50 mm');
    expect(showMargin({ margin: 50, units: 'in' })).toBe('1.96 in');
    expect(showMargin({ margin: 51, units: 'in' })).toBe('2.007 in');
    expect(showMargin({ margin: fromInches(1.97), units: 'in' })).toBe('1.97 in');
    expect(showMargin({ margin: fromInches(2), units: 'mm' })).toBe('50.8 mm');
    expect(showMargin({ margin: 50.55, units: 'mm' })).toBe('50.55 mm');
    expect(showMargin({ margin: fromInches(3.05), units: 'mm' })).toBe('77.47 mm');
    expect(showMargin({ margin: fromInches(13.375), units: 'mm' })).toBe('339.72 mm');
    fc.assert(
      fc.property(judged, (by) => {
        const read = readLength(writeMargin(by.margin, by.units), by.units);
        expect(read).toBeLessThanOrEqual(by.margin + 1e-4);
        const whole = Number.isInteger(Number(writeMargin(by.margin, by.units)));
        expect(read).toBeGreaterThan(by.margin - (whole ? 1e-4 : 0.01 * 25.4));
      }),
    );
  });

  it('M2 says 1.96 in beside a margin of 1.96 in, and under the last digit instead of 0', () => {
    expect(showClearance(50, { margin: 50, units: 'in' })).toBe('1.96 in');
    expect(showClearance(0.4, { margin: 50, units: 'mm' })).toBe('under 1 mm');
    expect(showClearance(2.5, { margin: 50, units: 'in' })).toBe('under 0.1 in');
    expect(showClearance(-0.4, { margin: 50, units: 'mm' })).toBe('−1 mm');
    expect(showClearance(Number.POSITIVE_INFINITY, { margin: 50, units: 'mm' })).toBe('–');
  });

  it('M2 never promises more room than there is, and never says 0', () => {
    fc.assert(
      fc.property(pairs, ({ by, clearance }) => {
        const text = showClearance(clearance, by);
        expect(text).not.toMatch(/^[−]?0 /);
        const room = by.units === 'mm' ? said(text) : fromInches(said(text));
        expect(room).toBeLessThanOrEqual(clearance < 0 ? 0 : clearance + 1e-4);
        expect(said(text) < 0).toBe(clearance < 0);
      }),
    );
  });

  it('M2, M3 a tight one is written in whole last digits, and as short of what it is by less than two of them', () => {
    let under = 0;
    fc.assert(
      fc.property(pairs, ({ by, clearance }) => {
        fc.pre(clearance < by.margin);
        const steps = by.units === 'mm' ? 1 : 10;
        const is = by.units === 'mm' ? clearance : clearance / 25.4;
        const shown = said(showClearance(clearance, by));
        expect(Math.abs(shown * steps - Math.round(shown * steps))).toBeLessThan(1e-9);
        expect(is - shown).toBeLessThan(2 / steps);
        if (is - shown > 1 / steps) under += 1;
        // Only beside a margin that is written as low as the clearance would be.
        else expect(shown * steps).toBeCloseTo(Math.floor(is * steps), 9);
      }),
      { numRuns: 4000 },
    );
    expect(under).toBeGreaterThan(0);
  });

  it('M3 a clear one never shows less than the margin, a tight one always does', () => {
    fc.assert(
      fc.property(pairs, ({ by, clearance }) => {
        const [shown, margin] = [said(showClearance(clearance, by)), said(showMargin(by))];
        if (clearance >= by.margin) expect(shown).toBeGreaterThanOrEqual(margin);
        else if (margin > 0) expect(shown).toBeLessThan(margin);
      }),
      { numRuns: 2000 },
    );
    expect(showClearance(49.9, { margin: 50, units: 'in' })).toBe('1.9 in');
    expect(showInside(49.9, { margin: 50, units: 'in' })).toBe('0.1 in');
  });

  it('M3 how far inside the margin is what both that are written leave, and never 0', () => {
    expect(showInside(38.6, { margin: 50, units: 'mm' })).toBe('12 mm');
    fc.assert(
      fc.property(pairs, ({ by, clearance }) => {
        fc.pre(clearance >= 0 && clearance < by.margin);
        const inside = said(showInside(clearance, by));
        const left = said(showMargin(by)) - said(showClearance(clearance, by));
        expect(inside).toBeGreaterThan(0);
        expect(Math.abs(inside - left)).toBeLessThanOrEqual(by.units === 'mm' ? 1 : 0.1 + 1e-9);
      }),
    );
  });
});
