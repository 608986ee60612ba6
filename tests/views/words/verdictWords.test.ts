import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClearanceRow } from '../../../src/report/report.ts';
import { showClearance } from '../../../src/units/clearanceText.ts';
import { toInches } from '../../../src/units/inch.ts';
import { roundedDown } from '../../../src/units/lengthText.ts';
import {
  clearanceAmount,
  inTheWayWords,
  tallyWords,
  verdictWord,
} from '../../../src/views/words/verdictWords.ts';
import { beyondStand, inDrum, nearPlayer, snareRow } from './sampleLayout.ts';

describe('a clearance in words', () => {
  it('says each verdict with its own amount', () => {
    expect(
      clearanceAmount({ clearance: -12, verdict: 'struck' }, { margin: 50, units: 'mm' }),
    ).toBe('12 mm too close');
    expect(
      clearanceAmount({ clearance: 38.6, verdict: 'tight' }, { margin: 50, units: 'mm' }),
    ).toBe('38 mm away, 12 mm inside the margin');
    expect(
      clearanceAmount({ clearance: 84.9, verdict: 'clear' }, { margin: 50, units: 'mm' }),
    ).toBe('84 mm clear');
    expect(
      clearanceAmount(
        { clearance: Number.POSITIVE_INFINITY, verdict: 'clear' },
        { margin: 50, units: 'mm' },
      ),
    ).toBe('nothing moves near it');
  });

  it('never calls a struck mic 0 mm too close', () => {
    expect(
      clearanceAmount({ clearance: -0.2, verdict: 'struck' }, { margin: 50, units: 'mm' }),
    ).toBe('1 mm too close');
    expect(
      clearanceAmount({ clearance: -0.2, verdict: 'struck' }, { margin: 50, units: 'in' }),
    ).toBe('0.1 in too close');
  });

  it('calls hardly any room under 1 mm, not 0 mm', () => {
    expect(clearanceAmount({ clearance: 0.4, verdict: 'tight' }, { margin: 50, units: 'mm' })).toBe(
      'under 1 mm away, 50 mm inside the margin',
    );
    expect(clearanceAmount({ clearance: 0.4, verdict: 'clear' }, { margin: 0, units: 'mm' })).toBe(
      'under 1 mm clear',
    );
    expect(showClearance(0.4, { margin: 50, units: 'mm' })).toBe('under 1 mm');
    expect(showClearance(0.4, { margin: 50, units: 'in' })).toBe('under 0.1 in');
  });

  it('shows the number with a true minus, and a dash where nothing moves', () => {
    expect(showClearance(-12, { margin: 50, units: 'mm' })).toBe('−12 mm');
    expect(showClearance(-0.01, { margin: 50, units: 'mm' })).toBe('−1 mm');
    expect(showClearance(31.9, { margin: 50, units: 'in' })).toBe('1.2 in');
    expect(showClearance(Number.POSITIVE_INFINITY, { margin: 50, units: 'mm' })).toBe('–');
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

it('counts what is in the way, each verdict only where a mic has it', () => {
  const report = (...verdicts: readonly ClearanceRow['verdict'][]) => ({
    clearances: verdicts.map((verdict, k) => ({ ...snareRow(10, verdict), mic: `m${k}`, verdict })),
    findings: [],
  });
  expect(inTheWayWords(report('struck', 'tight', 'clear', 'tight'))).toBe('1 struck, 2 tight');
  expect(inTheWayWords(report('tight', 'tight'))).toBe('2 tight');
  // One with room from what moves that stands in a drum is in the way too; so is a struck one, once.
  const within = { ...report('struck', 'clear', 'clear'), findings: [inDrum('m0'), inDrum('m2')] };
  expect(inTheWayWords(within)).toBe('2 in the way');
  // One that has room from what moves and is near the player is led away from there; a tight one is tight.
  const near = {
    ...report('tight', 'clear', 'clear'),
    findings: [nearPlayer('m0', 20), nearPlayer('m1', 20)],
  };
  expect(inTheWayWords(near)).toBe('1 tight, 1 near the player');
  // One that its stand can't hold is called so here as in the tally: led away where it is tight too, left where it has room.
  const beyond = {
    ...report('tight', 'clear', 'tight'),
    findings: [beyondStand('m0'), beyondStand('m1')],
  };
  expect(inTheWayWords(beyond)).toBe("1 won't hold, 1 tight");
  expect(tallyWords(beyond)).toBe("0 struck, 2 won't hold, 1 tight, 0 clear");
});
