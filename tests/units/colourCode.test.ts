import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colourBands } from '../../src/units/colourCode.ts';

const words = (number: number) =>
  colourBands(number).map(({ digit, colour }) => `${digit} ${colour}`);

describe('colours of digits', () => {
  // IEC 60062, digits, as three secondary sources give them (reference notes, section 7).
  it('are those of IEC 60062', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap(words)).toEqual([
      '0 black',
      '1 brown',
      '2 red',
      '3 orange',
      '4 yellow',
      '5 green',
      '6 blue',
      '7 violet',
      '8 grey',
      '9 white',
    ]);
  });

  // Two bands for two digits: from memory; 10 = brown and black is the example of the reference notes.
  it('two digits are two bands', () => {
    expect(words(10)).toEqual(['1 brown', '0 black']);
    expect(words(24)).toEqual(['2 red', '4 yellow']);
  });

  it('the digits printed are always the number', () => {
    fc.assert(
      fc.property(fc.nat({ max: 99_999 }), (number) => {
        expect(
          Number(
            colourBands(number)
              .map(({ digit }) => digit)
              .join(''),
          ),
        ).toBe(number);
      }),
    );
  });

  it.each([-1, 1.5, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (number) => {
    expect(() => colourBands(number)).toThrow('Expected a whole number from 0 on');
  });
});
