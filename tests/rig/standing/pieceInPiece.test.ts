import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mirrorKit } from '../../../src/layout/edit/mirror.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Piece } from '../../../src/layout/pieces/piece.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { findStanding } from '../../../src/rig/standing/findStanding.ts';
import { fivePiece } from '../kits.ts';
import { among, cymbal, kick, tom } from './scenes.ts';

const inEachOther = (pieces: readonly Piece[]) =>
  among(pieces, []).filter(({ code }) => code === 'piece-in-piece');
const depth = (pieces: readonly Piece[]): number => inEachOther(pieces)[0]?.overlap ?? 0;

describe('K9: pieces in each other', () => {
  const second = { ...tom, id: 'tom-2' };

  it('a rack tom dragged into the snare is found, once', () => {
    const layout = movePiece(fivePiece, 'rack-1', { x: -70, y: 560 });
    const { findings } = createAnalyst()(layout);
    const found = findings.filter(({ code }) => code === 'piece-in-piece');
    expect(found.map(({ about, severity }) => [about.toSorted(), severity])).toContainEqual([
      ['rack-1', 'snare'],
      'stop',
    ]);
    expect(new Set(found.map(({ key }) => key)).size).toBe(found.length);
  });

  it('hoops count: shells of 150 mm with hoops of 10 meet at 320 mm', () => {
    expect(depth([tom, { ...second, x: 321 }])).toBe(0);
    expect(depth([tom, { ...second, x: 317 }])).toBeCloseTo(3, 1);
    // Hoops 20 mm high beside the smooth part of the other shell: 150 + 10 + 150.
    expect(depth([tom, { ...second, x: 311, z: 900 }])).toBe(0);
    expect(depth([tom, { ...second, x: 305, z: 900 }])).toBeCloseTo(5, 1);
  });

  it('a cymbal held above a drum is free, one in its shell is not', () => {
    expect(depth([tom, { ...cymbal, z: 830 }])).toBe(0);
    expect(depth([tom, { ...cymbal, x: 250, z: 700 }])).toBeGreaterThan(10);
    expect(depth([cymbal, { ...cymbal, id: 'ride', x: 300, tilt: 20 }])).toBeGreaterThan(1);
    expect(depth([cymbal, { ...cymbal, id: 'ride', x: 300, z: 1320 }])).toBe(0);
  });

  it('a kick is solid, with a port too', () => {
    expect(depth([kick, { ...tom, z: 700 }])).toBeGreaterThan(75);
    expect(depth([kick, { ...tom, z: 300 }])).toBeGreaterThan(200);
  });

  it('a piece may stand against the one that holds it, up to 10 mm into it', () => {
    const held = (z: number): Piece => ({ ...tom, z, support: { kind: 'held', by: 'kick' } });
    // The kick's top is at 580 mm; the tom with its lower hoop is 210 mm deep.
    expect(depth([kick, held(784)])).toBe(0);
    expect(depth([kick, held(774)])).toBeCloseTo(16, 1);
    expect(depth([kick, { ...tom, z: 784 }])).toBeCloseTo(6, 1);
  });

  it('is the same in the mirror and with the pieces in another order', () => {
    const step = fc.integer({ min: -400, max: 400 });
    const texts = (layout: Layout): readonly string[] =>
      findStanding(buildRig(layout), layout.deck)
        .filter(({ code }) => code === 'piece-in-piece')
        .map(({ about }) => about.toSorted().join());
    fc.assert(
      fc.property(step, step, (dx, dy) => {
        const pieces = fivePiece.pieces.map((piece): Piece => {
          const moves = piece.kind === 'rackTom' || piece.kind === 'ride';
          return moves ? { ...piece, x: piece.x + dx, y: piece.y + dy } : piece;
        });
        const layout: Layout = { ...fivePiece, pieces, mics: [] };
        const pairs = (from: Layout) =>
          texts(from)
            .map((text) => text.split(' ')[0])
            .toSorted();
        expect(pairs(mirrorKit(layout))).toEqual(pairs(layout));
        expect(pairs({ ...layout, pieces: layout.pieces.toReversed() })).toEqual(pairs(layout));
      }),
      { numRuns: 40 },
    );
  });
});
