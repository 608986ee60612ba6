import { describe, expect, it } from 'vitest';
import { createClearances, verdictOf } from '../../src/clearance/clearances.ts';
import { motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import type { MicClearance, Movement } from '../../src/clearance/nearest.ts';
import { TOLERANCE } from '../../src/clearance/searchBounds.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { seededKits } from '../support/randomKit.ts';
import { startingKits } from './kits.ts';

const kits: readonly Layout[] = [...startingKits, ...seededKits(100, 3)];
const clearancesOf = (layout: Layout): readonly MicClearance[] =>
  createClearances()(layout, buildRig(layout).mics);

describe('a mirrored kit', () => {
  const other = { right: 'left', left: 'right' } as const;
  function swapped(movement: Movement | undefined): Movement | undefined {
    if (!movement || movement.kind === 'swing') return movement;
    if (movement.kind === 'leg') return { ...movement, foot: other[movement.foot] };
    return { ...movement, hand: other[movement.hand] };
  }

  it('has exactly the same clearances, by the mirrored movement at the same time', () => {
    for (const kit of kits) {
      const here = clearancesOf(kit);
      const there = clearancesOf(mirrorKit(kit));
      const facts = (rows: readonly MicClearance[], swap: (m: Movement | undefined) => unknown) =>
        rows.map(({ mic, verdict, clearance, nearest }) => ({
          mic,
          verdict,
          clearance,
          movement: swap(nearest?.movement),
          part: nearest?.part,
          micPart: nearest?.micPart,
        }));
      expect(facts(there, swapped), kit.name).toEqual(facts(here, (movement) => movement));
      expect(there.every(({ clearance }, k) => clearance === here[k]?.clearance)).toBe(true);
    }
  });

  it('has exactly mirrored places', () => {
    const text = (rows: readonly MicClearance[], sign: 1 | -1) =>
      rows.map(({ nearest }) =>
        [nearest?.onMic, nearest?.onMoving].map((p) => p && [sign * p.x + 0, p.y + 0, p.z + 0]),
      );
    for (const kit of kits) {
      expect(text(clearancesOf(mirrorKit(kit)), -1), kit.name).toEqual(text(clearancesOf(kit), 1));
    }
  });
});

describe('a larger margin', () => {
  it('never makes a mic clearer, and changes no clearance', () => {
    const rank = { struck: 0, tight: 1, clear: 2 };
    for (const kit of kits) {
      const small = clearancesOf({ ...kit, margin: 20 });
      const large = clearancesOf({ ...kit, margin: 80 });
      for (const [index, { verdict, clearance }] of large.entries()) {
        const before = small[index];
        if (!before) throw new Error('the same mics were expected');
        expect(rank[verdict]).toBeLessThanOrEqual(rank[before.verdict]);
        expect(clearance).toBe(before.clearance);
      }
    }
  });
});

describe('rule C3: verdicts', () => {
  it.each([
    [-30, 50, 'struck'],
    [-1e-9, 50, 'struck'],
    [0, 50, 'tight'],
    [49.999, 50, 'tight'],
    [50, 50, 'clear'],
    [Number.POSITIVE_INFINITY, 50, 'clear'],
    [0, 0, 'clear'],
    [-1e-9, 0, 'struck'],
  ] as const)('%s mm with a margin of %s mm is %s', (clearance, margin, verdict) => {
    expect(verdictOf(clearance, margin)).toBe(verdict);
  });

  it('are those of the layout', () => {
    for (const kit of kits) {
      for (const { verdict, clearance } of clearancesOf(kit)) {
        expect(verdict).toBe(verdictOf(clearance, kit.margin));
      }
    }
  });
});

describe('a piece taken away', () => {
  it('never lowers the clearance of a mic', () => {
    for (const kit of [...startingKits, ...seededKits(40, 4)]) {
      const { mics } = buildRig(kit);
      const before = motionOf(kit.player, kit.pieces);
      const clearances = mics.map((placed) => reachOf(before, placed).clearance);
      for (const gone of kit.pieces.filter(isStruck)) {
        const left = motionOf(
          kit.player,
          kit.pieces.filter((piece) => piece !== gone),
        );
        for (const [index, placed] of mics.entries()) {
          const now = reachOf(left, placed).clearance;
          expect(now).toBeGreaterThanOrEqual((clearances[index] ?? 0) - TOLERANCE);
        }
      }
    }
  });
});

describe('a mic', () => {
  it('with one solid less is never less clear', () => {
    for (const kit of seededKits(40, 5)) {
      const motion = motionOf(kit.player, kit.pieces);
      for (const placed of buildRig(kit).mics) {
        const { clearance } = reachOf(motion, placed);
        const solids = placed.solids.slice(1);
        expect(reachOf(motion, { solids }).clearance).toBeGreaterThanOrEqual(clearance - TOLERANCE);
      }
    }
  });

  it('thicker all round by 10 mm is 10 mm less clear', () => {
    for (const kit of seededKits(40, 6)) {
      const motion = motionOf(kit.player, kit.pieces);
      for (const placed of buildRig(kit).mics) {
        const solids = placed.solids.map(({ part, capsule }) => ({
          part,
          capsule: { ...capsule, radius: capsule.radius + 10 },
        }));
        const { clearance } = reachOf(motion, placed);
        expect(
          Math.abs(reachOf(motion, { solids }).clearance + 10 - clearance),
        ).toBeLessThanOrEqual(TOLERANCE + 1e-9);
      }
    }
  });

  it('moved by some mm is at most that much clearer or less clear', () => {
    for (const [index, kit] of seededKits(40, 8).entries()) {
      const motion = motionOf(kit.player, kit.pieces);
      const [dx, dy, dz] = [3 + index, -2 * index, index - 20];
      const move = ({ x, y, z }: { x: number; y: number; z: number }) => ({
        x: x + dx,
        y: y + dy,
        z: z + dz,
      });
      for (const placed of buildRig(kit).mics) {
        const solids = placed.solids.map(({ part, capsule: { a, b, radius } }) => ({
          part,
          capsule: { a: move(a), b: move(b), radius },
        }));
        const change = reachOf(motion, { solids }).clearance - reachOf(motion, placed).clearance;
        expect(Math.abs(change)).toBeLessThanOrEqual(Math.hypot(dx, dy, dz) + TOLERANCE);
      }
    }
  });
});
