import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type AgainstPlayer,
  againstPlayerIn,
  createAgainstPlayer,
} from '../../src/clearance/againstPlayer.ts';
import type { Capsule } from '../../src/geometry/capsule.ts';
import { along, distance, subtract, type Vec3, vec } from '../../src/geometry/vector.ts';
import { changeMount } from '../../src/layout/edit/mics.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { beatersOf } from '../../src/player/beater.ts';
import { feetOf } from '../../src/player/feet.ts';
import { seatedOf } from '../../src/player/seated.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { MicSolid, PlacedMic } from '../../src/rig/placed.ts';
import { seededKits } from '../support/randomKit.ts';
import { rod, startingKit, startingKits } from './kits.ts';

const kit = startingKit('five-piece-one-rack');
const [placed] = buildRig(kit).mics;
if (!placed) throw new Error('a mic was expected');
const micOf = (solids: readonly MicSolid[]): PlacedMic => ({ ...placed, solids });
const ball = (x: number, y: number, z: number, radius = 15): PlacedMic =>
  micOf(rod(vec(x, y, z), vec(x, y, z), radius));

/** What is found of a mic of the five-piece whose stand is changed. */
function foundWith(name: string, change: Partial<StandMount>): readonly AgainstPlayer[] {
  const mic = kit.mics.find((one) => one.name === name);
  if (mic?.mount.kind !== 'stand') throw new Error(`${name} on a stand was expected`);
  const mount = { ...mic.mount, ...change };
  const layout = changeMount(kit, mic.id, () => mount);
  const there = buildRig(layout).mics.find((one) => one.mic.id === mic.id);
  if (!there) throw new Error('the mic was expected');
  return againstPlayerIn(layout)(there);
}
const told = (found: readonly AgainstPlayer[]) => found.map(({ code, part }) => [code, part]);

describe('Q1: mics in and near the player at rest', () => {
  it('an overhead in the head is found, deep', () => {
    const found = foundWith('Overhead, hi-hat side', {
      tip: { x: 0, y: 0, z: 1250 },
      base: { x: -500, y: -400 },
    });
    expect(told(found)).toEqual([['mic-in-player', 'head']]);
    expect(found[0]?.overlap).toBeGreaterThan(50);
  });

  it('a boom through the trunk is found, deep', () => {
    const found = foundWith('Overhead, hi-hat side', {
      tip: { x: 0, y: 40, z: 700 },
      azimuth: 90,
      pitch: 0,
    });
    expect(told(found)).toEqual([['mic-in-player', 'trunk']]);
    expect(found[0]?.overlap).toBeGreaterThan(100);
  });

  it('a mic before the mouth is near by what is missing of the margin', () => {
    // The face is 107.5 mm before the shoulders at 1750 mm, half way up the head; a ball of 15 mm, 30 mm off it.
    const middle = seatedOf(kit.player).head[0];
    if (!middle) throw new Error('a head was expected');
    const found = againstPlayerIn(kit)(ball(0, 107.5 + 30 + 15, (middle.a.z + middle.b.z) / 2));
    expect(told(found)).toEqual([['mic-near-player', 'head']]);
    expect(found[0]?.overlap).toBeCloseTo(20, 6);
  });

  it('no mic of a starting kit or of the demo is found', () => {
    for (const layout of startingKits) {
      expect(buildRig(layout).mics.flatMap(againstPlayerIn(layout)), layout.id).toEqual([]);
    }
  });

  it('feet of a stand are not asked', () => {
    const [body] = rod(vec(0, 0, 700), vec(0, 0, 700), 15);
    if (!body) throw new Error('a solid was expected');
    expect(againstPlayerIn(kit)(micOf([{ ...body, part: 'base' }]))).toEqual([]);
    expect(againstPlayerIn(kit)(micOf([body]))).toHaveLength(1);
  });
});

