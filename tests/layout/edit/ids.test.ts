import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fourPieceJazz } from '../../../src/layout/catalogue/kits/fourPieceJazz.ts';
import { freshId } from '../../../src/layout/edit/ids.ts';
import { idField } from '../../../src/layout/fields.ts';
import { randomKit } from '../../support/randomKit.ts';

const kit = fourPieceJazz('kit');

test.each([
  ['china', 'china'],
  ['snare', 'snare-2'],
  ['Crash 3', 'crash-3'],
  ['  ', 'thing'],
  ['Größe', 'gr-e'],
])('%j becomes %j', (stem, id) => {
  expect(freshId(kit, stem)).toBe(id);
});

test('counting goes on from a numbered id', () => {
  const snare = kit.pieces.find(({ id }) => id === 'snare');
  const two = { ...kit, pieces: [...kit.pieces, ...(snare ? [{ ...snare, id: 'snare-2' }] : [])] };
  expect(freshId(two, 'snare')).toBe('snare-3');
  expect(freshId(two, 'snare-2')).toBe('snare-3');
});

test('it is always an id, always free, and always the same', () => {
  const stems = fc.oneof(fc.string(), fc.constantFrom('p1', 'm1', `p1${'x'.repeat(60)}`));
  fc.assert(
    fc.property(randomKit, stems, (layout, stem) => {
      const id = freshId(layout, stem);
      expect(idField.safeParse(id).success).toBe(true);
      const taken = [...layout.pieces, ...layout.mics, ...layout.ownClasses].map((each) => each.id);
      expect(taken).not.toContain(id);
      expect(freshId(layout, stem)).toBe(id);
    }),
    { numRuns: 100 },
  );
});
