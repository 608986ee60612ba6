import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import { standFactsOf } from '../../src/report/standFacts.ts';

const analyse = createAnalyst();

test('every mic on a stand of every starting kit has a factor of 1.5 at least and a class that reaches', () => {
  for (const { key, make } of STARTING_KITS) {
    const layout = make(key);
    const report = analyse(layout);
    for (const { id, mount } of layout.mics) {
      const facts = standFactsOf(report, id);
      expect(facts !== undefined, id).toBe(mount.kind === 'stand');
      if (!facts) continue;
      expect(facts.factor, id).toBeGreaterThanOrEqual(1.5);
      expect(facts.smallest, id).toBeDefined();
    }
  }
});

test('the finding that a stand may tip and the factor agree', () => {
  const layout = STARTING_KITS[0]?.make('kit');
  if (!layout) throw new Error('there is a starting kit');
  const report = analyse(layout);
  expect(report.findings.filter(({ code }) => code === 'stand-may-tip')).toEqual([]);
  expect(standFactsOf(report, 'nobody')).toBeUndefined();
});
