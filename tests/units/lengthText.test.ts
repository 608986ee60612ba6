import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  readLength,
  roundedDown,
  showLength,
  showLengthNumber,
  showLongLength,
} from '../../src/units/lengthText.ts';

const unit = fc.constantFrom('mm' as const, 'in' as const);

describe('showLength', () => {
  it.each([
    [123.4, 'mm', '123 mm'],
    [123.5, 'mm', '124 mm'],
    [-12.6, 'mm', '−13 mm'],
    [0, 'mm', '0 mm'],
    [122, 'in', '4.8 in'],
    [355.6, 'in', '14 in'],
    [-25.4, 'in', '−1 in'],
  ] as const)('shows %s mm in %s as %s', (length, shown, text) => {
    expect(showLength(length, shown)).toBe(text);
  });

  it('never shows -0', () => {
    expect(showLength(-0.4, 'mm')).toBe('0 mm');
    expect(showLength(-1, 'in')).toBe('0 in');
    expect(showLengthNumber(-0, 'mm')).toBe('0');
  });

  it('shows long lengths in metres or feet', () => {
    expect(showLongLength(5000, 'mm')).toBe('5.0 m');
    expect(showLongLength(5000, 'in')).toBe('16.4 ft');
    expect(showLongLength(12_345, 'mm')).toBe('12.3 m');
  });

  it('is read again as the same length, to half of its last digit', () => {
    fc.assert(
      fc.property(fc.double({ min: -20_000, max: 20_000, noNaN: true }), unit, (length, shown) => {
        const again = readLength(showLength(length, shown), shown);
        const numberAgain = readLength(showLengthNumber(length, shown), shown);
        const half = shown === 'mm' ? 0.5 : 0.05 * 25.4;
        expect(Math.abs((again ?? Number.NaN) - length)).toBeLessThanOrEqual(half + 1e-9);
        expect(numberAgain).toBe(again);
      }),
    );
  });

  it('is read again exactly when it was whole', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 20_000 }), (length) => {
        expect(readLength(showLength(length, 'mm'), 'in')).toBe(length);
      }),
    );
  });
});

describe('readLength', () => {
  it.each([
    ['13 1/2', 13.5],
    ['13-1/2', 13.5],
    ['13½', 13.5],
    ['3/4', 0.75],
    ['¼', 0.25],
    ['-1 1/4', -1.25],
    ['22 3/8 in', 22.375],
    ['16 1/2"', 16.5],
    ['−4', -4],
  ])('reads %s, as on a tape measure, as so many inches', (text, inches) => {
    expect(readLength(text, 'in')).toBeCloseTo(inches * 25.4, 9);
  });

  it.each(['1/0', '13 1/', '/2', '13 1 1/2', '1.5 1/2', '1/2/3', '--3', ''])(
    'does not guess at “%s”',
    (text) => {
      expect(readLength(text, 'in')).toBeUndefined();
    },
  );

  it.each([
    ['120', 'mm', 120],
    ['120', 'in', 3048],
    ['120 mm', 'in', 120],
    ['12 cm', 'mm', 120],
    ['1.2 m', 'mm', 1200],
    ['1,2 m', 'mm', 1200],
    ['14 in', 'mm', 355.6],
    ['14"', 'mm', 355.6],
    ['14 "', 'mm', 355.6],
    ['3 ft', 'mm', 914.4],
    ['  7.5MM ', 'in', 7.5],
    ['.5', 'mm', 0.5],
    [',5', 'mm', 0.5],
    ['5.', 'mm', 5],
    ['+5', 'mm', 5],
    ['-5', 'mm', -5],
  ] as const)('reads %j, %s shown', (text, shown, length) => {
    expect(readLength(text, shown)).toBeCloseTo(length, 9);
  });

  it.each([
    '',
    ' ',
    'mm',
    '.',
    '12 x',
    'twelve',
    '1 200',
    '1,200.5',
    '1.2.3',
    '1e3',
    '0x10',
    '5 mm mm',
    '-',
    '- 5',
    'NaN',
    'Infinity',
    '5 km',
    '14 in 3',
    '<b>5</b>',
    '9'.repeat(400),
  ])('refuses %j', (text) => {
    expect(readLength(text, 'mm')).toBeUndefined();
  });

  it('gives a finite length or none for any text', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), unit, (text, shown) => {
        const length = readLength(text, shown);
        expect(length === undefined || Number.isFinite(length)).toBe(true);
      }),
    );
  });
});

describe('roundedDown', () => {
  it('is what is shown, never above the length and less than one shown step below it', () => {
    fc.assert(
      fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), unit, (length, shown) => {
        const down = roundedDown(length, shown);
        const step = shown === 'mm' ? 1 : 2.54;
        expect(down).toBeLessThanOrEqual(length + 1e-9);
        expect(down).toBeGreaterThan(length - step - 1e-9);
        expect(readLength(showLength(down, shown), shown)).toBeCloseTo(down, 6);
      }),
    );
  });
});
