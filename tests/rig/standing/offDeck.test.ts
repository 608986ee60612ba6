import { describe, expect, it } from 'vitest';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { among, cymbal, stand, wideDeck } from './scenes.ts';

describe('K8: off the deck', () => {
  const deck = { ...wideDeck, width: 2000, depth: 2000 };

  it('tells how far the worst foot stands out, as worked by hand', () => {
    // Legs of 330 with half their thickness: a base at 700 with a leg toward the edge at 1000 stands 38 mm out.
    const at = (x: number) =>
      stand({ base: { x, y: 0 }, turn: 0, tip: { x: x - 500, y: 0, z: 1300 } });
    const [only] = among([], [[at(700)]], deck);
    expect(only).toMatchObject({ code: 'base-off-deck', about: ['a'] });
    expect(only?.overlap).toBeCloseTo(38, 9);
    expect(among([], [[at(660)]], deck)).toEqual([]);
  });

  it('turns and moves with the kit on its deck', () => {
    const turned = { ...deck, kit: { x: 0, y: 300, turn: 90 } };
    const at = (x: number) =>
      stand({ base: { x, y: 0 }, turn: 0, tip: { x: x - 500, y: 0, z: 1300 } });
    // The leg toward +x of the kit points to +y of the deck, from 300 + 400: it stands 38 mm out.
    expect(among([], [[at(400)]], turned)[0]?.overlap).toBeCloseTo(38, 9);
  });

  it('tells of pieces by their feet; a cymbal may hang over the edge', () => {
    const support = {
      kind: 'stand' as const,
      dx: -300,
      dy: 0,
      legs: 3 as const,
      spread: 250,
      turn: 90,
    };
    const over: Piece = { ...cymbal, x: 950, y: 0, support };
    expect(among([over], [], deck)).toEqual([]);
    const out: Piece = { ...over, support: { ...support, dx: 0 } };
    expect(among([out], [], deck)[0]).toMatchObject({ code: 'piece-off-deck', about: ['crash'] });
  });
});
