import { describe, expect, it } from 'vitest';
import { distance, dot, subtract, unit, vec } from '../../src/geometry/vector.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Kick } from '../../src/layout/pieces/kick.ts';
import type { Piece } from '../../src/layout/pieces/piece.ts';
import { beatersOf } from '../../src/player/beater.ts';
import { kickFrame } from '../../src/rig/pieces/kickFrame.ts';

const kits = STARTING_KITS.map((kit) => kit.make(kit.key).pieces).filter((pieces) =>
  pieces.some(({ kind }) => kind === 'kick'),
);
const only = (pieces: readonly Piece[]) => {
  const [beater] = beatersOf(pieces);
  if (!beater) throw new Error('a beater was expected');
  const shafts = beater.swept.filter(({ radius }) => radius === 6);
  const balls = beater.swept.filter(({ radius }) => radius === 28);
  return { ...beater, shafts, balls };
};

describe('the beater of a kick’s pedal', () => {
  it('L6: touches the batter head of every starting kit where it begins, and goes 60 degrees back', () => {
    expect(kits.length).toBeGreaterThan(4);
    for (const pieces of kits) {
      const kick = pieces.find((piece): piece is Kick => piece.kind === 'kick');
      if (!kick) throw new Error('a kick was expected');
      const { backHead, front } = kickFrame(kick);
      const { shafts } = only(pieces);
      const [struck, back] = [shafts[0], shafts.at(-1)];
      if (!struck || !back) throw new Error('shafts were expected');
      expect(dot(subtract(struck.b, backHead), front)).toBeCloseTo(-28, 6);
      const along = (end: typeof struck.b) => unit(subtract(end, struck.a), vec(0, 0, 1));
      const turn = Math.acos(dot(along(struck.b), along(back.b)));
      expect((turn * 180) / Math.PI).toBeCloseTo(60, 6);
      expect(struck.a.z).toBe(150);
    }
  });

  it('L6: the fan leaves no gap wider than 2 mm, and its balls touch each other all the way', () => {
    for (const pieces of kits) {
      const { shafts, balls } = only(pieces);
      for (const [i, shaft] of shafts.entries()) {
        const next = shafts[i + 1];
        if (next) {
          const size = distance(shaft.a, shaft.b);
          // Beyond this the ball covers it.
          const apart = (distance(shaft.b, next.b) * (size - 28)) / size;
          expect(apart - 12).toBeLessThan(2);
          expect(balls[i]?.b).toEqual(balls[i + 1]?.a);
        }
      }
    }
  });

  it('L6: without a head to touch it goes back from upright; a hi-hat’s pedal has none', () => {
    const pedals = kits[0]?.filter(({ kind }) => kind === 'pedal') ?? [];
    expect(pedals).toHaveLength(2);
    expect(beatersOf(pedals)).toHaveLength(1);
    const [upright] = only(pedals).shafts;
    expect(upright?.b.x).toBeCloseTo(upright?.a.x ?? 0, 9);
    expect(upright?.b.z).toBeCloseTo(150 + 220, 9);
  });
});
