import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { Finding, FindingCode } from '../../../src/report/report.ts';
import { findingWords } from '../../../src/views/words/findingWords.ts';
import { randomKit } from '../../support/randomKit.ts';

/** What is wrong with numbers in a list, not with anything that stands somewhere. */
const PLACELESS: ReadonlySet<FindingCode> = new Set(['input-twice', 'more-mics-than-inputs']);
const RANKS = { stop: 0, warn: 1, note: 2 };

function expectWhole(finding: Finding, layout: Layout): void {
  const { key, code, place, numbers, about } = finding;
  const known = new Set([...layout.pieces, ...layout.mics].map(({ id }) => id));
  expect(
    about.filter((id) => !known.has(id)),
    key,
  ).toEqual([]);
  if (!PLACELESS.has(code)) {
    expect(place, key).toBeDefined();
    expect(Object.values(place ?? {}).every(Number.isFinite), key).toBe(true);
  }
  expect(Object.values(numbers).every(Number.isFinite), key).toBe(true);
  const { title, detail, next } = findingWords(finding, layout);
  for (const words of [title, detail, next]) expect(words, key).toMatch(/\S.*[^.\s]/);
}

test('every finding of a random kit has its code, place, numbers and next step, and none is told twice', () => {
  const analyse = createAnalyst();
  fc.assert(
    fc.property(randomKit, (layout) => {
      const findings = analyse(layout).findings;
      for (const finding of findings) expectWhole(finding, layout);
      const told = findings.map(({ code, about, numbers }) =>
        [code, ...about.toSorted(), code === 'input-twice' ? numbers.input : ''].join(' '),
      );
      expect(new Set(told).size).toBe(told.length);
      const ranks = findings.map(({ severity }) => RANKS[severity]);
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    }),
    { numRuns: 60 },
  );
});
