import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fromVersion3 } from '../../../src/layout/migrations/fromVersion3.ts';
import { checkLayout, readLayout } from '../../../src/layout/read.ts';
import { broughtTo4 } from './brought.ts';

const stored = readFileSync('tests/fixtures/layouts/v3-patched.json', 'utf8');

test('a document of version 3 keeps all it had, with each cable on its own way and nothing signed', () => {
  const before = JSON.parse(stored);
  for (const key of ['origin', 'signOffs', 'setUp']) expect(before).not.toHaveProperty(key);
  const layout = { ...before, ...broughtTo4(before.cabling) };
  expect(readLayout(stored)).toEqual({ ok: true, layout });
});

test.each([
  ['no cabling', undefined, 'missing'],
  ['cabling that is a text', 'tidy', 'wrong-type'],
  ['cabling that is a list', [1], 'wrong-type'],
])('%s is left for the validator to name', (_, cabling, code) => {
  const document = { ...JSON.parse(stored), cabling };
  expect(checkLayout(document)).toMatchObject({ ok: false, problems: [{ code, path: 'cabling' }] });
});

test('the document that it is given stays as it is', () => {
  const document = { schema: 3, cabling: { dressing: 5 } };
  expect(fromVersion3(document)).toMatchObject({
    schema: 4,
    cabling: { dressing: 5, neatness: 0 },
  });
  expect(document).toEqual({ schema: 3, cabling: { dressing: 5 } });
});
