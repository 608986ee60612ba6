import { describe, expect, it } from 'vitest';
import { usualPiece } from '../../../src/layout/catalogue/defaults/usualPieces.ts';
import { nominalSizes } from '../../../src/layout/catalogue/sizes.ts';
import { nominalWords, sizeWords } from '../../../src/views/words/sizeWords.ts';

describe('sizes in words', () => {
  it('shows nominal sizes in inches with mm beside them', () => {
    const snare = nominalSizes('snare').find(
      (s) => s.diameterInches === 14 && s.depthInches === 6.5,
    );
    const ride = nominalSizes('ride').find((s) => s.diameterInches === 20);
    expect(snare && nominalWords(snare)).toBe('14 × 6.5 in (356 × 165 mm)');
    expect(ride && nominalWords(ride)).toBe('20 in (508 mm)');
  });

  it('says the size of a piece, whatever it is', () => {
    expect(sizeWords(usualPiece('snare', 's'))).toBe('14 × 5.5 in');
    expect(sizeWords(usualPiece('ride', 'r'))).toBe('20 in');
    expect(sizeWords(usualPiece('throne', 't'))).toBe('');
    expect(sizeWords({ ...usualPiece('crash', 'c'), diameter: 400 } as never)).toBe('15.7 in');
  });
});