describe('Q2: mics where feet and beaters are', () => {
  it('a kick mic over the board is in the way of foot or beater', () => {
    const [over, low] = [160, 60].map((z) =>
      told(foundWith('Kick in', { tip: { x: 145, y: z === 160 ? 680 : 640, z } })),
    );
    expect(over).toEqual([['mic-in-pedal', 'beater']]);
    expect(low).toEqual([['mic-in-pedal', 'foot']]);
  });

  it('a ball in the instep, at the toe, on the axle and in the beater’s way each names its part', () => {
    const at = (y: number, z: number) => told(againstPlayerIn(kit)(ball(150, y, z)));
    expect(at(600, 100)).toEqual([['mic-in-pedal', 'foot']]);
    expect(at(720, 80)).toEqual([['mic-in-pedal', 'foot']]);
    expect(at(770, 140)).toEqual([['mic-in-pedal', 'axle']]);
    expect(at(760, 270)).toEqual([['mic-in-pedal', 'beater']]);
  });

  it('a mic before the batter head beside the beater is free', () => {
    for (const side of [-1, 1]) {
      const tip = vec(150 + side * 80, 810, 270);
      const mic = rod(tip, along(tip, vec(side, -0.3, 0), 120), 20);
      expect(againstPlayerIn(kit)(micOf(mic))).toEqual([]);
    }
  });
});

/** All solids of a kit's player and pedals, by what is said of them. */
function solidsOf({ player, pieces }: Layout): readonly (readonly [body: boolean, Capsule])[] {
  const { head, neck, shoulders, trunk } = seatedOf(player);
  const rest = [
    ...feetOf(player, pieces).flatMap(({ solids }) => solids),
    ...beatersOf(pieces).flatMap(({ swept, frame }) => [...swept, ...frame]),
  ];
  return [
    ...[...head, neck, shoulders, ...trunk].map((solid) => [true, solid] as const),
    ...rest.map((solid) => [false, solid] as const),
  ];
}

/** Points of an axis, at most 2 mm apart. */
function sampled({ a, b }: Capsule): readonly Vec3[] {
  const steps = Math.ceil(distance(a, b) / 2) + 1;
  return Array.from({ length: steps + 1 }, (_, i) => along(a, subtract(b, a), i / steps));
}

/** The gap between two capsules by points of their axes: at most 2 mm above the true one, never below. */
function sampledGap(p: Capsule, q: Capsule): number {
  let least = Number.POSITIVE_INFINITY;
  const others = sampled(q);
  for (const one of sampled(p)) {
    for (const other of others) least = Math.min(least, distance(one, other));
  }
  return least - p.radius - q.radius;
}

const anyCapsule = fc
  .record({
    x: fc.integer({ min: -250, max: 250 }),
    y: fc.integer({ min: -200, max: 850 }),
    z: fc.integer({ min: 0, max: 1500 }),
    dx: fc.integer({ min: -150, max: 150 }),
    dy: fc.integer({ min: -150, max: 150 }),
    dz: fc.integer({ min: -150, max: 150 }),
    radius: fc.integer({ min: 5, max: 35 }),
  })
  .map(
    ({ x, y, z, dx, dy, dz, radius }): Capsule => ({
      a: vec(x, y, z),
      b: vec(x + dx, y + dy, z + dz),
      radius,
    }),
  );

