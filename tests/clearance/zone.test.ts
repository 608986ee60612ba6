import { describe, expect, it } from 'vitest';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { TOLERANCE } from '../../src/clearance/searchBounds.ts';
import { type Ring, struckZone } from '../../src/clearance/zone.ts';
import type { Vec2, Vec3 } from '../../src/geometry/vector.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { MicSolid, PlacedMic } from '../../src/rig/placed.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { type SampledMotion, sampledClearance, sampleMotion } from '../support/motionSampling.ts';
import { seededKits } from '../support/randomKit.ts';
import { capsules, startingKit } from './kits.ts';

/** Mic, connector and clip arm: what a zone is about. */
const own = ({ solids }: PlacedMic): readonly MicSolid[] =>
  solids.filter(({ part }) => part !== 'boom' && part !== 'mast' && part !== 'base');

const shifted = (solids: readonly MicSolid[], dx: number, dy: number): readonly MicSolid[] => {
  const move = ({ x, y, z }: Vec3): Vec3 => ({ x: x + dx, y: y + dy, z });
  return solids.map(({ part, capsule: { a, b, radius } }) => ({
    part,
    capsule: { a: move(a), b: move(b), radius },
  }));
};

/** Even-odd. */
const inside = (rings: readonly Ring[], p: Vec2): boolean =>
  rings
    .map((ring) =>
      ring
        .map((a, k) => ({ a, b: ring[(k + 1) % ring.length] ?? a }))
        .filter(({ a, b }) => a.y > p.y !== b.y > p.y)
        .filter(({ a, b }) => p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)),
    )
    .reduce((sum, crossed) => sum + crossed.length, 0) %
    2 ===
  1;

/** Spots just off the rings, on both sides, and spots all over the plan. */
function spots(rings: readonly Ring[], every: number): readonly Vec2[] {
  const beside = rings.flat().flatMap(({ x, y }, k) =>
    k % every === 0
      ? [0, 60, 120, 180, 240, 300].flatMap((degrees) =>
          [0.3, 4, 9].map((off) => ({
            x: x + off * Math.cos((degrees / 180) * Math.PI + k),
            y: y + off * Math.sin((degrees / 180) * Math.PI + k),
          })),
        )
      : [],
  );
  const all = Array.from({ length: 300 }, (_, k) => ({
    x: -1600 + ((k * 733) % 3200),
    y: -700 + ((k * 1117) % 2300),
  }));
  return [...beside, ...all];
}

interface Zoned {
  readonly layout: Layout;
  readonly placed: PlacedMic;
  readonly rings: readonly Ring[];
  readonly clearanceAt: (spot: Vec2) => number;
}

function zoned(layout: Layout, placed: PlacedMic): Zoned {
  const motion = motionOf(layout.player, layout.pieces);
  const solids = own(placed);
  const { tip } = placed;
  return {
    layout,
    placed,
    rings: struckZone(motion, solids, tip).rings,
    clearanceAt: ({ x, y }) =>
      reachOf(motion, { solids: shifted(solids, x - tip.x, y - tip.y) }).clearance,
  };
}

const layouts = [
  startingKit('five-piece-two-racks'),
  startingKit('left-handed'),
  ...seededKits(5, 21),
];
const zones = layouts.flatMap((layout) =>
  buildRig(layout)
    .mics.slice(0, 2)
    .map((placed) => zoned(layout, placed)),
);

