import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sortedFindings } from '../../../src/report/findings/sortedFindings.ts';
import type { Finding } from '../../../src/report/report.ts';

const finding = (
  key: string,
  code: Finding['code'],
  severity: Finding['severity'],
  numbers: Finding['numbers'],
): Finding => ({ key, code, severity, about: [], place: undefined, numbers });

const given: readonly Finding[] = [
  finding('tips little', 'stand-may-tip', 'warn', { factor: 1.4 }),
  finding('tips soon', 'stand-may-tip', 'warn', { factor: 1.1 }),
  finding('near', 'mic-tight', 'warn', { clearance: 0.58 }),
  finding('less near', 'mic-tight', 'warn', { clearance: 31 }),
  finding('short by little', 'mic-beyond-stand', 'stop', { beyond: 91, serving: 0 }),
  finding('feet', 'feet-overlap', 'warn', { overlap: 16 }),
  finding('short by much', 'mic-beyond-stand', 'stop', { beyond: 857, serving: 2 }),
  finding('hit', 'mic-struck', 'stop', { clearance: -3 }),
  finding('hit hard', 'mic-struck', 'stop', { clearance: -40 }),
];

describe('F1: the worst finding comes first', () => {
  test('a tight mic before other warnings, each kind by its size', () => {
    expect(sortedFindings(given).map(({ key }) => key)).toEqual([
      'hit hard',
      'hit',
      'short by much',
      'short by little',
      'near',
      'less near',
      'tips soon',
      'tips little',
      'feet',
    ]);
  });

  test('within a kind the order that they come in changes nothing', () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 900 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(sizes, (overlaps) => {
        const some = overlaps.map((overlap) =>
          finding(String(overlap), 'feet-overlap', 'warn', { overlap }),
        );
        expect(sortedFindings(some)).toEqual(sortedFindings(some.toReversed()));
      }),
    );
  });
});
