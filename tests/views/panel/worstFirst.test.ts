import { describe, expect, it } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { isOfPlace, shownVerdict } from '../../../src/report/judgement.ts';
import { playerFacts } from '../../../src/report/playerFacts.ts';
import type { Finding, Report } from '../../../src/report/report.ts';
import {
  countByNeed,
  inOrder,
  listed,
  MOST_LISTED,
  shownLine,
  targetsOf,
  worstFirst,
} from '../../../src/views/panel/worstFirst.ts';
import { findingOf, rowOf } from '../../report/madeFindings.ts';
import { seededKits } from '../../support/randomKit.ts';
import { sample } from '../words/sampleLayout.ts';

const report: Report = {
  rig: { pieces: [], mics: [] },
  clearances: [
    rowOf('a', 90, 'clear'),
    rowOf('b', -3, 'struck'),
    rowOf('c', 20, 'tight'),
    rowOf('d', -40, 'struck'),
    rowOf('e', Number.POSITIVE_INFINITY, 'clear'),
  ],
  findings: [
    findingOf('mic-struck', 'stop', ['b']),
    findingOf('mic-struck', 'stop', ['d']),
    findingOf('run-no-way', 'stop', ['a']),
    findingOf('mic-tight', 'warn', ['c']),
    findingOf('stand-may-tip', 'warn', ['a']),
    findingOf('clip-metal-rim', 'note', ['c']),
  ],
  runs: [],
  loom: { stretches: [], breakouts: [], laid: 0, cable: 0 },
  stock: { missing: [], joins: 0, waste: 0, isBest: true },
  totals: { cable: 0, longest: 0, extra: 0, stock: [] },
  player: playerFacts(sample),
  signOff: { kind: 'none' },
};

describe('a list of thousands', () => {
  const many = Array.from({ length: 3000 }, (_, i) =>
    findingOf('feet-overlap', 'warn', ['a', `p${i}`]),
  );
  const rows = worstFirst({ ...report, findings: [...report.findings, ...many] });

  it('shows the worst findings and every mic, and says how many more there are', () => {
    const { shown, more } = listed(rows, null);
    const findings = shown.filter(({ kind }) => kind === 'finding');
    expect(findings).toHaveLength(MOST_LISTED);
    expect(shown.filter(({ kind }) => kind === 'mic')).toHaveLength(report.clearances.length);
    expect(more).toBe(rows.length - shown.length);
    expect(findings).toEqual(rows.filter(({ kind }) => kind === 'finding').slice(0, MOST_LISTED));
  });

  it('keeps the line that is shown on the plan, however far down it stands', () => {
    const key = many.at(-1)?.key ?? '';
    const { shown, more } = listed(rows, key);
    expect(shown.map((row) => row.key)).toContain(key);
    expect(more).toBe(rows.length - shown.length);
  });

  it('leaves a usual list as it is', () => {
    const usual = worstFirst(report);
    expect(listed(usual, null)).toEqual({ shown: usual, more: 0 });
  });
});

describe('the findings list', () => {
  it('puts the worst first and every mic in once', () => {
    const rows = worstFirst(report);
    expect(rows.map(({ key }) => key)).toEqual([
      'mic-struck:d',
      'mic-struck:b',
      'run-no-way:a',
      'mic-tight:c',
      'stand-may-tip:a',
      'clip-metal-rim:c',
      'mic:a',
      'mic:e',
    ]);
    expect(rows.filter((line) => line.kind === 'mic')).toHaveLength(report.clearances.length);
  });

  it('counts once each what must be solved: struck mics and whatever else stops the show', () => {
    expect(countByNeed(report)).toEqual({ solve: 3, look: 2 });
    const short = Array.from({ length: 5 }, (_, i) =>
      findingOf('stock-missing', 'stop', [`m${i}`]),
    );
    const unstruck = { ...report, clearances: [rowOf('a', 90, 'clear')] };
    expect(countByNeed({ ...unstruck, findings: short })).toEqual({ solve: 5, look: 0 });
    const tight = {
      ...report,
      clearances: [rowOf('a', 20, 'tight')],
      findings: [findingOf('mic-tight', 'warn', ['a'])],
    };
    expect(countByNeed(tight)).toEqual({ solve: 0, look: 1 });
    const lines = worstFirst(report);
    const { solve: stops, look } = countByNeed(report);
    expect(lines.slice(stops, stops + look).map(({ key }) => key)).toEqual([
      'mic-tight:c',
      'stand-may-tip:a',
    ]);
    expect(lines.slice(0, stops).map(({ key }) => key)).toEqual([
      'mic-struck:d',
      'mic-struck:b',
      'run-no-way:a',
    ]);
  });

  it('leads to what it is about, as far as that is still there', () => {
    const targets = (code: Finding['code'], about: readonly string[]) =>
      targetsOf({ kind: 'finding', key: '', finding: findingOf(code, 'warn', about) }, sample);
    expect(targets('feet-overlap', ['mic-snare', 'gone', 'rack-1'])).toEqual([
      { kind: 'mic', id: 'mic-snare' },
      { kind: 'piece', id: 'rack-1' },
    ]);
    expect(targets('feet-overlap', ['gone'])).toEqual([]);
    expect(targets('box-in-obstacle', ['rack-1'])).toEqual([{ kind: 'box' }]);
    expect(targets('more-mics-than-inputs', [])).toEqual([{ kind: 'box' }]);
  });
});

