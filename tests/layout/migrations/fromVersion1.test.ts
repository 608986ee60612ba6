import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { fromVersion1 } from '../../../src/layout/migrations/fromVersion1.ts';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { checkLayout, readLayout } from '../../../src/layout/read.ts';
import { broughtTo4 } from './brought.ts';

const stored = (name: string): string =>
  readFileSync(`tests/fixtures/layouts/v1-${name}.json`, 'utf8');

test.each(['demo', 'every-mount', 'large-kit', 'left-handed'])(
  '%s of version 1 keeps all it had, with the lean and the hi-hat hands it was computed with',
  (name) => {
    const before = JSON.parse(stored(name));
    expect(before.player).not.toHaveProperty('lean');
    const read = readLayout(stored(name));
    expect(read).toEqual({
      ok: true,
      layout: {
        ...before,
        ...broughtTo4(before.cabling),
        player: { ...before.player, hiHat: 'either', lean: 200 },
        patch: DEFAULT_PATCH,
      },
    });
  },
);

test('a starting kit that is brought back to version 1 and forward again is the same', () => {
  for (const { key, make } of STARTING_KITS) {
    const layout = make(key);
    const { hiHat, lean, ...player } = layout.player;
    expect([hiHat, lean], key).toEqual(['either', 200]);
    const { patch: _p, origin: _o, signOffs: _s, setUp: _u, ...before } = layout;
    const { neatness: _n, ...cabling } = layout.cabling;
    const old = { ...before, schema: 1, player, cabling };
    expect(checkLayout(old)).toEqual({
      ok: true,
      layout: { ...layout, ...broughtTo4(cabling) },
    });
  }
});

test.each([
  ['no player', undefined, 'missing'],
  ['a player that is a text', 'Someone', 'wrong-type'],
  ['a player that is a list', [1], 'wrong-type'],
])('%s is left for the validator to name', (_, player, code) => {
  const document = { ...JSON.parse(stored('demo')), player };
  expect(checkLayout(document)).toMatchObject({ ok: false, problems: [{ code, path: 'player' }] });
});

test('the document that it is given stays as it is', () => {
  const document = { schema: 1, player: { stature: 1750 } };
  fromVersion1(document);
  expect(document).toEqual({ schema: 1, player: { stature: 1750 } });
});
