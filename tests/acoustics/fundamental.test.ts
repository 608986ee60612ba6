import { describe, expect, it } from 'vitest';
import { createAcoustics } from '../../src/acoustics/acoustics.ts';
import { DEFAULT_CHOICES } from '../../src/acoustics/choices.ts';
import { fundamentalOf } from '../../src/acoustics/fundamental.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { fromInches } from '../../src/units/inch.ts';
import { fivePiece } from '../rig/kits.ts';
import { heardIn, sourceIn } from './scenes.ts';

const { sources } = heardIn(fivePiece);
const sized = (id: string, inches: number) => {
  const { piece } = sourceIn(sources, id);
  return fundamentalOf({ ...piece, diameter: fromInches(inches) }, DEFAULT_CHOICES);
};

describe('H17 fundamentals by size (estimates from memory)', () => {
  it('lie where common tunings do', () => {
    expect(sized('kick', 22)).toBeCloseTo(56.8, 1);
    expect(sized('snare', 14)).toBeCloseTo(190, 6);
    expect(sized('rack-1', 12)).toBeCloseTo(130, 6);
    expect(sized('floor', 16)).toBeCloseTo(81.25, 6);
  });

  it('fall as drums grow', () => {
    for (const id of ['kick', 'snare', 'rack-1', 'floor']) {
      expect(sized(id, 16)).toBeLessThan(sized(id, 12) ?? 0);
    }
  });

  it('a figure of the user comes first, for a cymbal too', () => {
    const choices = { fundamentals: { snare: 210, ride: 400 } };
    expect(fundamentalOf(sourceIn(sources, 'snare').piece, choices)).toBe(210);
    expect(fundamentalOf(sourceIn(sources, 'ride').piece, choices)).toBe(400);
    expect(fundamentalOf(sourceIn(sources, 'ride').piece, DEFAULT_CHOICES)).toBeUndefined();
  });
});

describe('the fundamentals of a kit', () => {
  it('are those of all its drums, also of a drum without a mic, the user’s figure first', () => {
    const layout = { ...fivePiece, mics: [] };
    const choices = { ...DEFAULT_CHOICES, fundamentals: { snare: 205 } };
    const { fundamentals } = createAcoustics()(layout, buildRig(layout), choices);
    const drums = layout.pieces.filter((piece) => isDrum(piece) || piece.kind === 'kick');
    expect(fundamentals.map(({ piece }) => piece)).toEqual(drums.map(({ id }) => id));
    expect(fundamentals.find(({ piece }) => piece === 'snare')?.hertz).toBe(205);
  });
});
