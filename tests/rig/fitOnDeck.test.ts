import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Deck } from '../../src/layout/deck.ts';
import { moveKit, setDeck } from '../../src/layout/edit/stage.ts';
import type { Layout } from '../../src/layout/layout.ts';
import { buildRig } from '../../src/rig/buildRig.ts';
import { type FittingPlace, fitOnDeck } from '../../src/rig/fitOnDeck.ts';
import type { Rig } from '../../src/rig/placed.ts';
import { findStanding } from '../../src/rig/standing/findStanding.ts';

const kits = STARTING_KITS.map(({ make }) => make('kit')).filter(({ pieces }) => pieces.length > 1);
const rigs = new Map(kits.map((kit) => [kit, buildRig(kit)]));
const rigOf = (kit: Layout): Rig => rigs.get(kit) ?? buildRig(kit);

/** By how much the worst foot is off a deck, from the findings, which know nothing of the fit; the kit alone, without what overlaps. */
function beyond(rig: Rig, deck: Deck): number {
  const alone: Rig = { pieces: rig.pieces, mics: rig.mics };
  const off = findStanding(alone, deck).filter(({ code }) => code.endsWith('off-deck'));
  return Math.max(0, ...off.map(({ overlap }) => overlap));
}
const at = (deck: Deck, { kit }: Pick<FittingPlace, 'kit'>): Deck => ({ ...deck, kit });

const scene = fc.record({
  which: fc.nat({ max: kits.length - 1 }),
  width: fc.integer({ min: 1900, max: 4200 }),
  depth: fc.integer({ min: 1700, max: 3400 }),
  x: fc.integer({ min: -900, max: 900 }),
  y: fc.integer({ min: -1500, max: 300 }),
  turn: fc.constantFrom(0, 0, 15, 90, 200),
});
const sceneOf = ({
  which,
  width,
  depth,
  x,
  y,
  turn,
}: Record<'which' | 'width' | 'depth' | 'x' | 'y' | 'turn', number>) => {
  const kit = kits[which] as Layout;
  const deck: Deck = { ...kit.deck, width, depth, kit: { x, y, turn } };
  return { rig: rigOf(kit), deck, fit: fitOnDeck(rigOf(kit), deck) };
};

