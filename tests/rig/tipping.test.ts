import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standSpec } from '../../src/layout/catalogue/standClasses.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { MicClass } from '../../src/layout/mics/micClass.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import { placeMic } from '../../src/rig/placeMic.ts';
import { type Tipping, tippingOf } from '../../src/rig/tipping.ts';
import { fivePiece, micOn } from './kits.ts';

/** A mic of 1 kg, 30 mm long: it is held 20 mm behind its tip. */
const heavy: MicClass = {
  id: 'heavy',
  name: 'Heavy',
  length: 30,
  diameter: 20,
  address: 'end',
  patternA: 0.5,
  type: 'dynamic',
  phantom: false,
  connector: 'thinCable',
  mass: 1,
};
const layout = { ...fivePiece, ownClasses: [heavy] };

/** A level boom of `boom` mm toward +x from a base at the origin; the mic looks on along the boom. */
const along = (stand: StandMount['stand'], boom: number, turn: number): StandMount => ({
  kind: 'stand',
  stand,
  base: { x: 0, y: 0 },
  turn,
  mast: null,
  tip: { x: boom + 20, y: 0, z: 900 },
  azimuth: 0,
  pitch: 0,
});

function tipping(mount: Mic['mount']): Tipping {
  const found = tippingOf(placeMic(micOn(mount, 'heavy'), layout));
  if (!found) throw new Error('not on a stand');
  return found;
}

describe('tippingOf', () => {
  it('T1-T3: a tripod is as worked by hand from the equilibrium of moments about an edge', () => {
    // Medium tripod: base and mast 2.1 kg, boom 0.6 kg, counterweight 0.3 kg, feet 290 mm from the hub. One leg points to
    // -x (turn 180), so the edge between the others stands across the boom, 290 cos 60 = 145 mm before the hub.
    // Boom of 600 mm, tail 100 mm. Arms from the hub: mic +600, boom's middle (600 - 100) / 2 = +250, counterweight -100.
    // About the edge at +145, tipping: 1 (600 - 145) + 0.6 (250 - 145) + 0.3 (-100 - 145) = 455 + 63 - 73.5 = 444.5 kg mm.
    // Righting: 2.1 x 145 = 304.5 kg mm. Factor 304.5 / 444.5 = 0.68504. In N m: x 9.80665 / 1000.
    const found = tipping(along('tripodMedium', 600, 180));
    expect(found.factor).toBeCloseTo(304.5 / 444.5, 9);
    expect(found.righting).toBeCloseTo(2.98612, 4);
    expect(found.tipping).toBeCloseTo(4.35906, 4);
  });

  it('T1-T3: a round base is as worked by hand', () => {
    // Round base with boom: 8 kg, radius 165 mm, boom 0.6 kg, counterweight 0.3 kg. Boom of 600 mm: arms as above.
    // Tipping about the disc's edge: 1 (600 - 165) + 0.6 (250 - 165) + 0.3 (-100 - 165) = 435 + 51 - 79.5 = 406.5 kg mm.
    // Righting: 8 x 165 = 1320 kg mm. Factor 1320 / 406.5 = 3.24723.
    expect(tipping(along('roundBoom', 600, 0)).factor).toBeCloseTo(1320 / 406.5, 9);
  });

  it('T2, T3: a published example of statics: what a forklift carries before it tips over its front wheels', () => {
    // Source: J. Wickert, K. Lewis, An Introduction to Mechanical Engineering, section 4.5 'Equilibrium of Forces and Moments', p. 157.
    // The truck weighs 3500 lb, 42 in behind the front wheels; an 800 lb container hangs 24 in before them. It tips at 6125 lb.
    const [truck, container, tips, inch] = [3500, 800, 6125, 25.4];
    // As a base with the front wheels for an edge, the rear ones far behind, the truck's weight on its hub. Only ratios of masses matter.
    const { baseMass } = standSpec('roundStraight');
    const usual = placeMic(micOn(along('roundStraight', 0, 0), 'heavy'), layout);
    const carrying = (pounds: number): number => {
      if (!usual.stand) throw new Error('a stand was expected');
      const hold = { x: 24 * inch, y: 0, z: 0 };
      const feet = [
        { x: 0, y: -20 * inch },
        { x: 0, y: 20 * inch },
        { x: -90 * inch, y: 0 },
      ];
      const footprint = { hub: { x: -42 * inch, y: 0 }, hubRadius: 0, feet, legHeight: 0 };
      const stand = { ...usual.stand, hold, clutch: hold, boomLength: 0, footprint };
      const micClass = { ...heavy, mass: (pounds / truck) * baseMass };
      return tippingOf({ ...usual, stand, micClass })?.factor ?? Number.NaN;
    };
    expect(carrying(tips)).toBeCloseTo(1, 12);
    expect(carrying(container)).toBeCloseTo(tips / container, 9);
  });

  it('a leg under the boom holds better than an edge', () => {
    const edge = tipping(along('tripodTall', 800, 180)).factor;
    expect(tipping(along('tripodTall', 800, 0)).factor).toBeGreaterThan(edge);
  });

  it('a longer boom never stands more firmly', () => {
    const boom = fc.integer({ min: 150, max: 900 });
    const turn = fc.integer({ min: 0, max: 359 });
    const stand = fc.constantFrom(
      'tripodLow' as const,
      'tripodMedium' as const,
      'tripodTall' as const,
      'roundBoom' as const,
    );
    fc.assert(
      fc.property(stand, boom, boom, turn, (standClass, one, other, legs) => {
        const short = tipping(along(standClass, Math.min(one, other), legs)).factor;
        const long = tipping(along(standClass, Math.max(one, other), legs)).factor;
        expect(long === short || long <= short * (1 + 1e-9)).toBe(true);
      }),
    );
  });

  it('is infinite when the load stands over the base, and there is none without a stand', () => {
    expect(tipping(along('roundStraight', 0, 0)).factor).toBe(Number.POSITIVE_INFINITY);
    const clip = {
      kind: 'clip',
      drum: 'snare',
      material: 'rubber',
      angle: 90,
      reach: 30,
      height: 40,
      pitch: 30,
    } as const;
    expect(tippingOf(placeMic(micOn(clip), layout))).toBeUndefined();
  });

  it('does not depend on where the stand stands or which way all of it is turned', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -900, max: 900 }),
        (turn, x) => {
          const mount = along('tripodTall', 800, 100);
          const moved = {
            ...mount,
            base: { x, y: 50 },
            turn: mount.turn + turn,
            azimuth: turn,
            tip: {
              x: x + 820 * Math.cos((turn * Math.PI) / 180),
              y: 50 + 820 * Math.sin((turn * Math.PI) / 180),
              z: 900,
            },
          };
          expect(tipping(moved).factor).toBeCloseTo(tipping(mount).factor, 6);
        },
      ),
    );
  });
});
