import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mirrorKit } from '../../../src/layout/edit/mirror.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { buildRig, createRigBuilder } from '../../../src/rig/buildRig.ts';
import {
  createStandingFinder,
  createStandingOf,
  findStanding,
} from '../../../src/rig/standing/findStanding.ts';
import type { Standing } from '../../../src/rig/standing/standing.ts';
import { fivePiece, kit, kits } from '../kits.ts';

const found = (layout: Layout): readonly Standing[] => findStanding(buildRig(layout), layout.deck);
const summary = (standing: readonly Standing[]) =>
  standing.map(({ code, about, overlap }) => `${code} ${about.join()} ${overlap}`).sort();

/** The kit with every mic shifted (mm, whole) and clips lowered, so that much of it is in the way of something. */
const jostled = (layout: Layout, [dx, dy, dz]: readonly [number, number, number]): Layout => ({
  ...layout,
  mics: layout.mics.map((mic) => {
    const { mount } = mic;
    if (mount.kind === 'clip')
      return { ...mic, mount: { ...mount, height: 5 + Math.abs(dz) / 4, pitch: 0 } };
    if (mount.kind !== 'stand') return mic;
    const base = { x: mount.base.x + dy, y: mount.base.y - dx };
    const tip = { x: mount.tip.x + dx, y: mount.tip.y + dy, z: mount.tip.z + dz };
    return { ...mic, mount: { ...mount, base, tip } };
  }),
});
const step = fc.integer({ min: -300, max: 300 });
const jostle = fc.tuple(step, step, fc.integer({ min: -150, max: 100 }));
const large = kit('large-kit');

describe('findStanding', () => {
  it('has nothing to say about the starting kits', () => {
    for (const layout of kits) expect(summary(found(layout)), layout.name).toEqual([]);
  });

  it('finds much in a kit whose mics are jostled: the laws below are not empty', () => {
    const codes = new Set(found(jostled(large, [250, 0, -120])).map(({ code }) => code));
    expect([...codes].sort()).toContain('mic-in-shell');
    expect([...codes].sort()).toContain('feet-overlap');
  });

  it('says exactly the same of the mirrored kit', () => {
    // The deck is symmetrical once the kit stands in its middle.
    const centred = { ...large, deck: { ...large.deck, kit: { ...large.deck.kit, x: 0 } } };
    fc.assert(
      fc.property(jostle, (by) => {
        const layout = jostled(centred, by);
        expect(summary(found(mirrorKit(layout)))).toEqual(summary(found(layout)));
      }),
      { numRuns: 25, endOnFailure: true },
    );
  });

  it('tells nothing twice: one finding for each code and pair', () => {
    fc.assert(
      fc.property(jostle, (by) => {
        const keys = found(jostled(large, by)).map(({ code, about }) => `${code} ${about.join()}`);
        expect(new Set(keys).size).toBe(keys.length);
      }),
      { numRuns: 20 },
    );
  });

  it('removing a piece takes its own findings away and changes no other', () => {
    fc.assert(
      fc.property(jostle, fc.constantFrom('china', 'ride', 'crash-3', 'hi-hat'), (by, id) => {
        const layout = jostled(large, by);
        const without = { ...layout, pieces: layout.pieces.filter((piece) => piece.id !== id) };
        expect(summary(found(without))).toEqual(
          summary(found(layout).filter(({ about }) => !about.includes(id))),
        );
      }),
      { numRuns: 20 },
    );
  });

  it('only names things of the layout, and only what overlaps', () => {
    fc.assert(
      fc.property(jostle, (by) => {
        const ids = new Set([...large.pieces, ...large.mics].map(({ id }) => id));
        for (const { about, overlap } of found(jostled(large, by))) {
          expect(about.every((id) => ids.has(id))).toBe(true);
          expect(overlap).toBeGreaterThan(0.2);
        }
      }),
      { numRuns: 20 },
    );
  });
});

describe('createStandingOf', () => {
  it('finds all that findStanding says about a mic that takes the place of the present one, and nothing else', () => {
    const rig = buildRig(large);
    const standingOf = createStandingOf(rig, large.deck);
    fc.assert(
      fc.property(jostle, fc.integer({ min: 0, max: 15 }), (by, index) => {
        const placed = buildRig(jostled(large, by)).mics[index];
        if (!placed) throw new Error('a mic was expected');
        const mics = rig.mics.map((mic, i) => (i === index ? placed : mic));
        const whole = findStanding({ ...rig, mics }, large.deck);
        const about = whole.filter((entry) => entry.about.includes(placed.mic.id));
        expect(summary(standingOf(placed))).toEqual(summary(about));
      }),
      { numRuns: 40 },
    );
  });
});

describe('createStandingFinder', () => {
  it('always says what a new finder says', () => {
    const build = createRigBuilder();
    const find = createStandingFinder();
    fc.assert(
      fc.property(jostle, fc.integer({ min: 0, max: 15 }), (by, index) => {
        const moved = jostled(large, by).mics[index];
        const layout = {
          ...large,
          mics: large.mics.map((mic, i) => (i === index && moved) || mic),
        };
        expect(find(build(layout), layout.deck)).toEqual(found(layout));
      }),
      { numRuns: 20 },
    );
  });

  it('measures only the pairs of what moved: all else comes back as the same objects', () => {
    const build = createRigBuilder();
    const find = createStandingFinder();
    const before = jostled(large, [250, 0, -120]);
    const kept = find(build(before), before.deck);
    const moved = { ...before, mics: before.mics.map((mic, i) => (i === 5 ? { ...mic } : mic)) };
    const id = moved.mics[5]?.id ?? '';
    const anew = find(build(moved), moved.deck).filter((entry) => !kept.includes(entry));
    expect(anew.length).toBeGreaterThan(0);
    expect(anew.every(({ about }) => about.includes(id))).toBe(true);
    expect(kept.some(({ about }) => !about.includes(id))).toBe(true);
  });

  it('notices a changed deck', () => {
    const find = createStandingFinder();
    const rig = buildRig(fivePiece);
    expect(find(rig, fivePiece.deck)).toEqual([]);
    const codes = find(rig, { ...fivePiece.deck, width: 1000 }).map(({ code }) => code);
    expect(codes).toContain('base-off-deck');
    expect(codes).toContain('piece-off-deck');
  });
});
