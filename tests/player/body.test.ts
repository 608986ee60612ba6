import { describe, expect, it } from 'vitest';
import { bodyOf } from '../../src/player/body.ts';
import table from '../fixtures/reference/ansur_by_stature.csv?raw';

/**
 * Source: least-squares lines of body lengths on stature over the 6,068 people of the public data of the 2012 survey (Gordon et al.,
 * NATICK/TR-15/007), tests/fixtures/reference/ansur_by_stature.csv. Its columns of means are rounded to 0.1 mm.
 */
const MEASURES = {
  acromialHeightSitting: 'acromialHeightSitting',
  biacromialBreadth: 'biacromialBreadth',
  acromionRadiale: 'acromionRadialeLength',
  radialeStylion: 'radialeStylionLength',
  stylionToGripCentre: 'stylionToGripCentre',
  buttockKneeLength: 'buttockKneeLength',
  kneeHeightSitting: 'kneeHeightSitting',
} as const;
const names = Object.keys(MEASURES) as (keyof typeof MEASURES)[];

const [head = '', ...lines] = table.trim().split('\n');
const columns = head.split(',');
const cell = (measure: string, column: string): number => {
  const line = lines.find((one) => one.startsWith(`${measure},`));
  return Number(line?.split(',')[columns.indexOf(column)]);
};
/** What rounding leaves open: half of 0.1 mm, and the slope's sixth decimal over the stature. */
const ROUNDING = 0.05 + 1900 * 0.5e-6 + 0.5e-3;

describe('rule B1: body lengths on stature', () => {
  it.each(names.flatMap((name) => [1600, 1750, 1900].map((stature) => [name, stature] as const)))(
    '%s of a player of %s mm is the published mean',
    (name, stature) => {
      const published = cell(MEASURES[name], `mean_at_${stature}`);
      expect(published).toBeGreaterThan(0);
      const length = bodyOf({ stature, body: {} })[name];
      expect(Math.abs(length - published)).toBeLessThanOrEqual(ROUNDING);
    },
  );

  it.each(names)('%s lies on the published line', (name) => {
    const at = (stature: number): number => bodyOf({ stature, body: {} })[name];
    expect(at(0)).toBeCloseTo(cell(MEASURES[name], 'intercept_mm'), 9);
    expect(at(1000) - at(0)).toBeCloseTo(1000 * cell(MEASURES[name], 'slope_per_mm_stature'), 9);
  });

  it('the model names these values at 1750 mm', () => {
    const body = bodyOf({ stature: 1750, body: {} });
    expect(body.acromialHeightSitting).toBeCloseTo(600.5, 1);
    expect(body.biacromialBreadth).toBeCloseTo(408.4, 1);
    expect(body.acromionRadiale).toBeCloseTo(334.4, 1);
    expect(body.radialeStylion).toBeCloseTo(265.7, 1);
    expect(body.stylionToGripCentre).toBeCloseTo(62.0, 1);
  });

  it('a measured length replaces its own line and no other', () => {
    const usual = bodyOf({ stature: 1750, body: {} });
    for (const name of names) {
      const measured = bodyOf({ stature: 1750, body: { [name]: 333 } });
      expect(measured).toEqual({ ...usual, [name]: 333 });
    }
  });

  it('straight arms are as long as measured on average: acromion to grip centre', () => {
    // Means of 4,082 men and 1,986 women (same data, reference section 8), at their mean statures.
    const straight = (stature: number): number => {
      const body = bodyOf({ stature, body: {} });
      return body.acromionRadiale + body.radialeStylion + body.stylionToGripCentre;
    };
    expect(Math.abs(straight(1756.2) - 665.2)).toBeLessThan(2);
    expect(Math.abs(straight(1628.5) - 611.5)).toBeLessThan(2);
  });
});
