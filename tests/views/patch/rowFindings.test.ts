import { describe, expect, it } from 'vitest';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { setInput } from '../../../src/layout/edit/mics.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { isAboutRow, worstOf } from '../../../src/views/patch/rowFindings.ts';

const kit = largeKit('kit');
const [first, second] = kit.mics;
if (!first || !second) throw new Error('the kit has mics');

describe('findings about a row of the input list', () => {
  it('are those of its plug, and of no other mic', () => {
    const { findings } = createAnalyst()(setInput(kit, first.id, null));
    const about = (mic: string) => findings.filter(isAboutRow(mic)).map(({ code }) => code);
    expect(about(first.id)).toContain('run-unplugged');
    expect(about(second.id)).not.toContain('run-unplugged');
  });

  it('leave out what is not about the patch', () => {
    expect(isAboutRow('a')({ code: 'mic-struck', about: ['a'] })).toBe(false);
    expect(isAboutRow('a')({ code: 'split-plain-y', about: ['a'] })).toBe(true);
  });

  it('are as bad as the worst', () => {
    expect(worstOf([])).toBeNull();
    expect(worstOf([{ severity: 'note' }, { severity: 'stop' }])).toBe('stop');
  });
});
