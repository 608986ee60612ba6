import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boundedName, copyName } from '../../src/app/copyName.ts';
import { nameField } from '../../src/layout/fields.ts';

it('the name of a copy says so and is always a valid name', () => {
  expect(copyName('Club')).toBe('Club (copy)');
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 120 }), (name) => {
      const copy = copyName(name);
      expect(nameField.safeParse(copy).success).toBe(true);
      expect(copy.endsWith(' (copy)')).toBe(true);
    }),
  );
});

it('a name beyond the limit loses whole letters at its end', () => {
  expect(boundedName('x'.repeat(81))).toBe('x'.repeat(80));
  expect(boundedName(`${'x'.repeat(79)}𝄞`)).toBe('x'.repeat(79));
  expect(boundedName(`${'x'.repeat(78)}𝄞`)).toBe(`${'x'.repeat(78)}𝄞`);
});
