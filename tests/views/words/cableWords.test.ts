import { describe, expect, it } from 'vitest';
import type { Finding, FindingCode } from '../../../src/report/report.ts';
import { findingWords } from '../../../src/views/words/findingWords.ts';
import { sample } from './sampleLayout.ts';

const words = (
  code: FindingCode,
  { numbers = {}, about = [] }: Partial<Pick<Finding, 'numbers' | 'about'>>,
  layout = sample,
) => findingWords({ key: code, code, severity: 'warn', about, place: undefined, numbers }, layout);

describe('findings about cables in words', () => {
  it('say how many more of which length are needed, in the units of the layout', () => {
    const missing = { count: 2, length: 5000, listed: 12 };
    const text = words('stock-missing', { numbers: missing, about: ['mic-snare', 'mic-rack-1'] });
    expect(text.title).toBe('5 m cables: 2 more needed');
    expect(text.detail).toContain('Snare mic and Rack 1');
    expect(words('stock-missing', { numbers: { ...missing, count: 1 } }).title).toBe(
      '5 m cables: 1 more needed',
    );
    const inFeet = { ...sample, units: 'in' } as const;
    expect(words('stock-missing', { numbers: { ...missing, length: 7620 } }, inFeet).title).toBe(
      '25 ft cables: 2 more needed',
    );
  });

  it('say that nothing is listed rather than that it is taken', () => {
    const none = words('stock-missing', { numbers: { count: 4, length: 5000, listed: 0 } });
    expect(none.detail).toContain('No cables are listed');
    expect(none.next).toContain('List the cables you carry');
  });

  it('say which two cables are joined', () => {
    const numbers = { needed: 11_200, longer: 10_000, shorter: 1500 };
    const { title, detail } = words('run-joined', { numbers, about: ['mic-snare'] });
    expect(title).toBe('The cable of Snare mic is joined from two');
    expect(detail).toContain('11.2 m: 10 m and 1.5 m');
  });

  it('say why no single cable serves: none is long enough, or longer runs have those that are', () => {
    const numbers = { needed: 11_200, longer: 10_000, shorter: 1500 };
    const why = (...stock: readonly (readonly [number, number])[]): string => {
      const cables = stock.map(([length, count]) => ({ length, count }));
      const layout = { ...sample, cabling: { ...sample.cabling, stock: cables } };
      return words('run-joined', { numbers, about: ['mic-snare'] }, layout).detail;
    };
    expect(why([10_000, 4])).toContain('since no cable that is carried is long enough.');
    expect(why([10_000, 4], [15_000, 0])).toContain('no cable that is carried is long enough');
    expect(why([15_000, 1])).toContain('since the only 15 m cable is taken by a longer run.');
    expect(why([15_000, 2])).toContain('since both 15 m cables are taken by longer runs.');
    expect(why([15_000, 3])).toContain('all 3 15 m cables are taken by longer runs');
    expect(why([15_000, 2], [20_000, 1])).toContain(
      'all that are long enough (2 × 15 m, 1 × 20 m) are taken by longer runs',
    );
  });

  it('say of a signal only what is lost', () => {
    const numbers = { length: 104_000, levelLoss: 0.1, lossAt20k: 0.64 };
    const { detail } = words('run-signal', { numbers, about: ['mic-snare'] });
    expect(detail).toContain('104.0 m long: 0.6 dB less at 20 kHz,');
    expect(detail).not.toContain('level');
  });

  it('tell to cover what crosses the way to the stairs, one cable or a bundle', () => {
    const one = words('lane-crossed', { about: ['mic-snare'] });
    expect(one.title).toBe('The cable of Snare mic crosses the way to the stairs');
    const two = words('lane-crossed', { about: ['mic-snare', 'mic-rack-1'] });
    expect(two.title).toBe('2 cables cross the way to the stairs');
    for (const { next } of [one, two, words('stairs-crossed', { about: ['mic-snare'] })]) {
      expect(next).toContain('Cover it');
    }
  });
});
