import { expect, test } from 'vitest';
import { micName } from '../../src/layout/mics/micName.ts';

test('a mic is told from a piece of the same name, and keeps its own name otherwise', () => {
  const pieces = [{ name: 'Snare' }, { name: 'Kick' }];
  expect(micName({ name: 'Snare' }, pieces)).toBe('Snare mic');
  expect(micName({ name: 'Kick in' }, pieces)).toBe('Kick in');
  expect(micName({ name: 'Snare' }, [])).toBe('Snare');
});
