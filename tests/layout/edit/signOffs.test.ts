import { expect, test } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { addSignOff, type Said } from '../../../src/layout/edit/signOffs.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { checkLayout } from '../../../src/layout/read.ts';
import { isWhole, signedText } from '../../../src/layout/signed.ts';

const kit = STARTING_KITS[0]?.make('kit') as Layout;
const said: Said = {
  name: 'Drummer',
  at: '2031-05-17T18:30:00Z',
  consent: true,
  answers: [{ about: 'lane', answer: 'fine', note: '' }],
  notes: '',
};

test('a sign-off is bound to what stands there, whole, and the layout still passes its check', () => {
  const signed = addSignOff(kit, said);
  expect(signed.signOffs).toMatchObject([{ ...said, id: 'signed-1', form: 4 }]);
  expect(signed.signOffs[0]?.signed).toBe(signedText(kit));
  expect(signed.signOffs.every(isWhole)).toBe(true);
  expect(checkLayout(structuredClone(signed))).toEqual({ ok: true, layout: signed });
});

test('the oldest goes when there is no room, and no id comes twice', () => {
  const many = Array.from({ length: 15 }).reduce<Layout>((layout) => addSignOff(layout, said), kit);
  expect(many.signOffs.map(({ id }) => id)).toEqual(
    Array.from({ length: 12 }, (_, i) => `signed-${i + 4}`),
  );
  expect(checkLayout(structuredClone(many)).ok).toBe(true);
});

test('a layout with a number that is not finite is not signed', () => {
  const broken = { ...kit, player: { ...kit.player, lean: Number.POSITIVE_INFINITY } };
  expect(() => addSignOff(broken, said)).toThrow(RangeError);
});
