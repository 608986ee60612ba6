import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inputPlace } from '../../src/cabling/box.ts';
import { floorObstacles } from '../../src/cabling/floorObstacles.ts';
import { createCableRouter, routeRuns } from '../../src/cabling/routeRuns.ts';
import type { Run } from '../../src/cabling/run.ts';
import { type ConvexPolygon, isInside, passesThrough } from '../../src/geometry/convexPolygon.ts';
import { wayLength } from '../../src/geometry/plan.ts';
import type { Vec2 } from '../../src/geometry/vector.ts';
import { moveMicTip } from '../../src/layout/edit/mics.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import { movePiece } from '../../src/layout/edit/pieces.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../src/rig/buildRig.ts';
import { toDeck } from '../../src/rig/deckFrame.ts';
import type { PlacedMic } from '../../src/rig/placed.ts';
import { bareLayout, hangingMic, startingLayout, startingLayouts, withMics } from './scenes.ts';

const runsOf = (layout: Layout): readonly Run[] => routeRuns(layout, buildRig(layout));

/** On a deck so large that its edges bound nothing. */
const onWideDeck = (layout: Layout): Layout => ({
  ...layout,
  deck: { ...layout.deck, width: 20_000, depth: 20_000 },
});

/** Kit and box shifted and turned together on the deck. */
function moved(layout: Layout, { dx, dy, turn }: { dx: number; dy: number; turn: number }): Layout {
  const { kit } = layout.deck;
  const frame = { kit: { x: dx, y: dy, turn } };
  const origin = toDeck(frame, { x: kit.x, y: kit.y });
  const box = toDeck(frame, { x: layout.box.x, y: layout.box.y });
  return {
    ...layout,
    deck: { ...layout.deck, kit: { x: origin.x, y: origin.y, turn: kit.turn + turn } },
    box: { ...layout.box, x: box.x, y: box.y, turn: layout.box.turn + turn },
  };
}

/** Kit, deck and box in the mirror; every mic on the input that stands where its own stood. */
function mirrored(layout: Layout): Layout {
  const { deck, box } = layout;
  const row = box.inputs > 8 ? Math.ceil(box.inputs / 2) : box.inputs;
  const other = (input: number): number =>
    Math.floor((input - 1) / row) * row + (row - ((input - 1) % row));
  const kit = mirrorKit(layout);
  return {
    ...kit,
    deck: { ...deck, kit: { x: -deck.kit.x, y: deck.kit.y, turn: -deck.kit.turn } },
    box: { ...box, x: -box.x, turn: 180 - box.turn },
    mics: kit.mics.map((mic) => ({
      ...mic,
      input: mic.input === null ? null : other(mic.input),
    })),
  };
}

