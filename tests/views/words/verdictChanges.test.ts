import { describe, expect, it } from 'vitest';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { ClearanceRow } from '../../../src/report/report.ts';
import { verdictChanges } from '../../../src/views/words/verdictChanges.ts';
import { clipInDrum } from '../../report/clipInDrum.ts';
import { sample, snareRow } from './sampleLayout.ts';

const judged = (...clearances: readonly ClearanceRow[]) => ({ clearances, findings: [] });

describe('news of verdicts', () => {
  it('name only the mics whose verdict is another', () => {
    const clear = judged(snareRow(90, 'clear'));
    const struck = judged(snareRow(-12, 'struck'));
    expect(verdictChanges(clear, struck, sample)).toBe('Snare mic: Struck, 12 mm too close.');
    expect(verdictChanges(struck, judged(snareRow(-3, 'struck')), sample)).toBe('');
    expect(verdictChanges(judged(), clear, sample)).toBe('Snare mic: Clear, 90 mm clear.');
    expect(verdictChanges(clear, judged(), sample)).toBe('');
  });

  it('say of a mic that was put into its drum what it stands in, not how clear it is', () => {
    const analyse = createAnalyst();
    const { layout } = clipInDrum(sample);
    const before = analyse(sample);
    const after = analyse(layout);
    expect(verdictChanges(before, after, layout)).toBe('In the way: Rack 1 goes into Rack tom 1.');
    expect(verdictChanges(after, before, sample)).toMatch(/^Rack 1: Clear, \d+ mm clear\.$/);
  });
});