const isMeeting = ({ code }: Finding): boolean => code === 'mic-against-mic';

/** By the findings alone: every mic with a stop of its own about its place, every two that meet, and every other stop. */
function problemsOf({ clearances, findings }: Report): number {
  const stops = findings.filter(({ severity }) => severity === 'stop');
  const apart = stops.filter((finding) => !isMeeting(finding));
  const mics = new Set(apart.filter(isOfPlace).map(({ about }) => about[0]));
  expect(mics.size).toBeGreaterThanOrEqual(
    clearances.filter((row) => row.verdict === 'struck').length,
  );
  return mics.size + stops.filter(isMeeting).length + apart.filter((one) => !isOfPlace(one)).length;
}

describe('a mic that cannot stay', () => {
  const within = findingOf('mic-in-shell', 'stop', ['a', 'snare']);
  const inDrum: Report = { ...report, findings: [within, ...report.findings] };

  it('is one line among the worst, by what is shown of it, with its cause', () => {
    const keys = worstFirst(inDrum).map(({ key }) => key);
    expect(keys.slice(0, 3)).toEqual(['mic-struck:d', 'mic-struck:b', within.key]);
    expect(keys).not.toContain('mic:a');
    expect(countByNeed(inDrum)).toEqual({ solve: 4, look: 2 });
  });

  it('leads to itself first, then to what it stands in', () => {
    const line = worstFirst({
      ...report,
      clearances: [rowOf('mic-snare', 90, 'clear')],
      findings: [findingOf('mic-in-shell', 'stop', ['mic-snare', 'rack-1'])],
    })[0];
    expect(line && targetsOf(line, sample)).toEqual([
      { kind: 'mic', id: 'mic-snare' },
      { kind: 'piece', id: 'rack-1' },
    ]);
  });

  it('of random kits every finding is told by one line, every mic has one, and no line is worse than the one before it', () => {
    const analyse = createAnalyst();
    let [merged, met] = [0, 0];
    for (const layout of seededKits(40, 5)) {
      const found = analyse(layout);
      const lines = worstFirst(found);
      const told = lines.flatMap((line) => (line.kind === 'mic' ? line.findings : [line.finding]));
      expect(told).toHaveLength(found.findings.length);
      expect(new Set(told)).toEqual(new Set(found.findings));
      const mics = lines.flatMap((line) => (line.kind === 'mic' ? [line.row.mic] : []));
      expect(mics.toSorted()).toEqual(layout.mics.map(({ id }) => id).toSorted());
      const needs = lines.map((line) => {
        const mark =
          line.kind === 'mic'
            ? shownVerdict(line.row, found)
            : { stop: 'struck', warn: 'tight', note: 'note' }[line.finding.severity];
        return ['struck', 'tight', 'note', 'clear'].indexOf(mark);
      });
      expect(needs).toEqual(needs.toSorted((a, b) => a - b));
      const count = (need: number) => needs.filter((each) => each === need).length;
      const { solve, look } = countByNeed(found);
      expect(look).toBe(count(1));
      expect(solve).toBe(problemsOf(found));
      // Only mics that meet are more or fewer lines than things to solve.
      if (!found.findings.some(isMeeting)) expect(solve).toBe(count(0));
      else met += 1;
      merged += lines.filter((line) => line.kind === 'mic' && line.findings.length > 1).length;
    }
    expect(merged).toBeGreaterThan(20);
    expect(met).toBeGreaterThan(3);
  });
});

