import { describe, expect, it } from 'vitest';
import { cablesOf, createCables } from '../../src/cabling/cables.ts';
import { createCableRouter } from '../../src/cabling/routeRuns.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import { changeMic } from '../../src/layout/edit/change.ts';
import { setInput } from '../../src/layout/edit/mics.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import { moveBox, setBox, setCabling, setDeck, setStock } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import { startingLayout, startingLayouts } from './scenes.ts';

const fresh = (layout: Layout) => cablesOf(layout, buildRig(layout));
const movedTip = (layout: Layout, mic: string): Layout =>
  changeMic(layout, mic, (old) =>
    old.mount.kind === 'stand'
      ? { ...old, mount: { ...old.mount, tip: { ...old.mount.tip, z: old.mount.tip.z + 30 } } }
      : old,
  );
const largeKit = startingLayout('large-kit');
const onStand = largeKit.mics.find(({ mount }) => mount.kind === 'stand')?.id ?? '';

describe('the cables of a layout', () => {
  it('K10: what a signal loses is that of all its cable: the same, whether 2 m are in the loop at the box or in its multicore', () => {
    const start = setBox(startingLayout('five-piece-two-racks'), { tail: 60_000 });
    const inLoop = setCabling(start, { loopAtBox: start.cabling.loopAtBox + 2000 });
    const inTail = setBox(start, { tail: 62_000 });
    const losses = (layout: Layout) => fresh(layout).runs.map(({ electrical }) => electrical);
    const [before, loop, tail] = [losses(start), losses(inLoop), losses(inTail)];
    for (const [i, loss] of tail.entries()) {
      expect(loss.loop).toBeCloseTo(loop[i]?.loop ?? Number.NaN, 6);
      expect(loss.lossAt20k).toBeCloseTo(loop[i]?.lossAt20k ?? Number.NaN, 9);
      expect(loss.lossAt20k).toBeGreaterThan(before[i]?.lossAt20k ?? Number.NaN);
    }
  });

  it('are those of the loom: lengths, stock and lines agree', () => {
    for (const layout of startingLayouts) {
      const { runs, loom, stock } = fresh(layout);
      const own = createCableRouter()(layout, buildRig(layout)).runs;
      expect(runs.map(({ mic }) => mic)).toEqual(layout.mics.map(({ id }) => id));
      for (const [i, run] of runs.entries()) {
        expect(run.shortest).toBe(own[i]?.total);
        expect(run.total).toBe(run.shortest + run.extra);
        const cables = [...run.carried, ...run.missing];
        expect(cables.reduce((sum, length) => sum + length, 0)).toBeGreaterThanOrEqual(run.total);
        expect(wayLength(run.route)).toBeLessThanOrEqual(
          1.3 * wayLength(own[i]?.route ?? []) + 1e-6,
        );
        expect(loom.stretches.some(({ mics }) => mics.includes(run.mic))).toBe(true);
      }
      expect(stock.missing).toEqual([]);
    }
  });

  it('gather as far as the layout says: not at all at 0', () => {
    const none = fresh(setCabling(largeKit, { neatness: 0 }));
    const usual = fresh(largeKit);
    const neat = fresh(setCabling(largeKit, { neatness: 1 }));
    expect(none.runs.map(({ extra }) => extra).every((extra) => extra === 0)).toBe(true);
    expect(usual.loom.laid).toBeLessThan(0.75 * none.loom.laid);
    expect(neat.loom.laid).toBeLessThanOrEqual(usual.loom.laid);
    expect(usual.runs.some(({ extra }) => extra > 0)).toBe(true);
  });

  it('with a memory are the same as without, after every edit', () => {
    const edits: readonly ((layout: Layout) => Layout)[] = [
      (l) => movedTip(l, onStand),
      (l) => moveBox(l, { x: l.box.x + 300, y: l.box.y }),
      (l) => setCabling(l, { neatness: 0.8 }),
      (l) => setStock(l, 5000, 3),
      (l) => setInput(l, onStand, 2),
      (l) => movePiece(l, 'kick', { x: 40, y: 900 }),
      (l) => setDeck(l, { height: 300 }),
      (l) => setBox(l, { tail: 100_000 }),
      (l) => ({ ...l, mics: l.mics.slice(1) }),
      (l) => ({ ...l, mics: l.mics.toReversed() }),
      (l) => setCabling(l, { neatness: 0, loopAtMic: 900 }),
    ];
    const cables = createCables();
    const rigOf = createRigBuilder();
    let layout = largeKit;
    cables(layout, rigOf(layout));
    for (const edit of edits) {
      layout = edit(layout);
      expect(cables(layout, rigOf(layout))).toEqual(fresh(layout));
    }
  });

  it('that no change touches are the same objects, runs and lines', () => {
    const cables = createCables();
    const rigOf = createRigBuilder();
    const before = cables(largeKit, rigOf(largeKit));
    const layout = movedTip(largeKit, onStand);
    const now = cables(layout, rigOf(layout));
    const changed = now.runs.filter((run, i) => run !== before.runs[i]).map(({ mic }) => mic);
    expect(changed).toEqual([onStand]);
    expect(now.loom.stretches).toBe(before.loom.stretches);
    // A box that moves changes the lines near to it only.
    const aside = moveBox(layout, { x: layout.box.x + 1, y: layout.box.y });
    const { loom } = cables(aside, rigOf(aside));
    const kept = loom.stretches.filter((line) => now.loom.stretches.includes(line));
    expect(kept.length).toBeGreaterThan(0);
    expect(kept.length).toBeLessThan(loom.stretches.length);
  });
});
