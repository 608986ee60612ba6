import { describe, expect, it } from 'vitest';
import { polarityFor } from '../../src/acoustics/polarity.ts';

const sure = true;

describe('H30 which polarity to try first', () => {
  it('the one in which the fundamentals add', () => {
    const phases = [0, 60, -60, 61, -90, 91, 119, 120, -150, 180];
    const told = phases.map((phase) => polarityFor({ phase, start: 'equal', sure }));
    expect(told.map(({ tryFirst }) => tryFirst === 'inverted')).toEqual(
      phases.map((phase) => Math.cos((phase * Math.PI) / 180) < -1e-9),
    );
    expect(told.map(({ reason }) => reason)).toEqual([
      ...['inPhase', 'inPhase', 'inPhase', 'between', 'between', 'between', 'between'],
      ...['outOfPhase', 'outOfPhase', 'outOfPhase'],
    ]);
  });

  it('without a fundamental, by the sides alone', () => {
    expect(polarityFor({ phase: null, start: 'equal', sure })).toEqual({
      tryFirst: 'normal',
      reason: 'sameSide',
    });
    expect(polarityFor({ phase: null, start: 'opposite', sure })).toEqual({
      tryFirst: 'inverted',
      reason: 'oppositeSides',
    });
  });

  it('as plugged where the side is not certain', () => {
    expect(polarityFor({ phase: 180, start: 'opposite', sure: false })).toEqual({
      tryFirst: 'normal',
      reason: 'unsureSide',
    });
  });
});
