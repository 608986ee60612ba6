import { describe, expect, it } from 'vitest';
import { micShapes } from '../../src/clearance/micShape.ts';
import { MoveSearch } from '../../src/clearance/moveSearch.ts';
import { TOLERANCE, UNBOUNDED } from '../../src/clearance/searchBounds.ts';
import { SweptMoves } from '../../src/clearance/sweptMoves.ts';
import { vec } from '../../src/geometry/vector.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Drum } from '../../src/layout/pieces/drum.ts';
import type { Struck } from '../../src/layout/pieces/piece.ts';
import type { Player } from '../../src/layout/player.ts';
import { playingOf } from '../../src/player/moves.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { sampledClearance, sampleMotion } from '../support/motionSampling.ts';
import { rod, startingKit } from './kits.ts';

const kit = startingKit('four-piece-jazz');
const snare = kit.pieces.find((piece): piece is Drum => piece.kind === 'snare');
if (!snare) throw new Error('a snare was expected');
const beside: Drum = { ...snare, id: 'beside', x: 795, y: -10, z: 480, tilt: 0, tiltToward: 0 };

/** The search for a rod, with a count of the positions it computed. */
function searched(layout: Pick<Layout, 'player' | 'pieces'>, solids: ReturnType<typeof rod>) {
  const { arm, moves } = playingOf(layout.player, layout.pieces);
  let written = 0;
  const counted = moves.map((move) => ({
    side: move.side,
    on: move.on,
    from: move.from,
    speed: move.speed,
    bend: move.bend,
    write: (t: number, out: Float64Array, at: number) => {
      written++;
      move.write(t, out, at);
    },
  }));
  const swept = new SweptMoves({ arm, moves: counted });
  written = 0;
  const found = new MoveSearch(swept, micShapes(solids)).nearest(UNBOUNDED);
  return { clearance: found?.clearance ?? Number.POSITIVE_INFINITY, written };
}

function sampledMoves(layout: Pick<Layout, 'player' | 'pieces'>, solids: ReturnType<typeof rod>) {
  const { moves } = oracleMotion(layout.player, layout.pieces);
  const motion = { moves, legs: [], swings: [] };
  return sampledClearance(
    sampleMotion(motion, layout.player, 400),
    solids.map(({ capsule }) => capsule),
  );
}

/** Arms and pieces for which the elbow has no steady place: the bound there once let the search halve everything. */
const awkward: readonly [string, Player, readonly Struck[]][] = [
  [
    'a floor tom beside the seat, where the arm passes the line its elbow hangs along',
    kit.player,
    [snare, beside],
  ],
  [
    'a drum at the shoulder of a short upper arm, where the arm folds flat',
    { ...kit.player, stature: 2000, body: { acromionRadiale: 280 } },
    [snare, { ...beside, x: 380, y: 380, z: 1240 }],
  ],
  [
    'a drum straight behind the player',
    { ...kit.player, strokeHeight: 20 },
    [
      { ...snare, x: 200, y: 600, z: 700, tilt: 0 },
      { ...beside, x: 208, y: -600, z: 700 },
    ],
  ],
];

describe('rule C2: a search', () => {
  it.each(awkward)('stays short and true with %s', (_, player, pieces) => {
    for (const [x, y] of [
      [300, 200],
      [600, 100],
      [-300, 500],
    ] as const) {
      const solids = rod(vec(x, y, 300), vec(x + 40, y + 10, 1100), 12);
      const { clearance, written } = searched({ player, pieces: [...pieces] }, solids);
      const sampled = sampledMoves({ player, pieces: [...pieces] }, solids);
      expect(clearance).toBeLessThanOrEqual(sampled + 0.05 + 1e-9);
      expect(clearance).toBeGreaterThanOrEqual(sampled - 0.05);
      expect(written).toBeLessThan(10_000);
    }
  });

  it('looks at few positions for a mic of a usual kit', () => {
    const { written } = searched(kit, rod(vec(-140, 560, 690), vec(-230, 720, 790), 24));
    expect(written).toBeLessThan(500);
  });

  it('finds nothing where no hand plays', () => {
    const still = { player: kit.player, pieces: [{ ...snare, hands: 'none' as const }] };
    expect(searched(still, rod(vec(0, 0, 0), vec(0, 0, 10), 5))).toEqual({
      clearance: Number.POSITIVE_INFINITY,
      written: 0,
    });
  });

  it('finds the nearest of any number of solids, whichever it is', () => {
    const rods = Array.from({ length: 40 }, (_, k) =>
      rod(vec(-200 - 20 * k, 500 + 10 * k, 700), vec(-200 - 20 * k, 500 + 10 * k, 760), 8),
    );
    const alone = rods.map((solids) => searched(kit, solids).clearance);
    const all = searched(kit, rods.flat()).clearance;
    const least = Math.min(...alone);
    expect(Math.abs(all - least)).toBeLessThanOrEqual(TOLERANCE);
    expect(searched(kit, rods.flat().toReversed()).clearance).toBeCloseTo(all, 1);
  });
});
