import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { fromVersion2 } from '../../../src/layout/migrations/fromVersion2.ts';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { checkLayout, readLayout } from '../../../src/layout/read.ts';
import { broughtTo4 } from './brought.ts';

test.each(['demo', 'every-mount'])('%s of version 2 keeps all it had, patched as usual', (name) => {
  const text = readFileSync(`tests/fixtures/layouts/v2-${name}.json`, 'utf8');
  const before = JSON.parse(text);
  expect(before).not.toHaveProperty('patch');
  const layout = { ...before, ...broughtTo4(before.cabling), patch: DEFAULT_PATCH };
  expect(readLayout(text)).toEqual({ ok: true, layout });
});

test('a starting kit that is brought back to version 2 and forward again is the same', () => {
  for (const { key, make } of STARTING_KITS) {
    const { patch, origin: _o, signOffs: _s, setUp: _u, ...layout } = make(key);
    const { neatness: _n, ...cabling } = layout.cabling;
    expect(patch).toEqual(DEFAULT_PATCH);
    expect(checkLayout({ ...layout, schema: 2, cabling })).toEqual({
      ok: true,
      layout: { ...layout, ...broughtTo4(cabling), patch },
    });
  }
});

test('the document that it is given stays as it is', () => {
  const document = { schema: 2, mics: [] };
  expect(fromVersion2(document)).toMatchObject({ schema: 3, mics: [] });
  expect(document).toEqual({ schema: 2, mics: [] });
});
