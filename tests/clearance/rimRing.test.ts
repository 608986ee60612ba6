import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdictOf } from '../../src/clearance/clearances.ts';
import { type Motion, motionOf, reachOf } from '../../src/clearance/micClearance.ts';
import type { Verdict } from '../../src/clearance/nearest.ts';
import { atAngle, type Clip, type RimArc, rimRing } from '../../src/clearance/rimRing.ts';
import { along, scale, subtract, unit, vec } from '../../src/geometry/vector.ts';
import { findMicClass } from '../../src/layout/catalogue/micClasses.ts';
import { mirrorKit } from '../../src/layout/edit/mirror.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { isDrum } from '../../src/layout/pieces/piece.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { turnBetween } from '../../src/units/angle.ts';
import { seededKits } from '../support/randomKit.ts';
import { startingKit } from './kits.ts';

interface Ringed {
  readonly name: string;
  readonly motion: Motion;
  readonly clip: Clip;
  readonly arcs: readonly RimArc[];
}

/** The rings of all clip mics of a layout. */
function rings(layout: Layout): readonly Ringed[] {
  const motion = motionOf(layout.player, layout.pieces);
  return layout.mics.flatMap((mic) => {
    const { mount } = mic;
    if (mount.kind !== 'clip') return [];
    const drum = layout.pieces.find(({ id }) => id === mount.drum);
    if (!drum || !isDrum(drum)) throw new Error('the drum of the clip was expected');
    const clip = { mic, mount, drum, surroundings: layout, margin: layout.margin };
    return [{ name: `${layout.name}, ${mic.id}`, motion, clip, arcs: rimRing(motion, clip) }];
  });
}

const all = [
  startingKit('five-piece-two-racks'),
  startingKit('large-kit'),
  ...seededKits(10, 41),
].flatMap(rings);

const shownAt = (arcs: readonly RimArc[], angle: number): Verdict | undefined =>
  arcs.find(({ from, to }) => angle >= from && angle < to)?.verdict;

/** Steps of the direct look round the rim, to half a degree. */
const STEPS = 720;

/** The middles of every fourth step of the ring. */
const PLACES_LOOKED_AT = Array.from({ length: 192 }, (_, k) => ((4 * k + 0.5) * 360) / 768);

const RANK = { struck: 0, tight: 1, clear: 2 };

