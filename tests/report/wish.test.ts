import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import { changeClip, moveMicTip, setPlateDepth } from '../../src/layout/edit/mics.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { createAnalyst } from '../../src/report/analyse.ts';
import type { Finding } from '../../src/report/report.ts';
import { takeWish, wishedMove } from '../../src/report/wish.ts';
import type { PlacedMic } from '../../src/rig/placed.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { overHead } from './cantStaySamples.ts';

const kit = STARTING_KITS.find(({ key }) => key === 'five-piece-two-racks')?.make('kit') as Layout;

interface Spot {
  readonly x: number;
  readonly y: number;
}

const wishFor = (mic: string, { x, y }: Spot): Finding => ({
  key: 'wish',
  code: 'mic-move-wished',
  severity: 'warn',
  about: [mic],
  place: { x, y, z: 0 },
  numbers: { distance: 1 },
});

function placed(layout: Layout, id: string): PlacedMic {
  const mic = layout.mics.find((one) => one.id === id);
  if (!mic) throw new Error(`the kit has a ${id}`);
  return placeMic(mic, layout);
}

function standOf(layout: Layout, id: string) {
  const mount = layout.mics.find((mic) => mic.id === id)?.mount;
  if (mount?.kind !== 'stand') throw new Error(`${id} is on a stand`);
  return mount;
}

const rowAfter = (layout: Layout, id: string) =>
  createAnalyst()(layout).clearances.find(({ mic }) => mic === id);

const apart = (p: Spot, q: Spot): number => Math.hypot(p.x - q.x, p.y - q.y);
const reached = (layout: Layout, id: string): number => placed(layout, id).stand?.beyondReach ?? 0;

/** Far more than places are rounded by. */
const ROUNDED = 0.2;
const steps = (from: number, to: number, count: number): readonly number[] =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

