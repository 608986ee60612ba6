import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { type ClearSpotAnswer, clearSpot } from '../../src/clearance/clearSpot.ts';
import { HeadRoom } from '../../src/clearance/headRoom.ts';
import { motionOf } from '../../src/clearance/micClearance.ts';
import {
  along,
  length,
  perpendicular,
  subtract,
  type Vec3,
  vec,
} from '../../src/geometry/vector.ts';
import { changeMount } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { Mount, StandMount } from '../../src/layout/mics/mount.ts';
import { isDrum, isStruck, type Struck } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { MicPart, MicSolid } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { surfaceOf } from '../../src/rig/surface.ts';
import { seededKits } from '../support/randomKit.ts';
import {
  type GridScene,
  gridSpot,
  isInPiece,
  missingOverHeads,
  standsNoWorse,
} from '../support/spotGrid.ts';
import { startingKit, startingKits } from './kits.ts';

/** A mic lowered into something: a clip as low as it goes, a stand mic 10 mm into a surface. */
function lowered(layout: Layout, { mount, hears }: Mic): readonly Mount[] {
  if (mount.kind === 'clip') return [{ ...mount, height: 5 }];
  if (mount.kind !== 'stand') return [];
  const others = layout.pieces.filter(isStruck).filter(({ id }) => id !== hears[0]);
  return [
    layout.pieces.filter(isStruck).find(({ id }) => id === hears[0]),
    others.find(isDrum),
    others.find((piece) => !isDrum(piece)),
  ].flatMap((piece) => (piece ? [intoPiece(mount, piece)] : []));
}

/** A mic on a stand, moved as a whole until its tip is 10 mm below a surface, halfway from its middle to its edge. */
function intoPiece(mount: StandMount, piece: Struck): StandMount {
  const { centre, normal, radius } = surfaceOf(piece);
  const { base } = mount;
  const from = subtract(mount.tip, centre);
  const side = perpendicular(from, normal);
  const out = along(centre, side, radius / 2 / Math.max(1, length(side)));
  const tip = along(out, normal, -10);
  const moved = { x: base.x + tip.x - mount.tip.x, y: base.y + tip.y - mount.tip.y };
  return { ...mount, tip, base: moved };
}

interface Sunk {
  readonly name: string;
  readonly scene: GridScene;
  readonly micId: string;
  readonly answer: ClearSpotAnswer;
}

const sceneOf = (layout: Layout): GridScene => ({
  layout,
  rig: buildRig(layout),
  motion: motionOf(layout.player, layout.pieces),
});

const placedIn = ({ rig }: GridScene, id: string) => {
  const placed = rig.mics.find(({ mic }) => mic.id === id);
  if (!placed) throw new Error(`a mic ${id} was expected`);
  return placed;
};

/** Every way to lower the first mics on clips and on stands of a kit that ends in a piece. */
function sunk(
  kit: Layout,
  most: { readonly clip: number; readonly stand: number },
): readonly Sunk[] {
  const held = (kind: 'clip' | 'stand') =>
    kit.mics.filter(({ mount }) => mount.kind === kind).slice(0, most[kind]);
  return [...held('clip'), ...held('stand')].flatMap((mic) =>
    lowered(kit, mic).flatMap((mount, k) => {
      const scene = sceneOf(changeMount(kit, mic.id, () => mount));
      if (!isInPiece(scene, placedIn(scene, mic.id))) return [];
      const answer = clearSpot(scene.motion, scene.layout, scene.rig, mic.id);
      return [{ name: `${kit.name}, ${mic.id}, ${k}`, scene, micId: mic.id, answer }];
    }),
  );
}

