import { describe, expect, it } from 'vitest';
import type { RunRow } from '../../../src/report/report.ts';
import {
  cableSumWords,
  loomWords,
  missingWords,
  runPartWords,
  runWords,
  servedWords,
  signalWords,
  stockWords,
} from '../../../src/views/words/runWords.ts';
import { sample } from './sampleLayout.ts';

const run: RunRow = {
  mic: 'mic-snare',
  input: 4,
  route: [],
  parts: [],
  total: 3420,
  shortest: 3200,
  extra: 220,
  carried: [5000],
  missing: [],
  electrical: { loop: 3, levelLoss: 0.01, corner: 300_000, lossAt20k: 0.02, matters: [] },
  through: [],
};

describe('a run in words', () => {
  it('names input, mic, length and cable', () => {
    expect(runWords(run, sample)).toBe('Input 4: Snare mic, 3.4 m, 5 m cable, 1.5 m spare');
    expect(runWords({ ...run, input: null, carried: [], missing: [5000] }, sample)).toBe(
      'Not plugged: Snare mic, 3.4 m, missing: bring 5 m',
    );
    expect(runWords(run, { ...sample, units: 'in' })).toContain('11.2 ft');
  });

  it('says which cables are joined, carried or to be brought', () => {
    expect(stockWords({ ...run, carried: [7500, 1500] }, sample)).toBe('7.5 m + 1.5 m, joined');
    const far = { ...run, carried: [], missing: [20_000, 5000] };
    expect(stockWords(far, sample)).toBe('missing: bring 20 m + 5 m, joined');
  });

  it('says what a carried cable has to spare, never more than there is', () => {
    expect(servedWords({ ...run, total: 4601 }, sample)).toBe('5 m cable, 0.3 m spare');
    expect(servedWords({ ...run, total: 4600 }, sample)).toBe('5 m cable, 0.4 m spare');
    expect(servedWords({ ...run, total: 5000 }, sample)).toBe('5 m cable, 0.0 m spare');
    expect(servedWords({ ...run, carried: [7500, 1500], total: 7800 }, sample)).toBe(
      '7.5 m + 1.5 m, joined, 1.2 m spare',
    );
    expect(servedWords({ ...run, carried: [7620], total: 7000 }, { ...sample, units: 'in' })).toBe(
      '25 ft cable, 2.0 ft spare',
    );
    const far = { ...run, carried: [], missing: [5000] };
    expect(servedWords(far, sample)).toBe('missing: bring 5 m');
  });

  it('says what the loom adds, unless it is next to nothing', () => {
    expect(loomWords(run, sample)).toBe('0.2 m of it by the loom');
    expect(loomWords({ ...run, extra: 49 }, sample)).toBeUndefined();
  });

  it('sums up what is missing', () => {
    const missing = [
      { length: 5000, count: 2 },
      { length: 7620, count: 1 },
    ];
    expect(missingWords(missing, sample)).toBe('2 more of 5 m, 1 more of 7.62 m');
    expect(missingWords(missing.slice(1), { units: 'in' })).toBe('1 more of 25 ft');
  });

  it('sums up a schedule', () => {
    const totals = {
      cable: 38_420,
      longest: 7000,
      extra: 900,
      stock: [{ length: 5000, count: 6 }],
    };
    const stock = { missing: [{ length: 10_000, count: 1 }], joins: 0, waste: 0, isBest: true };
    expect(cableSumWords({ totals, stock }, sample)).toBe(
      '38.4 m of cable in all. Stock cables taken: 6 × 5 m. Missing: 1 more of 10 m.',
    );
    const none = { totals: { ...totals, stock: [] }, stock: { ...stock, missing: [] } };
    expect(cableSumWords(none, sample)).toContain('taken: none. Missing: none.');
  });

  it('tells what a cable does to the signal only where it matters', () => {
    expect(signalWords(run, sample)).toBeUndefined();
    const electrical = {
      loop: 20,
      levelLoss: 0.1,
      corner: 50_000,
      lossAt20k: 0.64,
      matters: ['corner'],
    } as const;
    const told = signalWords({ ...run, electrical }, sample);
    expect(told).toContain('3 dB down at 50 kHz, 0.6 dB less at 20 kHz');
    expect(told).not.toContain('loop');
  });

  it('names the parts', () => {
    expect(runPartWords('loopAtBox')).toBe('Service loop at the box');
  });
});
