import { describe, expect, it } from 'vitest';
import { mirrorKit } from '../../../src/layout/edit/mirror.ts';
import { placeWords } from '../../../src/views/words/placeWords.ts';
import { sample } from './sampleLayout.ts';

const snare = sample.pieces.find((piece) => piece.id === 'snare');
if (snare?.kind !== 'snare') throw new Error('the sample kit has a snare');
const { x, y } = snare;

describe('a place in words', () => {
  it('is over the middle, on a side, beside or under the nearest drum or cymbal', () => {
    expect(placeWords({ x, y, z: 700 }, sample)).toBe('over Snare, 700 mm above the deck');
    expect(placeWords({ x, y: y + 120, z: 700 }, sample)).toContain('side away from the player');
    expect(placeWords({ x, y: y - 120, z: 700 }, sample)).toContain("the player's side");
    expect(placeWords({ x, y, z: 640 }, sample)).toContain('under Snare');
    expect(placeWords({ x: x - 200, y, z: 700 }, sample)).toContain('beside Snare, on its left');
  });

  it('is on the deck when it is low', () => {
    expect(placeWords({ x, y: y - 200, z: 10 }, sample)).toMatch(/^on the deck, by Snare/);
    expect(placeWords({ x, y, z: 10 }, { ...sample, pieces: [] })).toBe('on the deck');
  });

  it('is a height alone where there is no kit', () => {
    expect(placeWords({ x: 0, y: 0, z: 900 }, { ...sample, pieces: [] })).toBe(
      '900 mm above the deck',
    );
  });

  it('on the deck is told by the throne where that is nearer than any drum', () => {
    expect(placeWords({ x: 0, y: -400, z: 5 }, sample)).toBe('on the deck, behind Throne');
    expect(placeWords({ x: -300, y: -50, z: 5 }, sample)).toBe('on the deck, left of Throne');
    expect(placeWords({ x: 40, y: 0, z: 5 }, sample)).toBe('on the deck, under Throne');
  });

  it('names the edge that it lies beyond, as the player sees the deck, however the kit is turned', () => {
    const { width, depth } = sample.deck;
    const out = (x: number, y: number, z: number, turn = 0) => {
      const deck = { ...sample.deck, kit: { x: 0, y: 0, turn } };
      return placeWords({ x, y, z }, { ...sample, deck });
    };
    expect(out(-width / 2 - 90, 0, 5)).toMatch(/^beyond the deck's left edge, /);
    expect(out(0, -depth / 2 - 1, 5)).toBe("beyond the deck's back edge, behind Throne");
    expect(out(width / 2 + 20, 0, 900)).toMatch(
      /900 mm above the deck, beyond the deck's right edge$/,
    );
    // Turned a quarter to the left, what lies before the player lies beyond the left edge.
    expect(out(0, width / 2 + 20, 5, 90)).toMatch(/^beyond the deck's left edge/);
    expect(out(0, depth / 2 - 1, 5)).toMatch(/^on the deck/);
  });

  it('swaps left and right for the mirrored kit', () => {
    const words = placeWords({ x: x - 120, y: y + 10, z: 700 }, sample);
    const mirrored = placeWords({ x: 120 - x, y: y + 10, z: 700 }, mirrorKit(sample));
    expect(words).toContain('on its left');
    expect(mirrored).toBe(words.replace('on its left', 'on its right'));
  });
});
