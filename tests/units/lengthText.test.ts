import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  keptLength,
  readLength,
  roundedDown,
  showLength,
  showLengthNumber,
  showLongLength,
  writeLength,
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
    ['1,5', 'mm', 1.5],
    ['1,5 cm', 'mm', 15],
    ['5', 'm', 5000],
    ['16', 'ft', 4876.8],
    ['5', 'in', 127],
    ['2,5 inches', 'mm', 63.5],
    ['1.125 in', 'mm', 28.575],
    ['3 ″', 'mm', 76.2],
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
    '1,200',
    '1.200',
    '12.345 mm',
    '1,200 m',
    '5 constructor',
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

describe('feet and inches', () => {
  const marks = fc.constantFrom(
    (feet: number, inches: string) => `${feet}'${inches}"`,
    (feet: number, inches: string) => `${feet}’ ${inches}”`,
    (feet: number, inches: string) => `${feet}'-${inches}"`,
    (feet: number, inches: string) => `${feet}′${inches}`,
    (feet: number, inches: string) => ` ${feet} ft ${inches} in `,
    (feet: number, inches: string) => `${feet}FT${inches}`,
    (feet: number, inches: string) => `${feet} feet ${inches} inches`,
  );

  it('are read however they are marked, whatever the unit shown', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 47 }),
        marks,
        fc.constantFrom('mm' as const, 'in' as const, 'm' as const, 'ft' as const),
        (feet, quarters, write, bare) => {
          const length = readLength(write(feet, String(quarters / 4)), bare);
          expect(length).toBeCloseTo((feet * 12 + quarters / 4) * 25.4, 9);
        },
      ),
    );
  });

  it.each([
    ['5\'11"', 71],
    ["5'11", 71],
    ['5\' 11 1/2"', 71.5],
    ["5'½", 60.5],
    ['5 ft 11,5 in', 71.5],
    ['-5\'6"', -66],
    ["6'", 72],
    ['6 ft', 72],
    ['5.5 ft', 66],
  ])('%s is %s inches', (text, inches) => {
    expect(readLength(text, 'mm')).toBeCloseTo(inches * 25.4, 9);
  });

  it.each(["5'12", "5'-", "5.5'6", "5''6", '5 ft -6 in', "5' 6 mm", "5'1,200", "'6", '5 ft 6 ft'])(
    'refuses %s',
    (text) => {
      expect(readLength(text, 'in')).toBeUndefined();
    },
  );
});

describe('writeLength', () => {
  it('what was typed is read again as exactly the same length', () => {
    const typed = fc.oneof(
      fc.integer({ min: -200_000, max: 200_000 }).map((tenths) => tenths / 10),
      fc.integer({ min: -8000, max: 8000 }).map((eighths) => (eighths / 8) * 25.4),
    );
    fc.assert(
      fc.property(typed, (length) => {
        const isTenths = Math.abs(length * 10 - Math.round(length * 10)) < 1e-6;
        const shown = isTenths ? 'mm' : 'in';
        expect(readLength(writeLength(length, shown), shown)).toBeCloseTo(length, 6);
      }),
    );
    expect(writeLength(1.5, 'mm')).toBe('1.5');
    expect(writeLength(13.375 * 25.4, 'in')).toBe('13.375');
  });

  it('any other length is read again to half of the last digit of what is shown elsewhere', () => {
    fc.assert(
      fc.property(fc.double({ min: -20_000, max: 20_000, noNaN: true }), unit, (length, shown) => {
        const again = readLength(writeLength(length, shown), shown) ?? Number.NaN;
        expect(Math.abs(again - length)).toBeLessThanOrEqual(
          (shown === 'mm' ? 0.5 : 0.05 * 25.4) + 1e-9,
        );
      }),
    );
  });
});

describe('a typed length', () => {
  const lengths = fc.oneof(
    fc.integer({ min: -400_000, max: 400_000 }).map((hundredths) => `${hundredths / 100} mm`),
    fc.integer({ min: -20_000, max: 20_000 }).map((thousandths) => `${thousandths / 1000} in`),
    fc.integer({ min: -500, max: 500 }).map((n) => `${n}/64 in`),
    fc.integer({ min: -9999, max: 9999 }).map((n) => `${n / 10_000} cm`),
    fc.integer({ min: -99, max: 99 }).map((n) => `${n}/7`),
  );

  it('is shown as it is kept: to the last digit of the unit shown, and never as another whole number', () => {
    fc.assert(
      fc.property(lengths, unit, unit, (text, typedIn, shownIn) => {
        const typed = readLength(text, typedIn);
        fc.pre(typed !== undefined);
        const kept = keptLength(typed, typedIn);
        expect(Math.abs(kept - typed)).toBeLessThanOrEqual(0.0005 * 25.4 + 1e-9);
        const shown = Number(writeLength(kept, shownIn));
        const number = shownIn === 'mm' ? kept : kept / 25.4;
        expect(Math.abs(shown - number)).toBeLessThanOrEqual(0.005 + 1e-9);
        if (Number.isInteger(shown)) expect(number).toBeCloseTo(shown, 5);
        // In the unit in which it was typed nothing of it is lost.
        if (text.endsWith(typedIn) && shownIn === typedIn) expect(shown).toBeCloseTo(number, 5);
      }),
      { numRuns: 2000 },
    );
  });

  it.each([
    ['50.55', 'mm', 'mm', '50.55'],
    ['3.05 in', 'mm', 'mm', '77.47'],
    ['1801.25', 'mm', 'mm', '1801.25'],
    ['13 3/8 in', 'mm', 'mm', '339.72'],
    ['13 3/8 in', 'mm', 'in', '13.375'],
    ['50.55 mm', 'in', 'in', '1.99'],
    ['152 mm', 'in', 'in', '5.98'],
    ['152.4 mm', 'in', 'in', '6'],
    ['152.39 mm', 'in', 'in', '5.9996'],
  ] as const)('%s typed where %s are shown is written, in %s, as %s', (text, typedIn, unit, as) => {
    const typed = readLength(text, typedIn) ?? Number.NaN;
    expect(writeLength(keptLength(typed, typedIn), unit)).toBe(as);
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
