import { describe, expect, it } from 'vitest';
import { LEFT_OUT_OF_SOUND } from '../../../../src/report/sound.ts';
import {
  estimateWords,
  STYLES,
  styleWords,
} from '../../../../src/views/sound/words/estimateWords.ts';

describe('what is said of all figures', () => {
  it('names everything that is left out', () => {
    const said = estimateWords(LEFT_OUT_OF_SOUND);
    expect(said).toMatch(/^A direct-sound estimate\./);
    for (const part of ['reflections', 'shadows', 'radiate', 'pitch', 'air']) {
      expect(said).toContain(part);
    }
  });

  it('has a name of its own for every style', () => {
    expect(new Set(STYLES.map(styleWords)).size).toBe(6);
  });
});
