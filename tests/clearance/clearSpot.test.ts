import { beforeAll, describe, expect, it } from 'vitest';
import { type ClearSpotAnswer, clearSpot } from '../../src/clearance/clearSpot.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import { standSpec } from '../../src/layout/catalogue/standClasses.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { mountSchema } from '../../src/layout/mics/mount.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { PlacedMic } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { oracleMotion } from '../support/motionOracle.ts';
import { sampledClearance, sampleMotion } from '../support/motionSampling.ts';
import { seededKits } from '../support/randomKit.ts';
import {
  askedOver,
  GRIDS,
  type GridScene,
  gridCost,
  gridSpot,
  isInPiece,
  keepsAim,
  standsNoWorse,
} from '../support/spotGrid.ts';
import { capsules, startingKit } from './kits.ts';

/** How much dearer than the grid's a spot may be. */
const allowed = (cost: number): number => Math.max(1.1 * cost, cost + 10);
/** Costs within which two searches agree (rule N5): each may be dearer than the least by 8 % or 8 mm, and by the spare of 0.2 mm. */
const agreed = (cost: number): number => Math.max(1.08 * cost, cost + 8) + 1;

interface Asked {
  readonly name: string;
  readonly scene: GridScene;
  readonly now: PlacedMic;
  readonly answer: ClearSpotAnswer;
}

const sceneOf = (layout: Layout): GridScene => ({
  layout,
  rig: buildRig(layout),
  motion: motionOf(layout.player, layout.pieces),
});

/** Mics of a layout that are asked for at most: a search in the grid takes a second or two. */
const MICS = 2;

/** The answers for mics of a layout that can be moved and are in the way. */
function asked(layout: Layout): readonly Asked[] {
  const scene = sceneOf(layout);
  const { rig, motion } = scene;
  return rig.mics
    .filter(({ mic }) => mic.mount.kind === 'clip' || mic.mount.kind === 'stand')
    .filter((placed) => reachOf(motion, placed).clearance < layout.margin)
    .slice(0, MICS)
    .map((now) => ({
      name: `${layout.name}, margin ${layout.margin}: ${now.mic.id}`,
      scene,
      now,
      answer: clearSpot(motion, layout, rig, now.mic.id),
    }));
}

/** A starting kit is clear: a wider margin puts mics in the way. */
const starting = (key: string, margin: number): Layout => ({ ...startingKit(key), margin });

/** Their searches and those of the grid look at some ten thousand places each: that is what takes these tests some seconds. */
let all: readonly Asked[] = [];
beforeAll(() => {
  all = [
    starting('five-piece-two-racks', 80),
    starting('left-handed', 80),
    starting('large-kit', 80),
    ...seededKits(12, 77),
  ].flatMap(asked);
}, 400_000);

const spots = () =>
  all.flatMap((each) => {
    const { answer, scene, now } = each;
    if (answer.kind !== 'spot') return [];
    return [
      { ...each, spot: answer, there: placeMic({ ...now.mic, ...answer.mic }, scene.layout) },
    ];
  });