describe('rule Z1: the forbidden zone', () => {
  it('no spot outside it is struck', () => {
    const faults = zones.flatMap(({ layout, placed, rings, clearanceAt }) =>
      spots(rings, 9)
        .filter((spot) => !inside(rings, spot) && clearanceAt(spot) < -TOLERANCE)
        .map(
          (spot) =>
            `${layout.name}, ${placed.mic.id} at ${JSON.stringify(spot)}: ${clearanceAt(spot)} mm`,
        ),
    );
    expect(faults).toEqual([]);
  });

  it('every spot inside it is struck, or would be with the diagonal of a cell less room', () => {
    const faults = zones.flatMap(({ layout, placed, rings, clearanceAt }) =>
      spots(rings, 11)
        .filter((spot) => inside(rings, spot) && clearanceAt(spot) > 20 * Math.SQRT2)
        .map(
          (spot) =>
            `${layout.name}, ${placed.mic.id} at ${JSON.stringify(spot)}: ${clearanceAt(spot)} mm`,
        ),
    );
    expect(faults).toEqual([]);
  });

  it('has spots of both sorts to look at', () => {
    const all = zones.flatMap(({ rings }) => spots(rings, 11).map((spot) => inside(rings, spot)));
    expect(all.filter((is) => is).length).toBeGreaterThan(1000);
    expect(all.filter((is) => !is).length).toBeGreaterThan(1000);
  });

  it('holds against dense sampling of a second implementation', () => {
    const layout = startingKit('five-piece-two-racks');
    const { player, pieces } = layout;
    const scene: SampledMotion = sampleMotion(oracleMotion(player, pieces), player, 200);
    for (const { placed, rings } of zones.filter((zone) => zone.layout === layout)) {
      for (const spot of spots(rings, 90)) {
        const solids = shifted(own(placed), spot.x - placed.tip.x, spot.y - placed.tip.y);
        const clearance = sampledClearance(scene, capsules({ solids }));
        if (inside(rings, spot)) expect(clearance).toBeLessThan(20 * Math.SQRT2 + 0.1);
        else expect(clearance).toBeGreaterThan(-0.1);
      }
    }
  });

  it('of a mic far over everything there is none', () => {
    const layout = startingKit('four-piece-jazz');
    const [first] = buildRig(layout).mics;
    if (!first) throw new Error('a mic was expected');
    const high = own(first).map(({ part, capsule: { a, b, radius } }) => ({
      part,
      capsule: { a: { ...a, z: a.z + 3000 }, b: { ...b, z: b.z + 3000 }, radius },
    }));
    expect(struckZone(motionOf(layout.player, layout.pieces), high, first.tip).rings).toEqual([]);
  });

  it('forbids no new ground when a piece is taken away, but for the diagonal of a cell', () => {
    const layout = startingKit('five-piece-two-racks');
    const motion = motionOf(layout.player, layout.pieces);
    let asked = 0;
    for (const placed of buildRig(layout).mics.slice(0, 2)) {
      const solids = own(placed);
      const { tip } = placed;
      for (const gone of layout.pieces.filter(({ kind }) => kind === 'snare' || kind === 'crash')) {
        const pieces = layout.pieces.filter((piece) => piece !== gone);
        const { cell, rings } = struckZone(motionOf(layout.player, pieces), solids, tip);
        for (const spot of spots(rings, 9).filter((at) => inside(rings, at))) {
          const there = shifted(solids, spot.x - tip.x, spot.y - tip.y);
          const { clearance } = reachOf(motion, { solids: there });
          expect(clearance).toBeLessThan(cell * Math.SQRT2 + 1 + TOLERANCE);
          asked += 1;
        }
      }
    }
    expect(asked).toBeGreaterThan(100);
  });

  it('of a mirrored kit forbids the mirrored spots', () => {
    const layout = startingKit('five-piece-two-racks');
    const mirrored = mirrorKit(layout);
    const mics = buildRig(mirrored).mics;
    for (const { placed, rings, clearanceAt } of zones.filter((zone) => zone.layout === layout)) {
      const twin = mics.find(({ mic }) => mic.id === placed.mic.id);
      if (!twin) throw new Error('the same mic was expected');
      const other = zoned(mirrored, twin).rings;
      for (const spot of spots(rings, 13)) {
        // The grids of both start at their own corner: near an edge a cell may be in one zone and not in the other.
        const clearance = clearanceAt(spot);
        const flipped = { x: -spot.x, y: spot.y };
        if (clearance < 0) expect(inside(other, flipped)).toBe(true);
        if (clearance > 20 * Math.SQRT2) expect(inside(other, flipped)).toBe(false);
      }
    }
  });
});
