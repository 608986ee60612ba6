import { beforeAll, describe, expect, it } from 'vitest';
import { againstPlayerIn } from '../../src/clearance/againstPlayer.ts';
import { type ClearSpotAnswer, clearSpot } from '../../src/clearance/clearSpot.ts';
import { SpotJudge } from '../../src/clearance/clearSpotJudge.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import type { Capsule } from '../../src/geometry/capsule.ts';
import { changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { isDrum, isStruck } from '../../src/layout/pieces/piece.ts';
import { seatedOf } from '../../src/player/seated.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { PlacedMic } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { overHead } from '../report/cantStaySamples.ts';
import { type GridScene, gridSpot, keepsAim, standsNoWorse } from '../support/spotGrid.ts';
import { startingKit } from './kits.ts';

const kit = startingKit('five-piece-one-rack');

/** A mic of the five-piece moved, and where it is led. */
function ledFrom(name: string, change: Partial<StandMount>) {
  const mic = kit.mics.find((one) => one.name === name);
  if (mic?.mount.kind !== 'stand') throw new Error(`${name} on a stand was expected`);
  const mount = { ...mic.mount, ...change };
  const layout = changeMount(kit, mic.id, () => mount);
  const rig = buildRig(layout);
  const motion = motionOf(layout.player, layout.pieces);
  const answer = clearSpot(motion, layout, rig, mic.id);
  const found = (of: typeof layout) => {
    const placed = buildRig(of).mics.find((one) => one.mic.id === mic.id);
    if (!placed) throw new Error('the mic was expected');
    return { against: againstPlayerIn(of)(placed), room: reachOf(motion, placed).clearance };
  };
  if (answer.kind !== 'spot') return { answer, before: found(layout), after: undefined };
  const there = changeMount(layout, mic.id, () => answer.mic.mount);
  return { answer, before: found(layout), after: found(there) };
}

it('rule N4: a mic in the head is led away from the player', () => {
  const { answer, before, after } = ledFrom('Overhead, hi-hat side', {
    tip: { x: -40, y: 60, z: 1390 },
    base: { x: -700, y: -300 },
  });
  expect(before.against.map(({ code }) => code)).toContain('mic-in-player');
  expect(answer).toMatchObject({ kind: 'spot' });
  expect(after?.against).toEqual([]);
  expect(after?.room).toBeGreaterThanOrEqual(kit.margin);
}, 120_000);

const sceneOf = (layout: Layout): GridScene => ({
  layout,
  rig: buildRig(layout),
  motion: motionOf(layout.player, layout.pieces),
});

const placedIn = ({ rig }: GridScene, id: string): PlacedMic => {
  const placed = rig.mics.find(({ mic }) => mic.id === id);
  if (!placed) throw new Error(`a mic ${id} was expected`);
  return placed;
};

/** Points along the axis of a capsule, its ends among them. */
const pointsOf = ({ a, b }: Capsule, count: number) =>
  Array.from({ length: count }, (_, k) => {
    const t = k / (count - 1);
    return [a.x + t * (b.x - a.x), a.y + t * (b.y - a.y), a.z + t * (b.z - a.z)] as const;
  });

/** How near a mic, but for its feet, comes to head, neck, shoulders and trunk, by points along their axes: never less than it is, mm. */
function sampledGap({ player }: Layout, { solids }: PlacedMic): number {
  const { head, neck, shoulders, trunk } = seatedOf(player);
  let least = Number.POSITIVE_INFINITY;
  for (const { part, capsule } of solids) {
    if (part === 'base') continue;
    for (const other of [...head, neck, shoulders, ...trunk]) {
      for (const [x, y, z] of pointsOf(capsule, 120)) {
        for (const [u, v, w] of pointsOf(other, 60)) {
          const gap = Math.hypot(x - u, y - v, z - w) - capsule.radius - other.radius;
          least = Math.min(least, gap);
        }
      }
    }
  }
  return least;
}

/** The large kit, its snare drawn up to the chest of a player who strikes nothing: what is in the way of the snare's mic is the player. */
function snareAtChest(angle: number, margin: number): Layout {
  const large = startingKit('large-kit');
  // Cymbals swing though nobody strikes them.
  const drums = large.pieces.filter((piece) => !isStruck(piece) || isDrum(piece));
  const pieces = drums.map((piece) =>
    isStruck(piece)
      ? {
          ...piece,
          hands: 'none' as const,
          ...(piece.id === 'snare' && { x: 0, y: 400, z: 1050, tilt: 0 }),
        }
      : piece,
  );
  return changeMount({ ...large, pieces, margin }, 'mic-snare', (mount) => ({ ...mount, angle }));
}

interface Near {
  readonly name: string;
  readonly scene: GridScene;
  readonly mic: string;
  readonly answer: ClearSpotAnswer;
}

/** A mic that is far enough from all that moves and near the player, and where it is led. */
function near(name: string, layout: Layout, mic: string): Near {
  const scene = sceneOf(layout);
  const placed = placedIn(scene, mic);
  expect(reachOf(scene.motion, placed).clearance, name).toBeGreaterThanOrEqual(layout.margin);
  const against = againstPlayerIn(layout)(placed);
  expect(
    against.map(({ code }) => code),
    name,
  ).toEqual(['mic-near-player']);
  return { name, scene, mic, answer: clearSpot(scene.motion, layout, scene.rig, mic) };
}

describe('a mic near the player, that all that moves leaves room', () => {
  let all: readonly Near[] = [];
  beforeAll(() => {
    const [hung, overhead] = overHead(startingKit('five-piece-one-rack'), 1445);
    all = [
      near('over the head', hung, overhead),
      ...[
        { angle: 270, margin: 100 },
        { angle: 250, margin: 130 },
        { angle: 300, margin: 160 },
      ].map(({ angle, margin }) =>
        near(`at ${angle} degrees`, snareAtChest(angle, margin), 'mic-snare'),
      ),
    ];
  }, 240_000);

  it('rule N4: is led to where it is not near the player any more, by the engine and by sampling, clear and no worse', () => {
    for (const { name, scene, mic, answer } of all) {
      if (answer.kind !== 'spot') throw new Error(`${name}: a spot was expected`);
      const { layout, motion } = scene;
      const there = placeMic(answer.mic, layout);
      expect(againstPlayerIn(layout)(there), name).toEqual([]);
      expect(sampledGap(layout, there), name).toBeGreaterThanOrEqual(layout.margin);
      expect(reachOf(motion, there).clearance, name).toBeGreaterThanOrEqual(layout.margin);
      const now = placedIn(scene, mic);
      expect(keepsAim(layout, now, there), name).toBe(true);
      expect(standsNoWorse(scene, now, there), name).toBe(true);
    }
  });

  it('rule N5: no spot is much dearer than the cheapest of a grid', () => {
    const grids = [
      { mm: [12, 48], degrees: [4, 12] },
      { mm: [30, 60], degrees: [10, 120] },
    ] as const;
    const faults = all.flatMap(({ name, scene, mic, answer }) => {
      if (answer.kind !== 'spot') return [`${name}: none`];
      const other = gridSpot(scene, mic, { grids, dearest: answer.cost });
      return !other || answer.cost <= Math.max(1.1 * other.cost, other.cost + 10)
        ? []
        : [`${name}: ${answer.cost}, on the grid ${other.cost} ${JSON.stringify(other.mount)}`];
    });
    expect(faults).toEqual([]);
  }, 240_000);

  it('rule N8: may have the room over its head that it has already, for it stands in no piece', () => {
    const missing = (height: number) => {
      const layout = changeMount(snareAtChest(270, 100), 'mic-snare', (mount) => ({
        ...mount,
        height,
      }));
      const scene = sceneOf(layout);
      const now = placedIn(scene, 'mic-snare');
      const judge = new SpotJudge(layout, scene.rig, now);
      expect(judge.mustLeave).toBe(true);
      const there = changeMount(layout, 'mic-snare', (mount) => ({
        ...mount,
        angle: 90,
        height: 14,
      }));
      return judge.depthAt(placedIn(sceneOf(there), 'mic-snare').mic.mount);
    };
    expect(missing(14)).toBeUndefined();
    expect(missing(17)).toBeCloseTo(3, 3);
  });

  it('rule N7: where none is within reach, a margin as wide as is said has a spot, and one a little wider has none on a grid', () => {
    const ask = (margin: number) => {
      const scene = sceneOf(snareAtChest(270, margin));
      return { scene, answer: clearSpot(scene.motion, scene.layout, scene.rig, 'mic-snare') };
    };
    const { answer: none } = ask(500);
    if (none.kind !== 'none' || none.most === undefined) throw new Error('no spot was expected');
    expect(none.reason).toBe('none-within-reach');
    // There it is the player that is no farther away.
    const { scene, answer } = ask(none.most);
    if (answer.kind !== 'spot') throw new Error('a spot was expected');
    const there = placeMic(answer.mic, scene.layout);
    expect(sampledGap(scene.layout, there)).toBeLessThan(none.most + 2);
    const grids = [{ mm: [20, 60], degrees: [12, 180] }] as const;
    const wider = ask(none.most + 4).scene;
    expect(gridSpot(wider, 'mic-snare', { grids, dearest: 500 })).toBeUndefined();
  }, 240_000);
});
