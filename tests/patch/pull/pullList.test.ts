import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standSpec } from '../../../src/layout/catalogue/standClasses.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { DEFAULT_PATCH } from '../../../src/layout/patch.ts';
import { type PullLine, type PullNeeds, pullList } from '../../../src/patch/pull/pullList.ts';
import { usualSplit } from '../../../src/patch/splits/split.ts';
import { kit, kits } from '../../rig/kits.ts';
import { randomKit } from '../../support/randomKit.ts';
import { patchWith } from '../scenes.ts';

const noSpares = { usual: { percent: 0, least: 0 }, byKind: {} };
const nothing: PullNeeds = { cables: [], sandbags: 0 };
const sum = (lines: readonly PullLine[], kind: PullLine['kind']): number =>
  lines.filter((line) => line.kind === kind).reduce((total, line) => total + line.total, 0);
const told = (lines: readonly PullLine[]) =>
  lines.map(({ kind, which, needed, spare }) => `${kind} ${which}: ${needed} + ${spare}`);

describe('pull list', () => {
  // Counted by hand from the kit's file: 9 mics, 3 clips, 5 stands, a plate.
  it('of the five-piece kit with two rack toms, with splits and cables', () => {
    const cables = [
      { length: 5000, count: 6 },
      { length: 3000, count: 3 },
    ];
    const y = { ...usualSplit('y', 'mic-snare', 'Recorder'), kind: 'y' as const };
    const patch = patchWith({ splits: [usualSplit('s', 'mic-kick-in', 'Seat shaker'), y] });
    expect(told(pullList(kit('five-piece-two-racks'), patch, { cables, sandbags: 2 }))).toEqual([
      'mic kick-dynamic: 1 + 1',
      'mic boundary-plate: 1 + 1',
      'mic short-dynamic: 1 + 1',
      'mic pencil-condenser: 3 + 1',
      'mic compact-dynamic: 3 + 1',
      'rimClip rubber: 3 + 1',
      'micHolder : 5 + 1',
      'stand tripodLow: 2 + 1',
      'stand tripodMedium: 1 + 1',
      'stand tripodTall: 2 + 1',
      'base tripod: 5 + 3',
      'boom : 5 + 3',
      'counterweight : 3 + 2',
      'sandbag : 2 + 0',
      'cable 3000: 3 + 1',
      'cable 5000: 6 + 1',
      'cable splitLeg: 3 + 1',
      'box 12: 1 + 0',
      'tail 15000: 1 + 0',
      'splitter 2: 1 + 1',
      'yLead 2: 1 + 1',
      'tape : 1 + 1',
    ]);
  });

  it('P1: counts every mic of any kit, and how it is held', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const lines = pullList(layout, { ...DEFAULT_PATCH, spares: noSpares }, nothing);
        const held = (mount: string) =>
          layout.mics.filter((mic) => mic.mount.kind === mount).length;
        expect(sum(lines, 'mic')).toBe(layout.mics.length);
        expect(sum(lines, 'rimClip')).toBe(held('clip'));
        expect(sum(lines, 'stand')).toBe(held('stand'));
        expect(sum(lines, 'micHolder')).toBe(held('stand'));
      }),
      { numRuns: 50 },
    );
  });

  it('P2: no box without mics, no tail without length', () => {
    expect(pullList(kit('empty-deck'), patchWith({ tapeRolls: 0 }), nothing)).toEqual([]);
    const layout: Layout = kit('four-piece-jazz');
    const short = { ...layout, box: { ...layout.box, tail: 0 } };
    expect(sum(pullList(short, DEFAULT_PATCH, nothing), 'box')).toBe(1);
    expect(sum(pullList(short, DEFAULT_PATCH, nothing), 'tail')).toBe(0);
  });

  it('P3: parts are those of the stands taken, spare ones included', () => {
    fc.assert(
      fc.property(randomKit, fc.nat({ max: 60 }), fc.nat({ max: 3 }), (layout, percent, least) => {
        const spares = { usual: { percent, least }, byKind: {} };
        const lines = pullList(layout, { ...DEFAULT_PATCH, spares }, nothing);
        const taken = layout.mics.flatMap(({ mount }) =>
          mount.kind === 'stand' ? [mount.stand] : [],
        );
        const stands = lines.filter(({ kind }) => kind === 'stand');
        expect(new Set(stands.map(({ which }) => which))).toEqual(new Set(taken));
        const having = (has: (stand: (typeof taken)[number]) => boolean) =>
          [...new Set(taken)]
            .filter(has)
            .reduce((n, one) => n + (stands.find(({ which }) => which === one)?.total ?? 0), 0);
        expect(sum(lines, 'base')).toBe(having(() => true));
        expect(sum(lines, 'boom')).toBe(having((stand) => stand !== 'roundStraight'));
        expect(sum(lines, 'counterweight')).toBe(
          having((stand) => standSpec(stand).counterweightMass > 0),
        );
      }),
      { numRuns: 50 },
    );
  });

  it('P4: with spares of each there is at least one more of every sort that has spares', () => {
    for (const layout of kits) {
      for (const { kind, spare } of pullList(layout, DEFAULT_PATCH, nothing)) {
        expect([kind, spare > 0]).toEqual([kind, !['box', 'tail', 'sandbag'].includes(kind)]);
      }
    }
  });

  it('P5: cables of one length are one line, counts that are none count for nothing', () => {
    const cables = [
      { length: 5000, count: 2 },
      { length: 5000, count: 1.5 },
      { length: 5000, count: -1 },
      { length: 3000, count: -4 },
      { length: 2000, count: 0 },
    ];
    const lines = pullList(kit('empty-deck'), patchWith({ tapeRolls: -1 }), {
      cables,
      sandbags: -2,
    });
    expect(told(lines)).toEqual(['cable 5000: 4 + 1']);
  });

  it('does not depend on the order of mics or cables, but for the order of its lines', () => {
    const layout = kit('large-kit');
    const sorted = (lines: readonly PullLine[]) => told(lines).toSorted();
    const cables = [3000, 5000, 10_000].map((length) => ({ length, count: 3 }));
    const whole = sorted(pullList(layout, DEFAULT_PATCH, { cables, sandbags: 1 }));
    expect(whole.length).toBeGreaterThan(15);
    const shuffled = fc.shuffledSubarray(layout.mics, { minLength: layout.mics.length });
    fc.assert(
      fc.property(shuffled, (mics) => {
        const needs = { cables: cables.toReversed(), sandbags: 1 };
        expect(sorted(pullList({ ...layout, mics }, DEFAULT_PATCH, needs))).toEqual(whole);
      }),
      { numRuns: 20 },
    );
  });
});
