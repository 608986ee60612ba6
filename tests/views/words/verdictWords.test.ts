import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toInches } from '../../../src/units/inch.ts';
import { roundedDown } from '../../../src/units/lengthText.ts';
import {
  clearanceAmount,
  clearanceNumber,
  verdictWord,
} from '../../../src/views/words/verdictWords.ts';

describe('a clearance in words', () => {
  it('says each verdict with its own amount', () => {
    expect(clearanceAmount({ clearance: -12, verdict: 'struck' }, 50, 'mm')).toBe(
      '12 mm too close',
    );
    expect(clearanceAmount({ clearance: 38.6, verdict: 'tight' }, 50, 'mm')).toBe(
      '38 mm away, 12 mm inside the margin',
    );
    expect(clearanceAmount({ clearance: 84.9, verdict: 'clear' }, 50, 'mm')).toBe('84 mm clear');
    expect(
      clearanceAmount({ clearance: Number.POSITIVE_INFINITY, verdict: 'clear' }, 50, 'mm'),
    ).toBe('nothing moves near it');
  });

  it('never calls a struck mic 0 mm too close', () => {
    expect(clearanceAmount({ clearance: -0.2, verdict: 'struck' }, 50, 'mm')).toBe(
      '1 mm too close',
    );
    expect(clearanceAmount({ clearance: -0.2, verdict: 'struck' }, 50, 'in')).toBe(
      '0.1 in too close',
    );
  });

  it('calls hardly any room under 1 mm, not 0 mm', () => {
    expect(clearanceAmount({ clearance: 0.4, verdict: 'tight' }, 50, 'mm')).toBe(
      'under 1 mm away, 50 mm inside the margin',
    );
    expect(clearanceAmount({ clearance: 0.4, verdict: 'clear' }, 0, 'mm')).toBe('under 1 mm clear');
    expect(clearanceNumber(0.4, 'mm')).toBe('under 1 mm');
    expect(clearanceNumber(0.4, 'in')).toBe('under 0.1 in');
  });

  it('shows the number with a true minus, and a dash where nothing moves', () => {
    expect(clearanceNumber(-12, 'mm')).toBe('−12 mm');
    expect(clearanceNumber(-0.01, 'mm')).toBe('−1 mm');
    expect(clearanceNumber(31.9, 'in')).toBe('1.2 in');
    expect(clearanceNumber(Number.POSITIVE_INFINITY, 'mm')).toBe('–');
  });

  it('never promises more room than there is', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 3000, noNaN: true }), (clearance) => {
        expect(roundedDown(clearance, 'mm')).toBeLessThanOrEqual(clearance);
        expect(roundedDown(clearance, 'in')).toBeLessThanOrEqual(clearance + 1e-9);
        expect(clearance - roundedDown(clearance, 'mm')).toBeLessThanOrEqual(1);
        expect(toInches(clearance - roundedDown(clearance, 'in'))).toBeLessThanOrEqual(0.1 + 1e-9);
      }),
    );
  });

  it('has one word for each verdict', () => {
    expect(new Set(['clear', 'tight', 'struck'].map((v) => verdictWord(v as 'clear'))).size).toBe(
      3,
    );
  });
});
