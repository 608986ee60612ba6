import { describe, expect, it } from 'vitest';
import { distance } from '../../src/geometry/vector.ts';
import { usualPedal } from '../../src/layout/catalogue/defaults/usualPieces.ts';
import { feetOf } from '../../src/player/feet.ts';
import { legsOf } from '../../src/player/legs.ts';
import { placePedal } from '../../src/rig/pieces/pedalPiece.ts';
import { average } from './arms.ts';

const pedal = usualPedal('pedal');
const footOn = (id: string | null) => {
  const foot = feetOf(average, [pedal]).find((one) => one.pedal === id);
  if (!foot) throw new Error('a foot was expected');
  return foot;
};

describe('feet at rest', () => {
  it('L5: every leg has its foot, which begins at the leg’s ankle', () => {
    const feet = feetOf(average, [pedal]);
    const legs = legsOf(average, [pedal]);
    expect(feet.map((foot) => foot.pedal)).toEqual(legs.map((leg) => leg.pedal));
    for (const [i, { solids }] of feet.entries()) expect(solids[0]?.a).toEqual(legs[i]?.shin.b);
  });

  it('L5: on a pedal it lies on the board from heel to toe and stays over it', () => {
    const { solids } = footOn('pedal');
    const [board] = placePedal(pedal).hardware;
    if (!board) throw new Error('a board was expected');
    // The foot of 1750 mm is 268 mm long (survey means), 20 mm more with the shoe, and begins 45 mm behind the ankle.
    const toe = Math.max(...solids.map(({ b, radius }) => b.y + radius));
    expect(toe - (pedal.y - 45)).toBeCloseTo(0.153 * 1750 + 20, 6);
    expect(toe).toBeLessThan(pedal.y + pedal.length);
    for (const { a, b, radius } of solids.slice(1)) {
      for (const end of [a, b]) {
        const share = (end.y - board.a.y) / (board.b.y - board.a.y);
        const top = board.a.z + share * (board.b.z - board.a.z) + board.radius;
        expect(end.z - radius).toBeCloseTo(top, 6);
      }
    }
    const [, left, right] = solids;
    if (!left || !right) throw new Error('two capsules of sole were expected');
    expect(distance(left.a, right.a) + 2 * left.radius).toBeCloseTo(100, 9);
  });

  it('L5: without a pedal it stands on the deck, straight ahead', () => {
    for (const { a, b, radius } of footOn(null).solids.slice(1)) {
      expect([a.z - radius, b.z - radius]).toEqual([0, 0]);
      expect(b.x).toBeCloseTo(a.x, 9);
      expect(b.y).toBeGreaterThan(a.y);
    }
  });
});