describe('a mic lowered into its drum, a neighbour or a cymbal', () => {
  let all: readonly Sunk[] = [];
  beforeAll(() => {
    // A clip takes a few hundredths of a second, a stand near one.
    all = [
      ...sunk(startingKit('five-piece-two-racks'), { clip: 3, stand: 2 }),
      ...seededKits(6, 77).flatMap((kit) => sunk(kit, { clip: 3, stand: 1 })),
      ...seededKits(20, 78).flatMap((kit) => sunk(kit, { clip: 2, stand: 0 })),
    ];
  }, 240_000);

  it('is one on a clip as well as one on a stand, and most have a spot', () => {
    const kinds = all.map(({ scene, micId }) => placedIn(scene, micId).mic.mount.kind);
    for (const kind of ['clip', 'stand']) {
      expect(kinds.filter((each) => each === kind).length, kind).toBeGreaterThan(5);
    }
    expect(all.filter(({ answer }) => answer.kind === 'spot').length).toBeGreaterThan(12);
  });

  it('rules N1 and N8: is led to where it has the room over every head that one that stands in nothing has', () => {
    const faults = all.flatMap(({ name, scene, micId, answer }) => {
      if (answer.kind !== 'spot') return [];
      const now = placedIn(scene, micId);
      const there = placeMic(answer.mic, scene.layout);
      const { mount } = answer.mic;
      const missing = missingOverHeads(scene, now, there);
      const isOut = mount.kind !== 'clip' || (mount.height >= 20 && mount.reach <= 75);
      return missing <= 0.011 && isOut && standsNoWorse(scene, now, there)
        ? []
        : [`${name}: ${missing} mm missing, ${JSON.stringify(mount)}`];
    });
    expect(faults).toEqual([]);
  });

  it('rules N5 and N8: none is said to be within reach only where a grid has none, and no spot is much dearer than the grid finds', () => {
    const grids = [
      { mm: [10, 40], degrees: [5, 10] },
      { mm: [60, 240], degrees: [30, 180] },
    ] as const;
    const faults = all.flatMap(({ name, scene, micId, answer }) => {
      if (answer.kind === 'none') {
        expect(answer.reason, name).toMatch(/^none-/);
        if (answer.reason !== 'none-within-reach') return [];
      }
      const cost = answer.kind === 'spot' ? answer.cost : 480;
      const other = gridSpot(scene, micId, { grids, dearest: cost });
      return !other ||
        (answer.kind === 'spot' && cost <= Math.max(1.1 * other.cost, other.cost + 10))
        ? []
        : [`${name}: ${cost}, on the grid ${other.cost} ${JSON.stringify(other.mount)}`];
    });
    expect(faults).toEqual([]);
  }, 120_000);
});

