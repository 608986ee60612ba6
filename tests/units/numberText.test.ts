import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readNumber, readWithUnit, twoMeanings, writeNumber } from '../../src/units/numberText.ts';

describe('readNumber', () => {
  it('T1 reads point and comma alike, whatever the sign', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 0, max: 99 }),
        fc.constantFrom('', '+', '-', '−'),
        (whole, decimals, sign) => {
          const text = (mark: string) => `${sign}${whole}${mark}${decimals}`;
          const value = Number(`${whole}.${decimals}`);
          const expected = sign === '' || sign === '+' ? value : -value;
          expect(readNumber(text('.'))).toBe(expected);
          expect(readNumber(text(','))).toBe(expected);
        },
      ),
    );
  });

  it('T2 reads a fraction as it is read on a tape measure', () => {
    const small = fc.integer({ min: 1, max: 99 });
    fc.assert(
      fc.property(
        small,
        small,
        small,
        fc.constantFrom('', '-', '−'),
        (whole, upper, lower, sign) => {
          const times = sign === '' ? 1 : -1;
          const mixed = times * (whole + upper / lower);
          expect(readNumber(`${sign}${upper}/${lower}`)).toBe((times * upper) / lower);
          expect(readNumber(`${sign}${whole} ${upper}/${lower}`)).toBe(mixed);
          expect(readNumber(`${sign}${whole}-${upper}/${lower}`)).toBe(mixed);
          expect(readNumber(`${sign}${whole}½`)).toBe(times * (whole + 0.5));
        },
      ),
    );
    expect(readNumber('¾')).toBe(0.75);
    expect(readNumber('13¼')).toBe(13.25);
    for (const text of ['1/0', '1/', '/2', '1 2', '1.5/2']) {
      expect(readNumber(text), text).toBeUndefined();
    }
  });

  it('T3 does not guess what a comma before three digits means', () => {
    for (const text of ['1,200', '12,345', '-1,200', '999,999']) {
      expect(readNumber(text), text).toBeUndefined();
    }
    expect(readNumber('0,125')).toBe(0.125);
    expect(readNumber(',125')).toBe(0.125);
    expect(readNumber('1,25')).toBe(1.25);
    expect(readNumber('1200,125')).toBe(1200.125);
    expect(readNumber('1.125')).toBe(1.125);
  });
});

it('T4 the unit is what stands behind the last digit', () => {
  expect(readWithUnit(' 21,5 °C ')).toEqual({ number: 21.5, written: '21,5', unit: '°c' });
  expect(readWithUnit('13½"')).toEqual({ number: 13.5, written: '13½', unit: '"' });
  expect(readWithUnit('7')).toEqual({ number: 7, written: '7', unit: '' });
  expect(readWithUnit('kg')).toBeUndefined();
});

it('twoMeanings names both numbers that a text can mean', () => {
  expect(twoMeanings('1,200')).toEqual(['1.2', '1200']);
  expect(twoMeanings('-12.345 mm')).toEqual(['12.345', '12345']);
  for (const text of ['1,5', '1,2000', '0,125', '1,200,300', '1200', '']) {
    expect(twoMeanings(text), text).toBeUndefined();
  }
});

describe('writeNumber', () => {
  const decimals = fc.integer({ min: 0, max: 3 });

  it('writes in full what has no more decimals than the most', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9_999_999, max: 9_999_999 }), decimals, (whole, most) => {
        const value = whole / 10 ** most;
        expect(readNumber(writeNumber(value, 0, most))).toBeCloseTo(value, 9);
      }),
    );
  });

  it('rounds the rest to the usual decimals', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e4, max: 1e4, noNaN: true }), decimals, (value, usual) => {
        const read = readNumber(writeNumber(value, usual, usual + 1)) ?? Number.NaN;
        expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5 / 10 ** usual + 1e-9);
      }),
    );
    expect(writeNumber(683.37, 0, 1)).toBe('683');
    expect(writeNumber(683.4, 0, 1)).toBe('683.4');
    expect(writeNumber(-0.001, 0, 1)).toBe('0');
  });

  it('is not misled by the noise of arithmetic', () => {
    expect(writeNumber(0.1 + 0.2, 0, 1)).toBe('0.3');
    expect(writeNumber(14 * 25.4, 0, 1)).toBe('355.6');
  });
});