describe('a clear spot', () => {
  it('is among the answers, as is that there is none, for clips and stands', () => {
    const kinds = new Set(
      all.map(({ now, answer }) => `${now.mic.mount.kind} ${answer.kind === 'spot'}`),
    );
    expect(kinds).toEqual(new Set(['clip true', 'clip false', 'stand true', 'stand false']));
    expect(spots().length).toBeGreaterThan(8);
  });

  it('is clear by the engine, and by dense sampling of a second implementation', () => {
    const faults = spots().flatMap(({ name, scene, spot, there }) => {
      const { layout, motion } = scene;
      const { clearance } = reachOf(motion, there);
      const { player, pieces } = layout;
      const sampled = sampledClearance(
        sampleMotion(oracleMotion(player, pieces), player, 100),
        capsules(there),
      );
      return clearance >= layout.margin && sampled >= layout.margin && clearance === spot.clearance
        ? []
        : [`${name}: ${clearance} mm, sampled ${sampled}, said ${spot.clearance}`];
    });
    expect(faults).toEqual([]);
  }, 240_000);

  it('rule N1: changes only the mount, within its limits and the reach of its stand', () => {
    for (const { name, spot, now, there } of spots()) {
      expect(mountSchema.safeParse(spot.mic.mount).success, name).toBe(true);
      expect({ ...spot.mic, mount: now.mic.mount }).toEqual(now.mic);
      expect(there.stand?.beyondReach ?? 0, name).toBe(0);
      expect(Object.values(spot.by).every((by) => by !== 0)).toBe(true);
    }
  });

  it('rule N1: no clip is led farther in than 75 mm or lower than the room of rule N8, but one that is there already, in no piece, may stay', () => {
    const clips = spots().flatMap(({ name, scene, spot, now }) => {
      const [before, after] = [now.mic.mount, spot.mic.mount];
      if (before.kind !== 'clip' || after.kind !== 'clip') return [];
      const already = isInPiece(scene, now) ? { reach: 0, height: 300 } : before;
      const drum = scene.layout.pieces.filter(isDrum).find(({ id }) => id === before.drum);
      const asked = drum ? askedOver(scene, now, drum) : 20;
      return [{ name, before: already, after, asked }];
    });
    expect(clips.length).toBeGreaterThan(5);
    for (const { name, before, after, asked } of clips) {
      expect(after.reach, name).toBeLessThanOrEqual(Math.max(75, before.reach));
      expect(after.height, name).toBeGreaterThanOrEqual(Math.min(asked, before.height) - 0.011);
    }
  });

  it('rule N1: the base of a boom stays as far from the present tip as it was; without a boom it goes along', () => {
    const stands = spots().flatMap(({ name, spot, now }) => {
      const [before, after] = [now.mic.mount, spot.mic.mount];
      return before.kind === 'stand' && after.kind === 'stand' ? [{ name, before, after }] : [];
    });
    expect(stands.length).toBeGreaterThan(0);
    const way = (a: { x: number; y: number }, b: { x: number; y: number }): number =>
      Math.hypot(a.x - b.x, a.y - b.y);
    for (const { name, before, after } of stands) {
      expect(after.stand).toBe(before.stand);
      const far =
        standSpec(before.stand).boomMax > 0
          ? way(after.base, before.tip) - way(before.base, before.tip)
          : way(after.base, after.tip) - way(before.base, before.tip);
      // Places are kept in whole mm.
      expect(Math.abs(far), name).toBeLessThanOrEqual(1);
    }
  });

  it('rule N2: keeps its aim', () => {
    const lost = spots().filter(({ scene, now, there }) => !keepsAim(scene.layout, now, there));
    expect(lost.map(({ name }) => name)).toEqual([]);
  });

  it('rule N3: costs what its change does', () => {
    for (const { name, spot, now, there } of spots()) {
      expect(Math.abs(spot.cost - gridCost(now, there)), name).toBeLessThan(0.001);
      const { tip, aim, base } = spot.change;
      expect(tip + 2 * aim + 0.3 * base).toBeCloseTo(spot.cost, 9);
    }
  });

  it('rule N4: puts nothing more in the way, and no stand less firm', () => {
    const worse = spots().filter(({ scene, now, there }) => !standsNoWorse(scene, now, there));
    expect(worse.map(({ name }) => name)).toEqual([]);
  });

  it('rule N5: is at most 10 % or 10 mm dearer than any of a fine grid; none is within reach only where the grid has none', () => {
    const faults = all.flatMap(({ name, scene, now, answer }) => {
      const dearest = answer.kind === 'spot' ? answer.cost : 480;
      const other = gridSpot(scene, now.mic.id, { grids: GRIDS, dearest });
      if (!other || (answer.kind === 'spot' && answer.cost <= allowed(other.cost))) return [];
      const said = answer.kind === 'spot' ? `${answer.cost} mm` : answer.reason;
      return [`${name}: ${said}, on the grid ${other.cost} mm ${JSON.stringify(other.mount)}`];
    });
    expect(faults).toEqual([]);
  }, 120_000);

  it('rule N6: is in its simplest form: no changed value may go back alone', () => {
    for (const { name, scene, spot, now } of spots()) {
      if (spot.mic.mount.kind !== 'clip' || now.mic.mount.kind !== 'clip') continue;
      for (const key of ['angle', 'reach', 'height', 'pitch'] as const) {
        if (spot.by[key] === undefined) continue;
        const mount = { ...spot.mic.mount, [key]: now.mic.mount[key] };
        const back = placeMic({ ...now.mic, mount }, scene.layout);
        const isOne =
          gridCost(now, back) < spot.cost - 0.001 &&
          reachOf(scene.motion, back).clearance > scene.layout.margin + 0.5 &&
          keepsAim(scene.layout, now, back) &&
          standsNoWorse(scene, now, back);
        expect(isOne, `${name}: ${key}`).toBe(false);
      }
    }
  });
});

