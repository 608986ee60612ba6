import { expect, test } from 'vitest';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { patchReport } from '../../../src/report/patch.ts';
import { rowWords } from '../../../src/views/patch/rowWords.ts';

const kit = largeKit('kit');
const [row] = patchReport(kit, createAnalyst()(kit)).rows;
if (!row) throw new Error('the kit has channels');

test('settings are told apart by what they are of, whatever notes and classes are called', () => {
  const gated = { ...row, insert: { ...row.insert, value: 'gate' as const }, split: 'split-1' };
  const settings = rowWords({ ...gated, notes: '' });
  expect(settings.map(({ text }) => text)).toContain('gate');
  for (const { text } of settings) {
    const words = rowWords({ ...gated, notes: text, micClass: { ...row.micClass, name: text } });
    expect(new Set(words.map(({ of }) => of)).size).toBe(words.length);
    expect(words.at(-1)).toEqual({ of: 'notes', text });
    expect(words).toHaveLength(settings.length + 1);
  }
});
