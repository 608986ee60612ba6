import { describe, expect, it } from 'vitest';
import { refusalHelp, saveWords } from '../../../src/views/words/saveWords.ts';

describe('the saved sign', () => {
  it('says saved only when it is', () => {
    const at = new Date(2031, 4, 17, 14, 32).getTime();
    expect(saveWords({ kind: 'saved', at })).toBe('Saved 14:32');
    expect(saveWords({ kind: 'saving' })).toBe('Saving…');
    expect(saveWords(null)).toBe('Not saved yet');
    expect(saveWords({ kind: 'failed', reason: 'quota', detail: '' })).toBe(
      'Not saved: the storage is full',
    );
    expect(saveWords({ kind: 'conflict' })).toMatch(/^Not saved/);
  });

  it('says that an address is not secure where the layout was stored all the same', () => {
    expect(saveWords({ kind: 'failed', reason: 'insecure', detail: '' })).toBe(
      'Not saved for sure: the address is not secure',
    );
    expect(refusalHelp.insecure).toMatch(/stored on this device.*promises nothing/);
    expect(refusalHelp.unavailable).toMatch(/no storage/);
  });
});