describe('what is found', () => {
  test('rests on the deck, by the findings’ own measure, as a layout keeps it', () => {
    fc.assert(
      fc.property(scene, (given) => {
        const { rig, deck, fit } = sceneOf(given);
        expect(fit.beyond).toBeCloseTo(beyond(rig, deck), 6);
        for (const found of [fit.shifted, fit.turned, fit.both]) {
          if (!found) continue;
          const layout = moveKit({ ...(kits[given.which] as Layout), deck }, found.kit);
          expect(beyond(rig, layout.deck)).toBe(0);
          expect(found.shift).toBeCloseTo(
            Math.hypot(found.kit.x - deck.kit.x, found.kit.y - deck.kit.y),
            9,
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  test('H1: no shift of a grid is smaller, and where a grid finds one, so does the search', () => {
    fc.assert(
      fc.property(scene, (given) => {
        const { rig, deck, fit } = sceneOf(given);
        let least = Number.POSITIVE_INFINITY;
        for (let dx = -1500; dx <= 1500; dx += 50) {
          for (let dy = -1500; dy <= 1500; dy += 50) {
            const shift = Math.hypot(dx, dy);
            if (shift >= least) continue;
            const kit = { ...deck.kit, x: deck.kit.x + dx, y: deck.kit.y + dy };
            if (quickBeyond(rig, at(deck, { kit })) <= 0) least = shift;
          }
        }
        if (Number.isFinite(least)) {
          // Whole mm inside the range may cost one each way.
          expect(fit.shifted?.shift).toBeLessThanOrEqual(least + Math.SQRT2);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('H2: no turn of a grid is smaller, alone or with a shift', () => {
    fc.assert(
      fc.property(scene, (given) => {
        const { rig, deck, fit } = sceneOf(given);
        const steps = Array.from(
          { length: 721 },
          (_, i) => (i % 2 ? 1 : -1) * Math.ceil(i / 2) * 0.5,
        );
        const turned = (turn: number) =>
          at(deck, { kit: { ...deck.kit, turn: deck.kit.turn + turn } });
        const alone = steps.find((turn) => quickBeyond(rig, turned(turn)) <= 0);
        if (alone !== undefined)
          expect(Math.abs(fit.turned?.turn ?? 999)).toBeLessThanOrEqual(Math.abs(alone) + 1e-4);
        const both = steps.find((turn) => quickSize(rig, turned(turn)));
        if (both !== undefined)
          expect(Math.abs(fit.both?.turn ?? 999)).toBeLessThanOrEqual(Math.abs(both) + 1e-4);
        // And the other way round: just inside what was found, nothing fits.
        if (fit.turned && fit.beyond > 0) {
          const less = fit.turned.turn * 0.999;
          expect(quickBeyond(rig, turned(less))).toBeGreaterThan(-0.01);
        }
      }),
      { numRuns: 25 },
    );
  });
});

/** The feet on a deck, plainly: every rest against the four edges. */
function* feet(rig: Rig, deck: Deck): Generator<readonly [number, number, number]> {
  const turn = (deck.kit.turn * Math.PI) / 180;
  const spots: (readonly [{ readonly x: number; readonly y: number }, number])[] = [
    ...rig.pieces.flatMap(({ piece, footprints, outlines }) => [
      ...footprints.flatMap(({ hub, hubRadius, feet: tips }) =>
        tips.length > 0
          ? tips.map((tip) => [tip, 8] as readonly [typeof tip, number])
          : [[hub, hubRadius] as const],
      ),
      ...(piece.kind === 'pedal' ? outlines.flat().map((spot) => [spot, 0] as const) : []),
    ]),
    ...rig.mics.flatMap(({ stand, mic, solids }) => [
      ...(stand
        ? stand.footprint.feet.length > 0
          ? stand.footprint.feet.map((tip) => [tip, 8] as readonly [typeof tip, number])
          : [[stand.footprint.hub, stand.footprint.hubRadius] as const]
        : []),
      ...(mic.mount.kind === 'plateOnDeck'
        ? solids
            .filter(({ part }) => part === 'plate')
            .flatMap(({ capsule: { a, b, radius } }) => [
              [a, radius] as const,
              [b, radius] as const,
            ])
        : []),
    ]),
  ];
  for (const [{ x, y }, radius] of spots) {
    yield [
      deck.kit.x + x * Math.cos(turn) - y * Math.sin(turn),
      deck.kit.y + x * Math.sin(turn) + y * Math.cos(turn),
      radius,
    ];
  }
}

function quickBeyond(rig: Rig, deck: Deck): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const [x, y, radius] of feet(rig, deck)) {
    most = Math.max(
      most,
      Math.abs(x) + radius - deck.width / 2,
      Math.abs(y) + radius - deck.depth / 2,
    );
  }
  return most;
}

function quickSize(rig: Rig, deck: Deck): boolean {
  let [left, right, back, front] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const [x, y, radius] of feet(rig, deck)) {
    left = Math.min(left, x - radius);
    right = Math.max(right, x + radius);
    back = Math.min(back, y - radius);
    front = Math.max(front, y + radius);
  }
  return right - left <= deck.width && front - back <= deck.depth;
}

describe('cases by hand', () => {
  const kit = kits[0] as Layout;

  test('a kit that stands on its deck stays where it is', () => {
    expect(fitOnDeck(rigOf(kit), kit.deck)).toMatchObject({
      beyond: 0,
      shifted: { shift: 0, turn: 0 },
      turned: { shift: 0, turn: 0 },
      tooWide: 0,
      tooDeep: 0,
    });
  });

  test('pushed 500 mm to one side it comes back by less than that, straight', () => {
    const pushed = moveKit(kit, { x: kit.deck.kit.x + 900 });
    const { shifted, beyond: over } = fitOnDeck(rigOf(kit), pushed.deck);
    expect(shifted?.shift).toBeGreaterThanOrEqual(over - 1e-6);
    expect(shifted?.shift).toBeLessThan(over + 1.01);
    expect(shifted?.kit.y).toBe(pushed.deck.kit.y);
  });

  test('a deck smaller than the kit: how much it is too wide', () => {
    const narrow = setDeck(kit, { width: 900, depth: 800 });
    const fit = fitOnDeck(rigOf(kit), narrow.deck);
    expect(fit).toMatchObject({ shifted: null, turned: null, both: null });
    expect(fit.tooWide).toBeGreaterThan(500);
  });

  test('nothing on the deck fits on any deck', () => {
    const fit = fitOnDeck({ pieces: [], mics: [] }, kit.deck);
    expect(fit).toMatchObject({ beyond: 0, tooWide: 0, tooDeep: 0 });
  });
});
