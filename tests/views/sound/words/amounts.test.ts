import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  changeWords,
  differenceWords,
  figure,
  hertzWords,
  levelWords,
  msWords,
  signedFigure,
} from '../../../../src/views/sound/words/amounts.ts';

describe('amounts of sound', () => {
  it('have a true minus, a sign where they are changes, and never minus nothing', () => {
    expect(figure(-3.14, 1)).toBe('−3.1');
    expect(signedFigure(2, 1)).toBe('+2.0');
    expect(signedFigure(-0.04, 1)).toBe('0.0');
    expect(signedFigure(0.04, 1)).toBe('0.0');
    expect(changeWords(-0.26)).toBe('−0.3 dB');
    expect(levelWords(104.4)).toBe('104 dB');
    expect(msWords(2.408)).toBe('2.41 ms');
  });

  it('are a dash where there is no number', () => {
    for (const none of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect([levelWords(none), differenceWords(none), changeWords(none)]).toEqual(['–', '–', '–']);
    }
  });

  it('show frequencies as a console does', () => {
    expect([hertzWords(57.2), hertzWords(999), hertzWords(1250)]).toEqual([
      '57 Hz',
      '999 Hz',
      '1.25 kHz',
    ]);
  });

  it('read back to within half of their last place', () => {
    const finite = fc.double({ min: -1e4, max: 1e4, noNaN: true });
    fc.assert(
      fc.property(finite, fc.integer({ min: 0, max: 3 }), (value, decimals) => {
        const read = Number(signedFigure(value, decimals).replace('−', '-'));
        expect(Math.abs(read - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
      }),
    );
  });
});
