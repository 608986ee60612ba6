import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { changeMount } from '../../../src/layout/edit/mics.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { StandMount } from '../../../src/layout/mics/mount.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { shownVerdict } from '../../../src/report/judgement.ts';
import type { FindingCode } from '../../../src/report/report.ts';
import { sceneFindings } from '../../../src/report/sceneFindings.ts';

const kits = STARTING_KITS.map((kit) => kit.make(kit.key));
const [, kit] = kits;
if (!kit) throw new Error('the five-piece was expected');
const NEW: readonly FindingCode[] = [
  'mic-in-player',
  'mic-near-player',
  'mic-in-pedal',
  'piece-not-played',
];
const reportOn = (layout: Layout) => createAnalyst()(layout);
const newIn = (layout: Layout) =>
  reportOn(layout).findings.filter(({ code }) => NEW.includes(code));

function moved(name: string, change: Partial<StandMount>): { layout: Layout; id: string } {
  const mic = kit?.mics.find((one) => one.name === name);
  if (!kit || mic?.mount.kind !== 'stand') throw new Error(`${name} on a stand was expected`);
  const mount = { ...mic.mount, ...change };
  return { layout: changeMount(kit, mic.id, () => mount), id: mic.id };
}

describe('mics in the player at rest, as findings', () => {
  it('an overhead in the head must be solved and is never shown clear, though nothing that moves is near', () => {
    const { layout, id } = moved('Overhead, hi-hat side', {
      tip: { x: 0, y: 0, z: 1250 },
      base: { x: -500, y: -400 },
    });
    const report = reportOn(layout);
    const row = report.clearances.find(({ mic }) => mic === id);
    if (!row) throw new Error('a clearance was expected');
    expect(row.verdict).toBe('clear');
    expect(shownVerdict(row, report)).toBe('struck');
    const [found, ...others] = newIn(layout);
    expect(others).toEqual([]);
    expect(found).toMatchObject({ code: 'mic-in-player', severity: 'stop', about: [id] });
    expect(found?.numbers['head']).toBe(found?.numbers['depth']);
  });

  it('S5: what stands in foot or beater is told once with its pedal', () => {
    const low = moved('Kick in', { tip: { x: 145, y: 640, z: 60 } });
    const codes = reportOn(low.layout)
      .findings.filter(({ about }) => about[0] === low.id && about[1] === 'pedal-kick')
      .map(({ code }) => code);
    expect(codes).toEqual(['mic-in-pedal']);
  });

  it('no starting kit and not the demo has one', () => {
    for (const layout of kits) expect(newIn(layout), layout.id).toEqual([]);
  });
});

describe('U1: pieces that no hand plays', () => {
  const without = (ids: readonly string[]): Layout => ({
    ...kit,
    pieces: kit.pieces.map((piece) =>
      'hands' in piece && ids.includes(piece.id) ? { ...piece, hands: 'none' as const } : piece,
    ),
  });

  it('drums and hi-hat are one line to look at, cymbals one to note, and both are named in the sign-off', () => {
    const layout = without(['snare', 'hi-hat', 'ride', 'crash-1']);
    const found = newIn(layout).map(({ severity, about }) => [severity, ...about]);
    expect(found).toEqual([
      ['warn', 'snare', 'hi-hat'],
      ['note', 'crash-1', 'ride'],
    ]);
    const named = sceneFindings(reportOn(layout)).stands.map(({ code }) => code);
    expect(named.filter((code) => code === 'piece-not-played')).toHaveLength(2);
  });

  it('what one hand plays is played', () => {
    expect(newIn(without([]))).toEqual([]);
    const lead = {
      ...kit,
      pieces: kit.pieces.map((piece) =>
        'hands' in piece ? { ...piece, hands: 'left' as const } : piece,
      ),
    };
    expect(newIn(lead)).toEqual([]);
  });
});
