import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { playerFacts } from '../../src/report/playerFacts.ts';
import type { Report } from '../../src/report/report.ts';
import { reportJson } from '../../src/report/reportJson.ts';
import { sample } from '../storage/sample.ts';

const nothing: Report = {
  rig: { pieces: [], mics: [] },
  clearances: [],
  findings: [],
  runs: [],
  loom: { stretches: [], breakouts: [], laid: 0, cable: 0 },
  stock: { missing: [], joins: 0, waste: 0, isBest: true },
  totals: { cable: 0, longest: 0, extra: 0, stock: [] },
  player: playerFacts(sample('none')),
  signOff: { kind: 'none' },
};

/** Every number in a document, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

describe('reportJson', () => {
  it.each(STARTING_KITS)(
    '$name: comes back from text as it was, one entry per mic and run',
    (kit) => {
      const layout = kit.make('kit');
      const report = createAnalyst()(layout);
      const json = reportJson(layout, report);
      expect(JSON.parse(JSON.stringify(json))).toEqual(json);
      expect(json.clearances.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
      expect(json.runs).toHaveLength(report.runs.length);
      expect(json.findings.map(({ key }) => key)).toEqual(report.findings.map(({ key }) => key));
      json.clearances.forEach(({ clearance }, index) => {
        const exact = report.clearances[index]?.clearance ?? Number.NaN;
        if (clearance === null) expect(exact).toBe(Number.POSITIVE_INFINITY);
        else expect(Math.abs(clearance - exact)).toBeLessThanOrEqual(0.0005);
      });
    },
  );

  it('says what it is and the worst verdict', () => {
    const row = { mic: 'a', clearance: 60, nearest: undefined };
    const json = (...verdicts: ('clear' | 'tight' | 'struck')[]) =>
      reportJson(sample('one'), {
        ...nothing,
        clearances: verdicts.map((verdict) => ({ ...row, verdict })),
      });
    expect(json()).toMatchObject({ format: 'strokespace-report', version: 2, verdict: 'clear' });
    expect(json('clear', 'tight', 'clear').verdict).toBe('tight');
    expect(json('tight', 'struck', 'clear').verdict).toBe('struck');
  });

  it('nothing that moves is null, not a number that JSON can’t hold', () => {
    const json = reportJson(sample('one'), {
      ...nothing,
      clearances: [
        { mic: 'a', verdict: 'clear', clearance: Number.POSITIVE_INFINITY, nearest: undefined },
      ],
    });
    expect(json.clearances).toEqual([
      {
        mic: 'a',
        name: 'a',
        verdict: 'clear',
        judgement: 'clear',
        clearance: null,
        nearest: null,
      },
    ]);
  });

  it('holds only finite numbers, to 0.001, and no -0', () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), (first, second) => {
        const json = reportJson(sample('one'), {
          ...nothing,
          findings: [
            {
              key: 'k',
              code: 'mic-tight',
              severity: 'warn',
              about: ['a'],
              place: undefined,
              numbers: { first, second },
            },
          ],
        });
        for (const number of numbersIn(json)) {
          expect(Number.isFinite(number)).toBe(true);
          expect(Object.is(number, -0)).toBe(false);
        }
      }),
    );
  });
});