describe('laws of clear spots', () => {
  const costAt = (layout: Layout, id: string): ClearSpotAnswer => {
    const { motion, rig } = sceneOf(layout);
    return clearSpot(motion, layout, rig, id);
  };

  it('a larger margin never makes the change smaller', () => {
    const faults = ['mic-rack-1', 'mic-ride'].flatMap((id) => {
      const answers = [75, 85, 95].map((margin) => costAt(starting('large-kit', margin), id));
      const costs = answers.map((answer) => (answer.kind === 'spot' ? answer.cost : Infinity));
      return costs.flatMap((cost, k) => {
        const next = costs[k + 1];
        return next === undefined || cost <= agreed(next) ? [] : [`${id}: ${costs}`];
      });
    });
    expect(faults).toEqual([]);
  }, 240_000);

  it('a piece taken away never makes it larger', () => {
    const layout = starting('large-kit', 80);
    const before = costAt(layout, 'mic-rack-1');
    for (const gone of ['crash-1', 'china']) {
      const pieces = layout.pieces.filter(({ id }) => id !== gone);
      const mics = layout.mics.filter(
        ({ mount }) => !(mount.kind === 'clip' && mount.drum === gone),
      );
      expect(pieces.length, gone).toBe(layout.pieces.length - 1);
      const after = costAt({ ...layout, pieces, mics }, 'mic-rack-1');
      if (before.kind !== 'spot' || after.kind === 'none') {
        expect(after).toMatchObject({ reason: 'clear' });
      } else expect(after.cost, gone).toBeLessThanOrEqual(agreed(before.cost));
    }
  }, 240_000);

  it('a mirrored kit has the mirrored spot', () => {
    const layout = starting('large-kit', 80);
    const mirrored = mirrorKit(layout);
    for (const id of ['mic-snare-condenser', 'mic-rack-1', 'mic-ride']) {
      const [here, there] = [costAt(layout, id), costAt(mirrored, id)];
      if (here.kind !== 'spot' || there.kind !== 'spot')
        throw new Error(`${id}: a spot was expected`);
      const expected = mirrorKit({ ...layout, mics: [here.mic] }).mics[0];
      expect(there.cost).toBeCloseTo(here.cost, 6);
      const [one, other] = [
        placeMic(there.mic, mirrored),
        expected && placeMic(expected, mirrored),
      ];
      expect(
        Math.hypot(
          one.tip.x - (other?.tip.x ?? 0),
          one.tip.y - (other?.tip.y ?? 0),
          one.tip.z - (other?.tip.z ?? 0),
        ),
        id,
      ).toBeLessThan(1e-4);
    }
  }, 240_000);

  it('the same question has the same answer', () => {
    const layout = starting('five-piece-two-racks', 80);
    expect(costAt(layout, 'mic-rack-1')).toEqual(costAt(layout, 'mic-rack-1'));
  });

  it('says why there is none: clear already, not there, or a plate', () => {
    const layout = startingKit('five-piece-two-racks');
    expect(costAt(layout, 'mic-rack-1')).toEqual({ kind: 'none', reason: 'clear' });
    expect(costAt(layout, 'nobody')).toEqual({ kind: 'none', reason: 'unknown' });
    const plates = layout.mics.map((mic) =>
      mic.id === 'mic-rack-1'
        ? { ...mic, mount: { kind: 'plateOnDeck' as const, x: 300, y: 400, turn: 0 } }
        : mic,
    );
    const wide = { ...layout, mics: plates, margin: 500 };
    expect(costAt(wide, 'mic-rack-1')).toEqual({ kind: 'none', reason: 'fixed' });
  });

  it('none is within reach of a margin wider than the mic can get away', () => {
    const layout = starting('five-piece-two-racks', 400);
    expect(costAt(layout, 'mic-rack-1')).toMatchObject({ reason: 'none-within-reach' });
  });
});