describe('rule N8: room over heads', () => {
  const { pieces } = startingKits.find(({ id }) => id === 'large-kit') ?? startingKit('large-kit');
  const drums = pieces.filter(isDrum);
  const at = (k: number, height: number, aside: number, turn: number): Vec3 => {
    const drum = drums[k % drums.length];
    if (!drum) throw new Error('the kit has drums');
    const { centre, normal, radius } = surfaceOf(drum);
    const across = perpendicular(vec(Math.cos(turn), Math.sin(turn), 0), normal);
    return along(along(centre, across, (aside * radius) / length(across)), normal, height);
  };
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const start = fc.record({ k: fc.nat({ max: 9 }), height: share, aside: share, turn: share });
  const way = fc.record({
    turn: share,
    up: fc.double({ min: -1, max: 1, noNaN: true }),
    far: share,
  });
  const toward = ({ turn, up, far }: { turn: number; up: number; far: number }): Vec3 => {
    const flat = Math.sqrt(1 - up ** 2) * far;
    return vec(flat * Math.cos(7 * turn), flat * Math.sin(7 * turn), up * far);
  };
  const body = (a: Vec3, b: Vec3, radius: number, part: MicPart = 'body'): MicSolid => ({
    part,
    capsule: { a, b, radius },
  });
  const ball = (at: Vec3): readonly MicSolid[] => [body(at, at, 8)];
  /** A body of a mic that lies any way, up to 300 mm long, one end near a head. */
  const lying = fc.record({ start, way, radius: fc.double({ min: 2, max: 40, noNaN: true }) });
  const solidOf = ({ start: { k, height, aside, turn }, way, radius }: Lying): MicSolid => {
    const a = at(k, 80 * height - 30, 1.3 * aside, 7 * turn);
    return body(a, along(a, toward(way), 300), radius);
  };
  type Lying = typeof lying extends fc.Arbitrary<infer T> ? T : never;

  it('what goes less far than it is too near by is still too near', () => {
    fc.assert(
      fc.property(lying, way, (lies, { far, ...round }) => {
        const heads = new HeadRoom(pieces, undefined);
        const solid = solidOf(lies);
        const depth = heads.depthAt([solid]);
        fc.pre(depth !== undefined && depth > 0.02);
        const by = toward({ ...round, far: 0.999 * far * ((depth ?? 0) - 0.02) });
        const { a, b, radius } = solid.capsule;
        const moved = body(along(a, by, 1), along(b, by, 1), radius);
        expect(heads.depthAt([moved])).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });

  it('is as much as by dense sampling of the axis, whatever lies how over which head', () => {
    let inside = 0;
    fc.assert(
      fc.property(lying, (lies) => {
        const solid = solidOf(lies);
        const depth = new HeadRoom(pieces, undefined).depthAt([solid]) ?? 0;
        const { a, b, radius } = solid.capsule;
        const places = 2000;
        let [most, where] = [0, 0];
        for (const drum of drums) {
          const { centre, normal, radius: wide } = surfaceOf(drum);
          for (let k = 0; k <= places; k += 1) {
            const from = subtract(along(a, subtract(b, a), k / places), centre);
            const height = from.x * normal.x + from.y * normal.y + from.z * normal.z;
            const missing = Math.min(
              20 + radius - height,
              wide + radius - length(perpendicular(from, normal)),
              height + drum.depth + radius,
            );
            if (missing > most) [most, where] = [missing, k];
          }
        }
        if (where > 0 && where < places) inside += 1;
        expect(Math.abs(depth - most)).toBeLessThan(0.16);
      }),
      { numRuns: 300, seed: 5 },
    );
    // Places in the midst of an axis are most in the way often enough to be seen.
    expect(inside).toBeGreaterThan(10);
  });

  it('a fat mic that lies flat is too near with its body, 18 mm of it missing, but not with its own clip', () => {
    const heads = new HeadRoom(pieces, undefined);
    const [a, b] = [at(0, 21, 0.3, 1), at(0, 21, 0.7, 1)];
    expect(heads.depthAt([body(a, b, 19)])).toBeCloseTo(18, 6);
    expect(heads.depthAt([body(a, b, 1)])).toBeUndefined();
    expect(heads.depthAt([body(a, b, 19, 'clipArm')])).toBeUndefined();
    // The rear end counts as the front does, and so does a plug.
    expect(heads.depthAt([body(at(0, 90, 0.3, 1), b, 19, 'connector')])).toBeCloseTo(18, 6);
  });

  it('a mic has what it has already over the same head, and no more than 20 mm is asked for', () => {
    const [low, high, beside] = [at(0, 20, 0.5, 1), at(0, 33, 0.5, 1), at(0, 20, 1.2, 1)];
    const near = ball(at(0, 19.9, 0.2, 3));
    const already = new HeadRoom(pieces, ball(low));
    expect(already.depthAt(ball(at(0, 20.1, 0.2, 3)))).toBeUndefined();
    expect(already.depthAt(near)).toBeCloseTo(0.1, 3);
    expect(already.depthAt(ball(at(1, 20, 0.5, 1)))).toBeCloseTo(8, 6);
    expect(already.over(drums[0]?.id ?? '')).toBeCloseTo(12, 3);
    expect(already.over(drums[1]?.id ?? '')).toBe(20);
    for (const elsewhere of [ball(high), ball(beside), undefined]) {
      const heads = new HeadRoom(pieces, elsewhere);
      expect(heads.depthAt(near)).toBeCloseTo(8.1, 6);
      expect(heads.depthAt(ball(at(0, 28.1, 0.2, 3)))).toBeUndefined();
    }
    // What is in the head has no place there.
    expect(new HeadRoom(pieces, ball(at(0, 5, 0.5, 1))).over(drums[0]?.id ?? '')).toBe(20);
  });
});