describe('two mics that meet', () => {
  const meeting = findingOf('mic-against-mic', 'stop', ['a', 'e'], { depth: 9 });
  const met = { ...report, findings: [meeting, ...report.findings] };

  it('are two lines that are marked, and one thing to solve', () => {
    const marked = worstFirst(met).slice(0, 4);
    expect(marked.flatMap((line) => (line.kind === 'mic' ? [line.row.mic] : []))).toEqual(
      expect.arrayContaining(['a', 'e']),
    );
    expect(countByNeed(report).solve).toBe(3);
    expect(countByNeed(met)).toEqual({ solve: 4, look: 2 });
  });

  it('are one more thing than what else is wrong with either, which one is told first or not', () => {
    for (const first of ['a', 'e'] as const) {
      const within = findingOf('mic-in-shell', 'stop', [first, 'snare'], { depth: 5 });
      expect(countByNeed({ ...met, findings: [within, ...met.findings] }).solve).toBe(5);
      // Struck ones count already.
      const other = findingOf('mic-against-mic', 'stop', [first, 'b'], { depth: 9 });
      const back = { ...other, about: other.about.toReversed() };
      for (const one of [other, back]) {
        expect(countByNeed({ ...report, findings: [one, ...report.findings] }).solve).toBe(4);
      }
    }
  });

  it('of random kits no count rises when something is solved', () => {
    const analyse = createAnalyst();
    for (const layout of seededKits(15, 12)) {
      const found = analyse(layout);
      const { solve } = countByNeed(found);
      for (const solved of found.findings.filter(({ severity }) => severity === 'stop')) {
        const rest = { ...found, findings: found.findings.filter((one) => one !== solved) };
        expect(countByNeed(rest).solve).toBeLessThanOrEqual(solve);
      }
    }
  });
});

describe('while something is only shown', () => {
  it('every line keeps its place, whatever the change makes of it; new ones come last', () => {
    const after: Report = {
      ...report,
      clearances: report.clearances.map((each) =>
        each.mic === 'd' ? rowOf('d', 70, 'clear') : each,
      ),
      findings: [
        findingOf('feet-overlap', 'warn', ['b']),
        ...report.findings.filter(({ about }) => about[0] !== 'd'),
      ],
    };
    expect(inOrder(worstFirst(after), report).map(({ key }) => key)).toEqual([
      'mic:d',
      'mic-struck:b',
      'run-no-way:a',
      'mic-tight:c',
      'stand-may-tip:a',
      'clip-metal-rim:c',
      'mic:a',
      'mic:e',
      'feet-overlap:b',
    ]);
    expect(inOrder(worstFirst(after), null)).toEqual(worstFirst(after));
  });

  it("a mic's line stays the one that is open while its key changes", () => {
    const within = findingOf('mic-in-shell', 'stop', ['a', 'snare']);
    const before = { ...report, findings: [...report.findings, within] };
    const open = (from: Report, key: string) => shownLine(worstFirst(from), key);
    expect(open(before, 'mic-in-shell:a:snare')).toMatchObject({ kind: 'mic', row: { mic: 'a' } });
    expect(open(report, 'mic-in-shell:a:snare')).toMatchObject({ kind: 'mic', row: { mic: 'a' } });
    expect(open(before, 'mic:a')).toMatchObject({ kind: 'mic', row: { mic: 'a' } });
    expect(open(report, 'mic-tight:b')).toMatchObject({ kind: 'mic', row: { mic: 'b' } });
    expect(open(report, 'feet-overlap:a')).toBeUndefined();
    expect(open(report, 'mic-tight:ab')).toBeUndefined();
    expect(open(before, 'stand-may-tip:a')).toMatchObject({ kind: 'finding' });
  });

  it('an open line that an offer would put right stays where it was', () => {
    const within = findingOf('feet-overlap', 'warn', ['a']);
    const before = { ...report, findings: [...report.findings, within] };
    const keys = inOrder(worstFirst(report), before, within.key).map(({ key }) => key);
    expect(keys).toContain(within.key);
    expect(keys.indexOf(within.key)).toBe(
      worstFirst(before).findIndex(({ key }) => key === within.key),
    );
    expect(inOrder(worstFirst(report), before, null).map(({ key }) => key)).not.toContain(
      within.key,
    );
  });
});
