import { describe, expect, it } from 'vitest';
import { accessLane } from '../../src/cabling/accessLane.ts';
import { boxIsOnDeck, obstacleOfBox } from '../../src/cabling/box.ts';
import { type BoxSpot, type BoxSpots, boxSpots, USUAL_SPOTS } from '../../src/cabling/boxSpots.ts';
import { createCableRouter } from '../../src/cabling/routeRuns.ts';
import { overlaps } from '../../src/geometry/convexPolygon.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { bareLayout, startingLayout, startingLayouts } from './scenes.ts';

function spotsOf(layout: Layout, settings = USUAL_SPOTS): BoxSpots {
  const search = boxSpots(layout, buildRig(layout), settings);
  for (;;) {
    const { done, value } = search.next();
    if (done) return value;
  }
}

const sum = (all: readonly number[]): number => all.reduce((total, one) => total + one, 0);
const routed = (layout: Layout, { box }: BoxSpot) => {
  const there = { ...layout, box };
  const { runs } = createCableRouter()(there, buildRig(there));
  const totals = runs.map(({ total }) => total);
  return {
    cable: sum(totals),
    longest: Math.max(0, ...totals),
    blocked: runs.filter(({ through }) => through.length > 0).length,
  };
};

describe('box spots along the edges of the deck', () => {
  it('Q3, Q5: need what routing with the box there says', () => {
    for (const layout of startingLayouts) {
      const { along, byCable, byLongest } = spotsOf(layout, { ...USUAL_SPOTS, step: 700 });
      for (const spot of [...along, ...byCable, ...byLongest]) {
        const { cable, longest, blocked } = routed(layout, spot);
        expect(Math.abs(spot.cable - cable)).toBeLessThan(1e-6);
        expect(Math.abs(spot.longest - longest)).toBeLessThan(1e-6);
        expect(spot.blocked).toBe(blocked);
      }
    }
  });

  it('Q1, Q2: stand on the deck, off everything, out of lane and stairs, facing inward', () => {
    for (const layout of startingLayouts) {
      const { obstacles } = createCableRouter()(layout, buildRig(layout));
      const lane = accessLane(layout);
      for (const { box, edge, along } of spotsOf(layout).along) {
        const there = { ...layout, box };
        const { body } = obstacleOfBox(there);
        expect(boxIsOnDeck(there)).toBe(true);
        const { width, depth } = layout.deck;
        for (const { x, y } of body.corners) {
          expect(Math.abs(x)).toBeLessThanOrEqual(width / 2 + 1e-6);
          expect(Math.abs(y)).toBeLessThanOrEqual(depth / 2 + 1e-6);
        }
        for (const other of obstacles) {
          if (other.owner !== null) expect(overlaps(other.body, body)).toBe(false);
        }
        if (lane) expect(overlaps(lane, body)).toBe(false);
        for (const stairs of layout.deck.stairs) {
          const isBefore =
            stairs.edge === edge && Math.abs(stairs.offset - along) < stairs.width / 2;
          expect(isBefore).toBe(false);
        }
        expect(box.turn).toBe({ front: 270, back: 90, left: 0, right: 180 }[edge]);
      }
    }
  });

  it('Q4: are as good as a look every 25 mm, to within 1 %', () => {
    const layout = startingLayout('four-piece-jazz');
    const { byCable, byLongest } = spotsOf(layout);
    const fine = spotsOf(layout, { ...USUAL_SPOTS, step: 25 }).along.filter(
      ({ blocked }) => blocked === 0,
    );
    expect(byCable[0]?.cable).toBeLessThanOrEqual(1.01 * Math.min(...fine.map((s) => s.cable)));
    expect(byLongest[0]?.longest).toBeLessThanOrEqual(
      1.01 * Math.min(...fine.map((s) => s.longest)),
    );
  });

  it('are told best first, apart from each other', () => {
    for (const layout of startingLayouts.filter(({ mics }) => mics.length > 0)) {
      const { along, byCable, byLongest } = spotsOf(layout);
      const cables = byCable.map(({ cable }) => cable);
      expect(cables).toEqual([...cables].sort((a, b) => a - b));
      const longest = byLongest.map((spot) => spot.longest);
      expect(longest).toEqual([...longest].sort((a, b) => a - b));
      const clear = along.filter(({ blocked }) => blocked === 0);
      for (const { cable } of clear) expect(cables[0] ?? 0).toBeLessThanOrEqual(cable);
      for (const list of [byCable, byLongest]) {
        expect(list.length).toBeLessThanOrEqual(3);
        for (const [i, p] of list.entries()) {
          for (const q of list.slice(i + 1)) {
            if (p.edge === q.edge) expect(Math.abs(p.along - q.along)).toBeGreaterThanOrEqual(600);
          }
        }
      }
    }
  });

  it('say how far they have come, one spot at a time, and can be left at any time', () => {
    const layout = startingLayout('four-piece-jazz');
    const seen: number[] = [];
    for (const { done, of } of boxSpots(layout, buildRig(layout))) {
      expect(done).toBe(seen.length);
      expect(done).toBeLessThan(of);
      seen.push(done);
    }
    expect(seen.length).toBeGreaterThan(30);
    const search = boxSpots(layout, buildRig(layout));
    search.next();
    expect(search.return({ along: [], byCable: [], byLongest: [] }).done).toBe(true);
  });

  it('keep to the edges asked for', () => {
    const layout = startingLayout('large-kit');
    const { along, byCable } = spotsOf(layout, { ...USUAL_SPOTS, edges: ['left'] });
    expect(new Set([...along, ...byCable].map(({ edge }) => edge))).toEqual(new Set(['left']));
  });

  it('are none on a deck that is smaller than the box', () => {
    const deck = { ...bareLayout.deck, width: 300, depth: 300 };
    const layout = { ...bareLayout, deck, mics: [] };
    expect(spotsOf(layout)).toEqual({ along: [], byCable: [], byLongest: [] });
  });
});