describe('what a wish for a spot becomes', () => {
  const id = 'mic-hi-hat';
  const { tip } = standOf(kit, id);
  const way = fc.record({
    length: fc.integer({ min: 5, max: 3000 }),
    toward: fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
  });

  test('W1: a mic on a stand keeps base, height and aim and goes straight there, as far as its boom reaches', () => {
    let short = 0;
    fc.assert(
      fc.property(way, ({ length, toward }) => {
        const along = (by: number): Spot => ({
          x: tip.x + by * Math.cos(toward),
          y: tip.y + by * Math.sin(toward),
        });
        const wish = wishedMove(wishFor(id, along(length)), kit);
        const gone = wish ? apart(tip, wish.to) : 0;
        if (wish) {
          const after = takeWish(kit, id, wish.to);
          const { tip: now, ...others } = standOf(after, id);
          const { tip: _, ...before } = standOf(kit, id);
          expect([others, now.z]).toEqual([before, tip.z]);
          expect(apart(now, along(gone))).toBeLessThan(ROUNDED);
          expect(wish.short).toBeCloseTo(apart(now, along(length)), 0);
          expect(reached(after, id)).toBe(0);
        }
        if (gone > length - 1) return;
        short += 1;
        expect(reached(moveMicTip(kit, id, along(gone + 2)), id)).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
    expect(short).toBeGreaterThan(10);
  });

  test('W1: where the boom did not reach before, the mic goes all the way', () => {
    const beyond = moveMicTip(kit, id, { x: tip.x - 4000, y: tip.y });
    expect(reached(beyond, id)).toBeGreaterThan(0);
    const spot = { x: tip.x - 3000, y: tip.y + 500 };
    expect(wishedMove(wishFor(id, spot), beyond)).toMatchObject({ to: spot, short: 0 });
  });

  test('W2: a clip goes to where no other place of its rim, in or out, is nearer', () => {
    const clip = 'mic-rack-1';
    const rack = kit.pieces.find((piece) => piece.id === 'rack-1');
    if (rack?.kind !== 'rackTom') throw new Error('a rack tom');
    const tips = steps(0, 359, 72).flatMap((angle) =>
      steps(-60, 300, 36).map((reach) => placed(changeClip(kit, clip, { angle, reach }), clip).tip),
    );
    const offset = fc.integer({ min: -400, max: 400 });
    fc.assert(
      fc.property(offset, offset, (x, y) => {
        const spot = { x: rack.x + x, y: rack.y + y };
        const wish = wishedMove(wishFor(clip, spot), kit);
        const short = wish?.short ?? apart(placed(kit, clip).tip, spot);
        for (const other of tips) expect(apart(other, spot)).toBeGreaterThan(short - 1);
        if (!wish) return;
        const { mount } = takeWish(kit, clip, wish.to).mics.find((mic) => mic.id === clip) ?? {};
        const before = kit.mics.find((mic) => mic.id === clip)?.mount;
        if (mount?.kind !== 'clip' || before?.kind !== 'clip') throw new Error('a clip');
        expect([mount.pitch, mount.height]).toEqual([before.pitch, before.height]);
      }),
      { numRuns: 20 },
    );
  });

  test('W2: a plate in a kick goes along it, to its nearest depth', () => {
    const plate = 'mic-kick-plate';
    const kick = kit.pieces.find((piece) => piece.kind === 'kick');
    if (kick?.kind !== 'kick') throw new Error('a kick drum');
    const at = (depth: number) => placed(setPlateDepth(kit, plate, depth), plate).tip;
    const [front, back] = [at(0), at(kick.depth)];
    const beyond = (share: number): Spot => ({
      x: front.x + share * (back.x - front.x),
      y: front.y + share * (back.y - front.y),
    });
    for (const { x, y } of [front, at(100), back, beyond(-0.5), beyond(1.5)]) {
      const wish = wishedMove(wishFor(plate, { x: x + 30, y }), kit);
      const nearest = Math.min(
        ...steps(0, kick.depth, kick.depth).map((d) => apart(at(d), { x: x + 30, y })),
      );
      expect(wish?.short).toBeLessThan(nearest + 1);
      const mount =
        wish && takeWish(kit, plate, wish.to).mics.find((mic) => mic.id === plate)?.mount;
      if (mount?.kind !== 'plateInKick') throw new Error('a plate in a kick');
      expect(mount.depth).toBeGreaterThanOrEqual(0);
      expect(mount.depth).toBeLessThanOrEqual(kick.depth);
    }
  });

  test('W2: a plate on the deck goes there', () => {
    const plate = 'mic-kick-plate';
    const mics = kit.mics.map((mic) =>
      mic.id === plate
        ? { ...mic, mount: { kind: 'plateOnDeck', x: 0, y: 900, turn: 0 } as const }
        : mic,
    );
    const layout = { ...kit, mics };
    const { x, y } = placed(layout, plate).tip;
    const wish = wishedMove(wishFor(plate, { x: x - 700, y: y + 50 }), layout);
    expect(wish?.short).toBeLessThan(ROUNDED);
  });

  test('tells the clearance that the analysis then tells', () => {
    const { x, y } = placed(kit, id).tip;
    let told = 0;
    for (const [dx, dy] of [
      [60, 0],
      [-120, 40],
      [0, 90],
      [150, -150],
    ] as const) {
      const wish = wishedMove(wishFor(id, { x: x + dx, y: y + dy }), kit);
      if (!wish) continue;
      told += 1;
      const row = rowAfter(takeWish(kit, id, wish.to), id);
      expect(wish.clearance).toBeCloseTo(row?.clearance ?? Number.NaN, 1);
    }
    expect(told).toBeGreaterThan(2);
  });

  test('tells how deep the mic would be in the player, and of one that is only near its clearance', () => {
    for (const z of [1250, 1440]) {
      const [layout, mic] = overHead(kit, z);
      const aside = moveMicTip(layout, mic, { x: 0, y: -700 });
      const wish = wishedMove(wishFor(mic, { x: 0, y: 0 }), aside);
      if (!wish) throw new Error('the mic comes nearer');
      expect(wish.short).toBeLessThan(ROUNDED);
      const after = takeWish(aside, mic, wish.to);
      const within = createAnalyst()(after).findings.find(({ code }) => code === 'mic-in-player');
      const expected = within ? -(within.numbers['depth'] ?? 0) : rowAfter(after, mic)?.clearance;
      expect(within !== undefined, `${z} mm high`).toBe(z === 1250);
      expect(wish.clearance).toBeCloseTo(expected ?? Number.NaN, 1);
    }
  });

  test('is nothing where the mic is already as near as its mount lets it come', () => {
    expect(wishedMove(wishFor(id, tip), kit)).toBeNull();
    expect(wishedMove({ ...wishFor(id, { x: 0, y: 0 }), numbers: {} }, kit)).toBeNull();
    const clip = placed(kit, 'mic-rack-1').tip;
    const there = wishedMove(wishFor('mic-rack-1', clip), kit);
    expect(there).toBeNull();
  });
});
