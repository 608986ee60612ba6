import fc from 'fast-check';
import { expect, it } from 'vitest';
import { boundedName, copyName, nameBeside } from '../../src/app/copyName.ts';
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

it('beside others of its name a layout is called as its copies are, each by a name of its own', () => {
  expect(nameBeside('Club', ['Hall'])).toBe('Club');
  expect(nameBeside('Club', ['Club', 'Hall'])).toBe('Club (copy)');
  expect(nameBeside('Club', ['Club', 'Club (copy)'])).toBe('Club (copy 2)');
  expect(nameBeside('Club', ['Club', 'Club (copy)', 'Club (copy 2)'])).toBe('Club (copy 3)');
  expect(nameBeside('Club', [], 'copy')).toBe('Club (copy)');
  const long = 'x'.repeat(80);
  const names = [long];
  for (let i = 0; i < 12; i += 1) names.push(nameBeside(long, names));
  expect(new Set(names).size).toBe(13);
  for (const name of names) expect(nameField.safeParse(name).success).toBe(true);
});
