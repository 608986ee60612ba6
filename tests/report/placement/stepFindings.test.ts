import { describe, expect, test } from 'vitest';
import { setDeck } from '../../../src/layout/edit/stage.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { stepFindings } from '../../../src/report/placement/stepFindings.ts';
import { setUpSteps } from '../../../src/report/placement/steps.ts';
import type { Finding } from '../../../src/report/report.ts';
import { startingKit } from '../../sheet/samples.ts';

const layout = startingKit('five-piece-one-rack');
const report = createAnalyst()(layout);
const steps = setUpSteps(layout, report.runs);
const finding = (
  code: Finding['code'],
  about: readonly string[],
  severity: Finding['severity'] = 'stop',
): Finding => ({ key: `${code}:${about}`, code, severity, about, place: undefined, numbers: {} });
/** The keys of the steps that tell a finding. */
const toldBy = (one: Finding): readonly string[] =>
  steps
    .filter((step) => stepFindings(step, { ...report, findings: [one] }).length > 0)
    .map(({ key }) => key);
const onStand = layout.mics.find(({ mount }) => mount.kind === 'stand')?.id ?? '';

describe('what a step says is open (P3)', () => {
  test('each is told where its subject is set down, laid or stood', () => {
    expect(toldBy(finding('piece-off-deck', ['throne']))).toEqual(['piece:throne']);
    expect(toldBy(finding('base-off-deck', [onStand]))).toEqual([`mic:${onStand}`]);
    expect(toldBy(finding('lane-crossed', [onStand], 'warn'))).toEqual([`run:${onStand}`]);
    expect(toldBy(finding('box-in-obstacle', ['crash-1']))).toEqual(['box']);
    expect(toldBy(finding('lane-blocked', [], 'warn'))).toEqual(['box']);
    expect(toldBy(finding('lane-blocked', ['crash-1'], 'warn'))).toEqual(['piece:crash-1']);
    expect(toldBy(finding('stairs-off-edge', [], 'warn'))).toEqual(['deck']);
  });

  test('two pieces in each other are told with both, a mic in a drum with the mic', () => {
    expect(toldBy(finding('piece-in-piece', ['crash-1', 'crash-2']))).toEqual([
      'piece:crash-1',
      'piece:crash-2',
    ]);
    expect(toldBy(finding('mic-in-shell', [onStand, 'snare']))).toEqual([`mic:${onStand}`]);
  });

  test('notes, and what is about the sign-off, are told nowhere', () => {
    expect(toldBy(finding('clip-metal-rim', [onStand, 'snare'], 'note'))).toEqual([]);
    expect(toldBy(finding('sign-off-stale', [onStand], 'warn'))).toEqual([]);
  });

  test('every finding that must be solved on a deck that is too small is told at some step', () => {
    const small = setDeck(layout, { width: 1800, depth: 1500 });
    const found = createAnalyst()(small);
    const told = new Set(steps.flatMap((step) => stepFindings(step, found)));
    const stops = found.findings.filter(({ severity }) => severity === 'stop');
    expect(stops.length).toBeGreaterThan(3);
    for (const stop of stops) expect(told).toContain(stop);
  });
});