describe('rule R1: the rim ring', () => {
  it('goes once round, without gaps, each arc another verdict than the one before', () => {
    expect(all.length).toBeGreaterThan(20);
    for (const { arcs } of all) {
      expect(arcs[0]?.from).toBe(0);
      expect(arcs.at(-1)?.to).toBe(360);
      for (const [k, arc] of arcs.entries()) {
        expect(arc.to).toBeGreaterThan(arc.from);
        const next = arcs[k + 1];
        if (next) {
          expect(next.from).toBe(arc.to);
          expect(next.verdict).not.toBe(arc.verdict);
        }
      }
    }
  });

  it('shows at every angle the verdict of the clip there, edges exact to half a degree', () => {
    const faults = all.flatMap(({ name, motion, clip, arcs }) => {
      const direct = Array.from({ length: STEPS }, (_, k) =>
        verdictOf(reachOf(motion, atAngle(clip, (k * 360) / STEPS)).clearance, clip.margin),
      );
      return direct.flatMap((verdict, k) => {
        const angle = (k * 360) / STEPS;
        const shown = shownAt(arcs, angle);
        // Half a degree on either side; between clear and struck there may be tight.
        const about = [-1, 0, 1].map((off) => RANK[direct[(k + off + STEPS) % STEPS] ?? verdict]);
        const rank = shown === undefined ? Number.NaN : RANK[shown];
        return rank >= Math.min(...about) && rank <= Math.max(...about)
          ? []
          : [`${name} at ${angle}: ${shown}, not ${verdict}`];
      });
    });
    expect(faults).toEqual([]);
  }, 240_000);

  it('has arcs of all verdicts among these', () => {
    const verdicts = new Set(all.flatMap(({ arcs }) => arcs.map(({ verdict }) => verdict)));
    expect(verdicts).toEqual(new Set(['clear', 'tight', 'struck']));
  });

  it('never gets clearer anywhere by a larger margin, and is struck where it was', () => {
    for (const { name, motion, clip, arcs } of all) {
      const wider = rimRing(motion, { ...clip, margin: clip.margin + 25 });
      for (const angle of PLACES_LOOKED_AT) {
        const [before, after] = [shownAt(arcs, angle), shownAt(wider, angle)];
        if (!before || !after) throw new Error(`${name}: expected a verdict at ${angle}`);
        expect(RANK[after], `${name} at ${angle}`).toBeLessThanOrEqual(RANK[before]);
        expect(after === 'struck').toBe(before === 'struck');
      }
    }
  });

  it('never gets less clear anywhere by a piece that is taken away', () => {
    for (const key of ['five-piece-two-racks', 'large-kit']) {
      const layout = startingKit(key);
      const clipped = new Set(layout.mics.map(({ mount }) => mount.kind === 'clip' && mount.drum));
      const removable = layout.pieces.filter(
        ({ id, kind }) => !clipped.has(id) && kind !== 'throne',
      );
      const before = rings(layout);
      for (const gone of removable.filter((_, k) => k % 3 === 0)) {
        const pieces = layout.pieces.filter((piece) => piece !== gone);
        const motion = motionOf(layout.player, pieces);
        for (const { name, clip, arcs } of before) {
          const after = rimRing(motion, clip);
          for (const angle of PLACES_LOOKED_AT) {
            const [was, is] = [shownAt(arcs, angle), shownAt(after, angle)];
            if (!was || !is) throw new Error(`${name}: expected a verdict at ${angle}`);
            expect(RANK[is], `${name} without ${gone.id} at ${angle}`).toBeGreaterThanOrEqual(
              RANK[was],
            );
          }
        }
      }
    }
  });

  it('of a mirrored kit is mirrored', () => {
    const layout = startingKit('five-piece-two-racks');
    const mirrored = rings(mirrorKit(layout));
    for (const [index, { arcs }] of rings(layout).entries()) {
      const other = mirrored[index]?.arcs ?? [];
      for (let angle = 0.125; angle < 360; angle += 0.5) {
        const shown = shownAt(other, (180 - angle + 360) % 360);
        const about = [-0.5, 0, 0.5].map((off) => shownAt(arcs, (angle + off + 360) % 360));
        expect(about).toContain(shown);
      }
    }
  });

  it('is what the engine says in the middle of every step, of any clip on any tilt beside a cymbal that swings', () => {
    const kit = startingKit('large-kit');
    const tom = kit.pieces.find((piece) => piece.kind === 'rackTom');
    const crash = kit.pieces.find((piece) => piece.kind === 'crash');
    if (tom?.kind !== 'rackTom' || crash?.kind !== 'crash') throw new Error('a tom and a crash');
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const scene = fc.record({
      tilt: fc.constantFrom(0, 30, 60),
      plug: fc.constantFrom('straight' as const, 'rightAngle' as const),
      reach: fc.constantFrom(-20, 30, 75, tom.diameter / 2),
      pitch: fc.integer({ min: 0, max: 90 }),
      angle: fc.integer({ min: 0, max: 359 }),
      solid: share,
      size: fc.constantFrom(160, 300),
      leaning: fc.constantFrom(0, 30, 60),
      gap: share,
      round: share,
      up: share,
      // A mic that is upright at one place of a tilted rim: there the cable of a right-angled plug goes round it.
      upright: fc.boolean(),
      off: fc.integer({ min: -9, max: 9 }),
      // On the clip's own way round the rim, ahead of it or behind, or anywhere.
      onItsWay: fc.constantFrom(1, -1, 0),
    });
    const told = { clear: 0, tight: 0, struck: 0 };
    fc.assert(
      fc.property(scene, (drawn) => {
        const turned = { angle: (tom.tiltToward + 180 + drawn.off) % 360, pitch: 90 - drawn.tilt };
        const chosen = drawn.upright
          ? { ...drawn, ...turned, plug: 'rightAngle' as const, solid: 0.6 }
          : drawn;
        // Nobody is near and nobody strikes: the cymbal swings all the same.
        const drum = { ...tom, x: 0, y: 3000, z: 900, tilt: chosen.tilt, hands: 'none' as const };
        const usual = findMicClass(kit, 'compact-dynamic');
        if (!usual) throw new Error('a class');
        const own = { ...usual, id: 'own', connector: chosen.plug };
        const mount = {
          ...({ kind: 'clip', drum: drum.id, material: 'rubber', height: 40 } as const),
          ...{ angle: chosen.angle, reach: chosen.reach, pitch: chosen.pitch },
        };
        const [first] = kit.mics;
        if (!first) throw new Error('a mic');
        const mic = { ...first, micClass: 'own', mount };
        const bare = { ...kit, ownClasses: [own], pieces: [drum], mics: [mic] };
        const solidAt = (by: number) => {
          const placed = placeMic({ ...mic, mount: { ...mount, angle: chosen.angle + by } }, bare);
          const found = placed.solids[Math.floor(chosen.solid * 0.999 * placed.solids.length)];
          if (!found) throw new Error('a solid');
          return found.capsule;
        };
        const { b, radius } = solidAt(0);
        const far = radius + chosen.size / 2 + chosen.gap * 1.2 * kit.margin;
        const slope = Math.PI * (chosen.up - 0.5);
        const turn = 2 * Math.PI * chosen.round;
        const anywhere = vec(
          Math.cos(slope) * Math.cos(turn),
          Math.cos(slope) * Math.sin(turn),
          Math.sin(slope),
        );
        const ahead = unit(subtract(solidAt(0.5).b, solidAt(-0.5).b), anywhere);
        const way = chosen.onItsWay === 0 ? anywhere : scale(ahead, chosen.onItsWay);
        const cymbal = {
          ...crash,
          ...{ diameter: chosen.size, hands: 'none' as const },
          ...along(b, way, far),
          tilt: chosen.leaning,
        };
        const layout = { ...bare, pieces: [drum, cymbal] };
        const motion = motionOf(layout.player, layout.pieces);
        const clip = { mic, mount, drum, surroundings: layout, margin: layout.margin };
        const arcs = rimRing(motion, clip);
        for (let k = 0; k < 768; k += 1) {
          const angle = ((k + 0.5) * 360) / 768;
          // Where the cymbal is every step, elsewhere every eighth.
          if (k % 8 > 0 && Math.abs(turnBetween(chosen.angle, angle)) > 25) continue;
          const { clearance } = reachOf(motion, atAngle(clip, angle));
          // The searches may differ by their tolerances.
          if (Math.min(Math.abs(clearance), Math.abs(clearance - clip.margin)) < 0.2) continue;
          const verdict = verdictOf(clearance, clip.margin);
          told[verdict] += 1;
          expect(shownAt(arcs, angle), `at ${angle}: ${clearance} mm`).toBe(verdict);
        }
      }),
      { numRuns: 400, seed: 11 },
    );
    for (const count of Object.values(told)) expect(count).toBeGreaterThan(1000);
  }, 120_000);
});
