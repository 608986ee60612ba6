import { describe, expect, it } from 'vitest';
import { verdictChanges } from '../../../src/views/words/verdictChanges.ts';
import { sample, snareRow } from './sampleLayout.ts';

describe('news of verdicts', () => {
  it('name only the mics whose verdict is another', () => {
    const clear = snareRow(90, 'clear');
    const struck = snareRow(-12, 'struck');
    expect(verdictChanges([clear], [struck], sample)).toBe('Snare mic: Struck, 12 mm too close.');
    expect(verdictChanges([struck], [snareRow(-3, 'struck')], sample)).toBe('');
    expect(verdictChanges([], [clear], sample)).toBe('Snare mic: Clear, 90 mm clear.');
    expect(verdictChanges([clear], [], sample)).toBe('');
  });
});
