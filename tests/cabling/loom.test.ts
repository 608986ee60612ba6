import { describe, expect, it } from 'vitest';
import { boxObstacle } from '../../src/cabling/box.ts';
import { type Loom, type LoomSettings, loomOf } from '../../src/cabling/loom.ts';
import { type CableRouting, createCableRouter } from '../../src/cabling/routeRuns.ts';
import { passesThrough } from '../../src/geometry/convexPolygon.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import type { Rig } from '../../src/rig/placed.ts';
import {
  bareLayout,
  hangingMic,
  type Spot,
  startingLayout,
  startingLayouts,
  withMics,
} from './scenes.ts';

const usual: LoomSettings = { neatness: 0.5, longest: 1.3 };

interface Gathered {
  readonly routing: CableRouting;
  readonly loom: Loom;
}

function gather(layout: Layout, settings = usual, rig: Rig = buildRig(layout)): Gathered {
  const routing = createCableRouter()(layout, rig);
  return { routing, loom: loomOf(layout, rig, routing, settings) };
}

/** The starting layouts, and some of them with their box beside the deck or in the kick. */
const layouts: readonly Layout[] = [
  ...startingLayouts,
  ...startingLayouts.map((layout) => ({
    ...layout,
    box: { ...layout.box, x: -layout.deck.width / 2 - 400, turn: 180 },
  })),
  ...startingLayouts.map((layout) => ({
    ...layout,
    box: { ...layout.box, x: layout.deck.kit.x, y: layout.deck.kit.y + 650 },
  })),
];

const passes = (shape: Parameters<typeof passesThrough<'deck'>>[0], way: readonly Spot[]) =>
  way.some((p, i) => passesThrough(shape, way[i - 1] ?? p, p));

describe('the loom of a layout', () => {
  it('holds every run from its own start to its own input, with parts that add up', () => {
    for (const layout of layouts) {
      const { routing, loom } = gather(layout);
      expect(loom.runs.map(({ run }) => run.mic)).toEqual(layout.mics.map(({ id }) => id));
      for (const [i, { run, shortest, extra }] of loom.runs.entries()) {
        const own = routing.runs[i];
        expect(run.route[0]).toEqual(own?.route[0]);
        expect(run.route.at(-1)).toEqual(own?.route.at(-1));
        expect(shortest).toBe(own?.total);
        expect(extra).toBe(run.total - shortest);
        expect(run.parts.find(({ what }) => what === 'deck')?.length).toBe(wayLength(run.route));
        expect(run.parts.reduce((sum, { length }) => sum + length, 0)).toBe(run.total);
      }
    }
  });

  it('M2: makes no way over the floor longer than it may, at any neatness', () => {
    for (const layout of layouts) {
      for (const settings of [
        usual,
        { neatness: 1, longest: 1.3 },
        { neatness: 1, longest: 1.05 },
      ]) {
        const { routing, loom } = gather(layout, settings);
        for (const [i, { run }] of loom.runs.entries()) {
          const own = wayLength(routing.runs[i]?.route ?? []);
          expect(wayLength(run.route)).toBeLessThanOrEqual(settings.longest * own + 1e-6);
        }
      }
    }
  });

  it('M3: passes nothing that its runs alone do not pass, the foot space first of all', () => {
    for (const layout of layouts) {
      const { routing, loom } = gather(layout, { neatness: 1, longest: 1.3 });
      for (const obstacle of [...routing.obstacles, ...boxObstacle(layout)]) {
        for (const [i, { run }] of loom.runs.entries()) {
          const own = routing.runs[i]?.route ?? [];
          if (passes(obstacle.outline, own)) continue;
          expect(passes(obstacle.outline, run.route)).toBe(false);
        }
      }
    }
  });

  it('M1: lays less the neater it is, for more cable; without neatness every run keeps its own way', () => {
    for (const layout of startingLayouts.filter(({ mics }) => mics.length > 0)) {
      const [own, usually, neat] = [0, 0.5, 1].map((neatness) =>
        gather(layout, { ...usual, neatness }),
      );
      if (!own || !usually || !neat) throw new Error('three looms were expected');
      expect(own.loom.runs.map(({ run }) => run)).toEqual(own.routing.runs);
      expect(usually.loom.laid).toBeLessThan(0.75 * own.loom.laid);
      expect(usually.loom.cable).toBeGreaterThanOrEqual(own.loom.cable);
      expect(usually.loom.cable).toBeLessThan(1.15 * own.loom.cable);
      expect(neat.loom.laid).toBeLessThanOrEqual(usually.loom.laid);
      expect(neat.loom.cable).toBeGreaterThanOrEqual(usually.loom.cable);
    }
  });

  it('says for every line which mics are in it, and counts it once', () => {
    for (const layout of layouts) {
      const { loom } = gather(layout);
      const laid = loom.stretches.reduce((sum, { points }) => sum + wayLength(points), 0);
      expect(loom.laid).toBeCloseTo(laid, 6);
      const cable = loom.stretches.reduce((sum, { length, mics }) => sum + length * mics.length, 0);
      // A cable that runs back over its own way counts once there.
      expect(loom.cable - cable).toBeGreaterThan(-1e-6);
      expect(loom.cable - cable).toBeLessThan(1 + 0.01 * loom.cable);
    }
  });

  it('M4: gathers again below the deck, on the way to a box beside it', () => {
    const box = { ...bareLayout.box, x: -5500, y: 1500, turn: 0 };
    const mics = [-1500, 0, 1500].map((y, i) => hangingMic(`mic-${i + 1}`, { x: 2000, y }, i + 3));
    const [layout, rig] = withMics({ ...bareLayout, box }, mics);
    const { loom } = gather(layout, usual, rig);
    const all = loom.stretches.filter((stretch) => stretch.mics.length === 3);
    expect(all.some(({ points }) => points.some(({ x }) => x > -2900))).toBe(true);
    const below = all.map(({ points }) => wayLength(points.filter(({ x }) => x <= -3000)));
    expect(Math.max(...below)).toBeGreaterThan(1800);
  });

  it('breaks out where cables part, thick line aside', () => {
    const mics = [-400, 400].map((y, i) => hangingMic(`mic-${i + 1}`, { x: 2500, y }, i + 4));
    const [layout, rig] = withMics(bareLayout, mics);
    const { loom } = gather(layout, usual, rig);
    const [atMics, atBox, ...none] = [...loom.breakouts].sort((p, q) => q.place.x - p.place.x);
    expect(none).toEqual([]);
    expect(atMics?.groups).toEqual([['mic-1'], ['mic-2']]);
    expect(atBox?.place.x).toBeLessThan(-1500);
    // Weights 1, 1 and 1.5 balance where half the angle between the cables has cosine 0.75.
    expect(atMics?.place.x).toBeCloseTo(2500 - (400 * 0.75) / Math.sqrt(1 - 0.75 ** 2), -1);
  });

  it('M5: leaves the row of inputs to each cable for its own', () => {
    const { loom } = gather(startingLayout('large-kit'));
    const ends = loom.runs.map(({ run }) => run.route.at(-1));
    expect(new Set(ends.map((end) => `${end?.x} ${end?.y}`)).size).toBe(8);
  });

  it('is the same for the same layout, and empty for one without mics', () => {
    const layout = startingLayout('large-kit');
    expect(gather(layout).loom).toEqual(gather(layout).loom);
    const { loom } = gather(startingLayout('empty-deck'));
    expect(loom).toEqual({ runs: [], stretches: [], breakouts: [], laid: 0, cable: 0 });
  });
});
