import { expect, test } from 'vitest';
import { standFactsWords } from '../../../src/views/words/standFactsWords.ts';

test('says the factor, never rounded up, and what is wanted', () => {
  const { firm } = standFactsWords({ factor: 1.4999, smallest: 'tripodTall' }, 'tripodTall');
  expect(firm).toBe('Tipping: the base holds 1.4 times the pull of boom and mic; 1.5 is wanted.');
  const over = standFactsWords(
    { factor: Number.POSITIVE_INFINITY, smallest: undefined },
    'tripodLow',
  );
  expect(over).toEqual({ firm: 'Firm: boom and mic hang over the base.' });
});

test('names a smaller stand that would reach, and no larger one', () => {
  const words = (smallest: 'tripodLow' | 'tripodTall') =>
    standFactsWords({ factor: 3, smallest }, 'tripodMedium').smaller;
  expect(words('tripodLow')).toBe('A smaller stand would reach: low tripod boom.');
  expect(words('tripodTall')).toBeUndefined();
});