describe('laws of Q1 and Q2', () => {
  it('agree with points sampled densely on all solids', () => {
    const solids = solidsOf(kit);
    let met = 0;
    fc.assert(
      fc.property(anyCapsule, (capsule) => {
        const found = againstPlayerIn(kit)(micOf(rod(capsule.a, capsule.b, capsule.radius)));
        const gapTo = (body: boolean): number =>
          Math.min(
            ...solids.flatMap(([isBody, solid]) =>
              isBody === body ? [sampledGap(capsule, solid)] : [],
            ),
          );
        const [body, rest] = [gapTo(true), gapTo(false)];
        const inBody = found.find(({ code }) => code === 'mic-in-player');
        const near = found.find(({ code }) => code === 'mic-near-player');
        const inPedal = found.find(({ code }) => code === 'mic-in-pedal');
        if (inBody) expect(Math.abs(inBody.overlap + body)).toBeLessThan(2);
        else expect(body).toBeGreaterThan(-0.2);
        if (near) expect(Math.abs(kit.margin - near.overlap - body)).toBeLessThan(2);
        else if (!inBody) expect(body).toBeGreaterThanOrEqual(kit.margin);
        // Told by pedal: the deepest of all is among them.
        if (!inPedal) expect(rest).toBeGreaterThan(-0.2);
        else {
          const deepest = Math.max(
            ...found.map(({ code, overlap }) => (code === 'mic-in-pedal' ? overlap : 0)),
          );
          expect(Math.abs(deepest + rest)).toBeLessThan(2);
        }
        if (found.length > 0) met += 1;
      }),
      { numRuns: 160, seed: 5 },
    );
    expect(met).toBeGreaterThan(10);
  });

  it('a mic far away is never found', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 0, max: 2500 }),
        (turn, z) => {
          const angle = (turn * Math.PI) / 180;
          const mic = ball(1500 * Math.cos(angle), 1500 * Math.sin(angle), z);
          expect(againstPlayerIn(kit)(mic)).toEqual([]);
        },
      ),
    );
  });

  it('going straight out of the body ends what is found once', () => {
    const find = againstPlayerIn(kit);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: 620, max: 1400 }),
        (turn, z) => {
          const angle = (turn * Math.PI) / 180;
          const ranks = Array.from({ length: 120 }, (_, i) => {
            const [found] = find(ball(10 * i * Math.cos(angle), 10 * i * Math.sin(angle), z));
            return { 'mic-in-player': 2, 'mic-near-player': 1, 'mic-in-pedal': 0 }[
              found?.code ?? 'mic-in-pedal'
            ];
          });
          expect(ranks[0]).toBe(2);
          expect(ranks).toEqual(ranks.toSorted((a, b) => b - a));
          expect(ranks.at(-1)).toBe(0);
        },
      ),
    );
  });

  it('a larger margin takes nothing away and deepens only what is near', () => {
    for (const layout of seededKits(20, 41)) {
      const [small, large] = [20, 90].map((margin) =>
        buildRig(layout).mics.flatMap(againstPlayerIn({ ...layout, margin })),
      );
      for (const { code, about, overlap } of small ?? []) {
        const same = large?.find((one) => one.code === code && one.about.join() === about.join());
        expect(same?.overlap).toBeCloseTo(code === 'mic-near-player' ? overlap + 70 : overlap, 6);
      }
    }
  });

  it('a mirrored kit finds the mirrored same', () => {
    let met = 0;
    for (const layout of seededKits(40, 43)) {
      const mirror = mirrorKit(layout);
      const here = buildRig(layout).mics.flatMap(againstPlayerIn(layout));
      const there = buildRig(mirror).mics.flatMap(againstPlayerIn(mirror));
      expect(told(there)).toEqual(told(here));
      for (const [i, { overlap, about, code }] of here.entries()) {
        met += 1;
        expect(there[i]?.about).toEqual(about);
        expect(there[i]?.overlap, code).toBeCloseTo(overlap, 6);
      }
    }
    expect(met).toBeGreaterThan(5);
  });
});

it('kept from one layout to the next it is what a fresh one says, after a change of margin, player or pieces', () => {
  const kept = createAgainstPlayer();
  const near = ball(0, 0, 1500);
  const taller = { ...kit, player: { ...kit.player, seatHeight: kit.player.seatHeight + 60 } };
  const bare = { ...kit, pieces: kit.pieces.filter(({ kind }) => kind !== 'pedal') };
  const atPedal = beatersOf(kit.pieces).map(({ frame: [post] }) =>
    post ? ball(post.a.x, post.a.y, post.a.z) : near,
  );
  const told = new Set<string>();
  for (const layout of [kit, { ...kit, margin: kit.margin + 150 }, taller, kit, bare]) {
    const [of, fresh] = [kept(layout), againstPlayerIn(layout)];
    for (const mic of [near, ...atPedal]) {
      expect(of(mic)).toEqual(fresh(mic));
      told.add(JSON.stringify(fresh(mic)));
    }
  }
  expect(told.size).toBeGreaterThan(3);
});