describe('the runs of a layout', () => {
  it('are one for every mic, in order, from where its cable comes down to its input', () => {
    for (const layout of startingLayouts) {
      const rig = buildRig(layout);
      const runs = routeRuns(layout, rig);
      expect(runs.map(({ mic, input }) => [mic, input])).toEqual(
        layout.mics.map(({ id, input }) => [id, input]),
      );
      for (const [i, run] of runs.entries()) {
        const placed = rig.mics[i];
        if (!placed) throw new Error('a placed mic was expected');
        expect(run.route[0]).toEqual(toDeck(layout.deck, placed.deckPoint));
        expect(run.route.at(-1)).toEqual(inputPlace(layout, run.input).spot);
      }
    }
  });

  it('pass nothing that stands on the deck but what they come down, and keep the distance between clear ends', () => {
    for (const layout of startingLayouts) {
      const obstacles = floorObstacles(layout, buildRig(layout));
      for (const { route, through, input } of runsOf(layout)) {
        expect(through).toEqual([]);
        const [start] = route;
        const ends = [start, inputPlace(layout, input).before];
        const isAtEnd = (shape: ConvexPolygon<'deck'>): boolean =>
          ends.some((end) => end !== undefined && isInside(shape, end));
        const passes = (shape: ConvexPolygon<'deck'>, way = route): boolean =>
          way.some((p, i) => passesThrough(shape, way[i - 1] ?? p, p));
        const onFloor = obstacles.filter(({ kind }) => kind !== 'box');
        const endsAreClear = !onFloor.some(
          ({ outline, body }) => isAtEnd(outline) && !isAtEnd(body),
        );
        for (const { outline, body } of onFloor) {
          if (isAtEnd(body)) continue;
          expect(passes(body)).toBe(false);
          if (endsAreClear) expect(passes(outline, route.slice(0, -1))).toBe(false);
        }
      }
    }
  });

  it('have parts that add up to their total exactly, the way over the deck as long as its route', () => {
    for (const layout of startingLayouts) {
      for (const { parts, total, route } of runsOf(layout)) {
        let sum = 0;
        for (const { length } of parts) sum += length;
        expect(total).toBe(sum);
        expect(parts.find(({ what }) => what === 'deck')?.length).toBe(wayLength(route));
      }
    }
  });

  it('run straight to their inputs where nothing stands between', () => {
    const spots = fc.record({
      x: fc.integer({ min: -1700, max: 2900 }),
      y: fc.integer({ min: -1900, max: 1900 }),
    });
    fc.assert(
      fc.property(spots, (at) => {
        const [layout, rig] = withMics(bareLayout, [hangingMic('mic', at, 5)]);
        const { spot, before } = inputPlace(layout, 5);
        expect(routeRuns(layout, rig)[0]?.route).toEqual([at, before, spot]);
      }),
    );
  });

  it('are as long wherever kit and box stand and however they are turned together', () => {
    const motion = fc.record({
      dx: fc.integer({ min: -3000, max: 3000 }),
      dy: fc.integer({ min: -3000, max: 3000 }),
      turn: fc.integer({ min: 0, max: 359 }),
    });
    const layouts = startingLayouts.map(onWideDeck);
    fc.assert(
      fc.property(fc.constantFrom(...layouts), motion, (layout, by) => {
        const still = runsOf(layout);
        const turned = runsOf(moved(layout, by));
        for (const [i, { total }] of still.entries()) {
          expect(Math.abs((turned[i]?.total ?? 0) - total)).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('are as long in the mirror', () => {
    for (const layout of startingLayouts) {
      const there = runsOf(mirrored(layout));
      for (const [i, { total }] of runsOf(layout).entries()) {
        expect(Math.abs((there[i]?.total ?? 0) - total)).toBeLessThan(1e-6);
      }
    }
  });

  it('never get shorter when more distance is kept, where their ends stay clear', () => {
    for (const layout of startingLayouts) {
      const keeping = (keepAway: number): Layout => ({
        ...onWideDeck(layout),
        cabling: { ...layout.cabling, keepAway },
      });
      const wide = keeping(70);
      const outlines = floorObstacles(wide, buildRig(wide));
      const lengths = [0, 25, 50, 70].map((keepAway) => runsOf(keeping(keepAway)));
      for (const [i, { route, input }] of (lengths[0] ?? []).entries()) {
        const ends = [route[0], inputPlace(wide, input).before];
        const held = outlines.some(
          ({ outline, kind }) =>
            kind !== 'hub' && ends.some((end) => end !== undefined && isInside(outline, end)),
        );
        if (held) continue;
        const ways = lengths.map((runs) => wayLength(runs[i]?.route ?? []));
        for (const [k, way] of ways.entries()) {
          expect(way).toBeGreaterThanOrEqual((ways[k - 1] ?? 0) - 1e-6);
        }
      }
    }
  });
});

describe('a cable router that is kept', () => {
  const kit = startingLayout('five-piece-two-racks');
  const shift = (layout: Layout, id: string, dx: number): Layout => ({
    ...layout,
    mics: layout.mics.map((mic) =>
      mic.id === id && mic.mount.kind === 'stand'
        ? {
            ...mic,
            mount: { ...mic.mount, base: { ...mic.mount.base, x: mic.mount.base.x + dx } },
          }
        : mic,
    ),
  });
  const edits: readonly ((layout: Layout, by: number) => Layout)[] = [
    (layout) => layout,
    (layout, by) => shift(layout, layout.mics[by % layout.mics.length]?.id ?? '', by - 50),
    (layout, by) => ({ ...layout, box: { ...layout.box, y: layout.box.y + by } }),
    (layout, by) => ({ ...layout, cabling: { ...layout.cabling, keepAway: by } }),
    (layout, by) => ({ ...layout, cabling: { ...layout.cabling, loopAtMic: by } }),
    (layout, by) => ({
      ...layout,
      pieces: layout.pieces.map((piece, i) =>
        i === by % layout.pieces.length && 'x' in piece ? { ...piece, x: piece.x + by } : piece,
      ),
    }),
    (layout, by) => ({
      ...layout,
      deck: { ...layout.deck, kit: { ...layout.deck.kit, turn: by } },
    }),
    (layout) => ({ ...layout, deck: { ...layout.deck, height: layout.deck.height + 10 } }),
    (layout, by) => ({
      ...layout,
      mics: layout.mics.map((mic, i) =>
        i === by % layout.mics.length ? { ...mic, input: mic.input === null ? 3 : null } : mic,
      ),
    }),
    (layout, by) => ({ ...layout, mics: layout.mics.filter((_, i) => i !== by % 20) }),
    (layout) => ({ ...layout, mics: layout.mics.toReversed() }),
  ];

  it('gives what a fresh one gives, through any edits', () => {
    const step = fc.tuple(fc.constantFrom(...edits), fc.integer({ min: 0, max: 100 }));
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 5 }), (steps) => {
        const rigOf = createRigBuilder();
        const route = createCableRouter();
        let layout = kit;
        route(layout, rigOf(layout));
        for (const [edit, by] of steps) {
          layout = edit(layout, by);
          const rig = rigOf(layout);
          const kept = route(layout, rig);
          expect(kept.runs).toEqual(routeRuns(layout, rig));
          expect(kept.obstacles).toEqual(floorObstacles(layout, rig));
        }
      }),
      { numRuns: 15 },
    );
  });

  /** The kit's first mic on a stand, with its stand elsewhere. */
  const standAt = (hub: Vec2): PlacedMic => {
    const stand = buildRig(kit).mics.find((placed) => placed.stand);
    if (!stand?.stand) throw new Error('a mic on a stand was expected');
    const { footprint } = stand.stand;
    const feet = footprint.feet.map((foot) => ({
      x: foot.x - footprint.hub.x + hub.x,
      y: foot.y - footprint.hub.y + hub.y,
    }));
    const placed = { ...stand.stand, footprint: { ...footprint, hub, feet } };
    return { ...stand, deckPoint: hub, stand: placed };
  };

  it('C1: keeps the obstacles of what stands where it stood, a mic with them whose feet did', () => {
    const rigOf = createRigBuilder();
    const route = createCableRouter();
    const overhead = 'mic-overhead-floor-tom-side';
    const first = route(kit, rigOf(kit)).obstacles;
    let known = new Set(first);
    /** Whose obstacles are new. */
    const renewed = (layout: Layout): readonly (string | null)[] => {
      const found = route(layout, rigOf(layout)).obstacles;
      const owners = found.flatMap((one) => (known.has(one) ? [] : [one.owner]));
      known = new Set(found);
      return [...new Set(owners)];
    };
    expect(first.some(({ owner }) => owner === overhead)).toBe(true);
    const raised = moveMicTip(kit, overhead, { x: 500, y: 300, z: 1700 });
    expect(raised).not.toEqual(kit);
    expect(renewed(raised)).toEqual([]);
    const aside = shift(raised, overhead, 40);
    expect(renewed(aside)).toEqual([overhead]);
    const pushed = movePiece(aside, 'floor', { x: 700, y: 100 });
    expect(pushed).not.toEqual(aside);
    expect(renewed(pushed)).toEqual(['floor']);
    const moved = { ...pushed, deck: { ...pushed.deck, kit: { ...pushed.deck.kit, x: 10 } } };
    expect(renewed(moved)).toHaveLength(new Set(first.map(({ owner }) => owner)).size);
    const apart = { ...moved, cabling: { ...moved.cabling, keepAway: 60 } };
    expect(renewed(apart)).toHaveLength(new Set(first.map(({ owner }) => owner)).size);
  });

  it('C2: routes a run again when a stand is put on its way', () => {
    const putAt = (x: number, y: number): PlacedMic => standAt({ x, y });
    const route = createCableRouter();
    const passing = hangingMic('passing', { x: 2000, y: 20 }, 5);
    const [layout, clear] = withMics(bareLayout, [passing, putAt(0, 1500)]);
    const before = route(layout, clear).runs;
    const inTheWay = { ...clear, mics: [passing, putAt(0, 20)] };
    const after = route(layout, inTheWay).runs;
    expect(before[0]?.route.length).toBe(3);
    expect(after[0]?.route.length).toBeGreaterThan(3);
    expect(after).toEqual(routeRuns(layout, inTheWay));
  });

  it('C2: a run that is led out of what it comes down in is what a fresh one is, wherever another stand goes', () => {
    const place = fc.record({
      x: fc.integer({ min: -700, max: 700 }),
      y: fc.integer({ min: -700, max: 700 }),
    });
    const pedal = kit.pieces.find((piece) => piece.kind === 'pedal');
    const base = { ...bareLayout, pieces: pedal ? [{ ...pedal, x: 0, y: 0, turn: 0 }] : [] };
    let keptRuns = 0;
    fc.assert(
      fc.property(place, place, place, (start, before, now) => {
        const cable = hangingMic('in-the-way', { x: start.x / 2, y: start.y / 2 }, 5);
        const [layout, rig] = withMics(base, [cable, standAt(before)]);
        const moved = { ...rig, mics: [cable, standAt(now)] };
        const route = createCableRouter();
        const first = route(layout, rig).runs[0];
        const runs = route(layout, moved).runs;
        expect(runs).toEqual(routeRuns(layout, moved));
        if (runs[0] === first) keptRuns += 1;
      }),
      { numRuns: 120 },
    );
    expect(keptRuns).toBeGreaterThan(8);
  });

  it('C2: keeps the runs that another stand neither touches nor held up, and routes the others again', () => {
    const rigOf = createRigBuilder();
    const route = createCableRouter();
    const before = route(kit, rigOf(kit)).runs;
    const aside = shift(kit, 'mic-overhead-floor-tom-side', 40);
    const after = route(aside, rigOf(aside)).runs;
    const kept = after.filter((run, i) => run === before[i]).map(({ mic }) => mic);
    expect(kept).toContain('mic-hi-hat');
    expect(kept).not.toContain('mic-overhead-floor-tom-side');
    expect(after).toEqual(routeRuns(aside, rigOf(aside)));
  });

  it('keeps the runs of mics that a change does not touch', () => {
    const rigOf = createRigBuilder();
    const route = createCableRouter();
    const before = route(kit, rigOf(kit)).runs;
    expect(
      route({ ...kit, name: 'Renamed' }, rigOf(kit)).runs.every((run, i) => run === before[i]),
    ).toBe(true);
    const clip = kit.mics.findIndex(({ mount }) => mount.kind === 'clip');
    const replugged = {
      ...kit,
      mics: kit.mics.map((mic, i) => (i === clip ? { ...mic, input: null } : mic)),
    };
    const after = route(replugged, rigOf(replugged)).runs;
    expect(after.map((run, i) => run === before[i])).toEqual(kit.mics.map((_, i) => i !== clip));
  });
});
