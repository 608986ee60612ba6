import { describe, expect, it } from 'vitest';
import { demo } from '../../src/layout/catalogue/kits/demo.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import {
  cantStay,
  isOfPlace,
  judgementCounts,
  judgementOf,
  nearnessOf,
  rowsWorstFirst,
  shownVerdict,
  staysNot,
} from '../../src/report/judgement.ts';
import { seededKits } from '../support/randomKit.ts';
import { cutting, farFromStand, inMasts, overHead } from './cantStaySamples.ts';
import { clipInDrum } from './clipInDrum.ts';
import { findingOf } from './madeFindings.ts';

const analyse = createAnalyst();
const kit = demo('kit');

const judged = (layout: Layout, id: string) => {
  const report = analyse(layout);
  const row = report.clearances.find(({ mic }) => mic === id);
  if (!row) throw new Error(`expected a row of ${id}`);
  return {
    verdict: row.verdict,
    judgement: judgementOf(row, report),
    why: cantStay(report).get(id),
  };
};

describe('what is said of a mic', () => {
  it('J1: one that stands in its drum is in the way, however much room it has', () => {
    const { layout, mic } = clipInDrum(kit);
    expect(judged(layout, mic.id)).toMatchObject({ verdict: 'clear', judgement: 'in-the-way' });
  });

  it('J1: one that stands in the mast of a cymbal is in the way, and must be solved', () => {
    const said = inMasts(kit)
      .filter(({ piece }) => ['crash-1', 'crash-2', 'ride'].includes(piece))
      .map(({ layout, id, piece }) => ({ piece, ...judged(layout, id) }));
    expect(said.map(({ piece }) => piece)).toEqual(['crash-1', 'crash-2', 'ride']);
    for (const { piece, why, ...rest } of said) {
      expect(rest).toEqual({ verdict: 'clear', judgement: 'in-the-way' });
      expect(why?.findings).toContainEqual(
        expect.objectContaining({
          code: 'mic-against-stand',
          severity: 'stop',
          about: [expect.any(String), piece],
        }),
      );
    }
  });

  it('J1: two mics that cut into each other are both in the way, by one finding', () => {
    const { layout, ids } = cutting(kit);
    const [first, second] = ids.map((id) => judged(layout, id));
    expect(first).toMatchObject({ verdict: 'clear', judgement: 'in-the-way' });
    expect(second).toMatchObject({ verdict: 'clear', judgement: 'in-the-way' });
    expect(first?.why?.findings[0]).toEqual(second?.why?.findings[0]);
    expect(first?.why?.findings[0]).toMatchObject({ code: 'mic-against-mic', severity: 'stop' });
  });

  it('J2: one that its stand cannot hold there is not clear, and is struck where it is struck', () => {
    const { layout, id } = farFromStand(kit);
    const { why, ...said } = judged(layout, id);
    expect(said).toEqual({ verdict: 'clear', judgement: 'not-held' });
    const codes = why?.findings.map(({ code }) => code);
    expect(codes).toContain('mic-beyond-stand');
    expect(codes).toContain('stand-may-tip');
    const report = analyse(layout);
    expect(judgementOf({ mic: id, verdict: 'struck' }, report)).toBe('struck');
    expect(judgementOf({ mic: id, verdict: 'tight' }, report)).toBe('not-held');
  });

  it('J2: a stand that only may tip holds its mic, one that tips does not', () => {
    const tips = (severity: 'stop' | 'warn') =>
      staysNot({ code: 'stand-may-tip', severity, about: ['a'] });
    expect(tips('warn')).toBeUndefined();
    expect(tips('stop')).toEqual({ why: 'not-held', mics: ['a'] });
  });

  it('of several things that a mic stands in the deepest says how bad it is', () => {
    const depths = [5, 30, 12];
    const findings = depths.map((depth, k) =>
      findingOf('mic-in-shell', 'stop', ['a', `p${k}`], { depth }),
    );
    expect(nearnessOf({ mic: 'a', clearance: 80 }, { findings })).toBe(-30);
    expect(nearnessOf({ mic: 'a', clearance: -40 }, { findings })).toBe(-40);
  });

  it('J4: one that is lowered over the head is clear, near the player, then in the way, and never clear again', () => {
    const said: string[] = [];
    for (let z = 1800; z >= 1250; z -= 10) {
      const { judgement, verdict } = judged(...overHead(kit, z));
      if (judgement !== said.at(-1)) said.push(judgement);
      expect(verdict).toBe('clear');
    }
    expect(said).toEqual(['clear', 'near-player', 'in-the-way']);
  });

  it('J4: near the player is marked as tight, and what strikes it is the worse', () => {
    const [layout, id] = overHead(kit, 1440);
    const report = analyse(layout);
    expect(judgementOf({ mic: id, verdict: 'clear' }, report)).toBe('near-player');
    expect(shownVerdict({ mic: id, verdict: 'clear' }, report)).toBe('tight');
    expect(judgementOf({ mic: id, verdict: 'struck' }, report)).toBe('struck');
    expect(judgementOf({ mic: id, verdict: 'tight' }, report)).toBe('tight');
  });

  it('J3: of every other mic its verdict', () => {
    const report = analyse(kit);
    expect(report.clearances.every((row) => judgementOf(row, report) === row.verdict)).toBe(true);
    expect(judgementCounts(report)).toMatchObject({ 'in-the-way': 0, 'not-held': 0 });
  });
});

it('of random kits no mic with an open stop about its place is marked as clear, and the worst come first', () => {
  let stuck = 0;
  const ranks = ['struck', 'tight', 'clear'];
  for (const layout of seededKits(40, 11)) {
    const report = analyse(layout);
    const mics = new Set(report.clearances.map(({ mic }) => mic));
    for (const { severity, about, ...finding } of report.findings) {
      if (severity !== 'stop' || !isOfPlace({ ...finding, severity, about })) continue;
      const [mic = ''] = about;
      expect(mics.has(mic)).toBe(true);
      stuck += 1;
      const row = report.clearances.find((one) => one.mic === mic);
      expect(row && shownVerdict(row, report)).toBe('struck');
    }
    const shown = rowsWorstFirst(report).map((row) => ranks.indexOf(shownVerdict(row, report)));
    expect(shown).toEqual(shown.toSorted((a, b) => a - b));
    const counts = judgementCounts(report);
    expect(Object.values(counts).reduce((sum, count) => sum + count, 0)).toBe(mics.size);
  }
  expect(stuck).toBeGreaterThan(100);
});
