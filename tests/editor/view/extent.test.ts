import { expect, test } from 'vitest';
import { controlZones, standsFree } from '../../../src/editor/labels/reserved.ts';
import { SPOT_RADIUS } from '../../../src/editor/spotMarks.ts';
import {
  extentOf,
  extentOfDeck,
  extentOfKit,
  extentOfLargeKit,
  extentOfSpots,
  FIT_BORDER,
  firstFit,
} from '../../../src/editor/view/extent.ts';
import { type Bounds, fitted, type ScreenSize, toScreen } from '../../../src/editor/view/view.ts';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import { boxCorners } from '../../../src/rig/boxShape.ts';
import { toDeck } from '../../../src/rig/deckFrame.ts';

const kits = STARTING_KITS.map((kit) => kit.make(kit.key)).filter(
  ({ pieces }) => pieces.length > 1,
);
/** Plans on a tablet of 1180 x 820 px, upright and lying, alone or above an elevation. */
const sizes: readonly ScreenSize[] = [
  { width: 820, height: 498 },
  { width: 820, height: 249 },
  { width: 776, height: 697 },
  { width: 776, height: 348 },
];

const scaleOf = (extent: Bounds, size: ScreenSize): number =>
  fitted({ seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 }, extent, FIT_BORDER).scale;

/** What is shown at first, and how large deck and kit would be, px per mm. */
function shown(layout: Layout, size: ScreenSize) {
  const { rig } = createAnalyst()(layout);
  return {
    first: firstFit(layout, rig, size),
    deck: scaleOf(extentOfDeck(layout, rig), size),
    kit: scaleOf(extentOfKit(layout, rig), size),
  };
}

test('a rack tom of 10 in is never less than 32 px wide at first where showing the kit alone makes it wider', () => {
  const seen = kits.flatMap((kit) => sizes.map((size) => shown(kit, size)));
  for (const { first, deck, kit } of seen) {
    const scale = first === 'kit' ? kit : deck;
    expect(254 * scale >= 32 || scale === Math.max(deck, kit)).toBe(true);
  }
  expect(new Set(seen.map(({ first }) => first))).toEqual(new Set(['deck', 'kit']));
});

test('a deck that is legible is shown whole, and so is one without a kit', () => {
  for (const kit of kits) {
    expect(shown(kit, { width: 1600, height: 1200 }).first).toBe('deck');
    const empty = { ...kit, pieces: [], mics: [] };
    for (const size of sizes) expect(shown(empty, size).first).toBe('deck');
  }
});

test('the whole deck is shown with all that stands over its edge, and what a mistyped number put far away is left out', () => {
  for (const kit of kits) {
    const small = { ...kit, deck: { ...kit.deck, width: 1400, depth: 1200 } };
    const { rig } = createAnalyst()(small);
    const shownOf = extentOfDeck(small, rig);
    const feet = rig.mics.flatMap(({ stand }) => stand?.footprint.feet ?? []);
    const tips = rig.mics.map(({ tip }) => tip);
    for (const spot of [...feet, ...tips]) {
      const { x, y } = toDeck(small.deck, spot);
      expect(x >= shownOf.left && x <= shownOf.right, kit.name).toBe(true);
      expect(y >= shownOf.back && y <= shownOf.front, kit.name).toBe(true);
    }
    const [far] = rig.mics;
    if (!far) throw new Error('expected a mic');
    const lost = { ...rig, mics: [...rig.mics, { ...far, tip: { ...far.tip, x: 30_000 } }] };
    expect(extentOfDeck(small, lost)).toEqual(shownOf);
  }
});

test('a mic that a mistyped number put far away does not make the kit small', () => {
  for (const kit of kits) {
    const lost = kit.mics.map((mic) =>
      mic.mount.kind === 'stand'
        ? { ...mic, mount: { ...mic.mount, tip: { ...mic.mount.tip, x: 30_000 } } }
        : mic,
    );
    for (const size of sizes) expect(shown({ ...kit, mics: lost }, size).first).toBe('deck');
  }
});

test('the box is never cut by the edge where the kit is shown large: it is whole, or off the drawing', () => {
  let cut = 0;
  // Beside an elevation the plan of a tablet held upright is narrow.
  for (const size of [...sizes, { width: 476, height: 498 }]) {
    for (const kit of kits) {
      const { rig } = createAnalyst()(kit);
      const start = { seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 } as const;
      const seen = (extent: Bounds): number =>
        boxCorners(kit.box)
          .map((spot) => toScreen(fitted(start, extent, FIT_BORDER), spot))
          .filter(
            ({ x, y }) => x >= -20 && y >= -20 && x <= size.width + 20 && y <= size.height + 20,
          ).length;
      expect([0, 4], kit.name).toContain(seen(extentOfLargeKit(kit, rig, start)));
      if (![0, 4].includes(seen(extentOfKit(kit, rig)))) cut += 1;
    }
  }
  expect(cut).toBeGreaterThan(0);
});

test('spots for the box on every edge of a deck are free to be tapped where they are shown', () => {
  for (const kit of kits) {
    const { width, depth } = kit.deck;
    const spots = [
      { box: { x: 0, y: depth / 2 - 75 } },
      { box: { x: 0, y: 75 - depth / 2 } },
      { box: { x: width / 2 - 75, y: 0 } },
      { box: { x: 75 - width / 2, y: 0 } },
    ];
    for (const size of sizes) {
      const start = { seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 } as const;
      const shownOver = { ...FIT_BORDER, bottom: FIT_BORDER.bottom + 64 };
      const view = fitted(start, extentOfSpots(kit, spots), shownOver);
      // A plan above an elevation is so low that letters may touch the buttons.
      if (size.height < 400) continue;
      for (const { box } of spots) {
        expect(standsFree(toScreen(view, box), SPOT_RADIUS, size), kit.name).toBe(true);
      }
    }
  }
});

test('what is half over the edge or touches a button does not stand free', () => {
  const size = { width: 820, height: 498 };
  expect(standsFree({ x: 400, y: 300 }, 22, size)).toBe(true);
  expect(standsFree({ x: 400, y: 490 }, 22, size)).toBe(false);
  expect(standsFree({ x: 10, y: 300 }, 22, size)).toBe(false);
  expect(standsFree({ x: 400, y: 70 }, 22, size)).toBe(false);
  expect(standsFree({ x: 800, y: 440 }, 22, size)).toBe(false);
});

test('the box never lies under the buttons, whether deck or kit is fitted, and the kit is hardly smaller for it', () => {
  let moved = 0;
  for (const kit of kits) {
    const { rig } = createAnalyst()(kit);
    for (const size of sizes) {
      for (const seenFrom of ['house', 'player'] as const) {
        const isUnder = (extent: Bounds): boolean => {
          const start = { seenFrom, size, centre: { x: 0, y: 0 }, scale: 1 };
          const view = fitted(start, extent, FIT_BORDER);
          const corners = boxCorners(kit.box).map((spot) => toScreen(view, spot));
          const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
          return controlZones(size).some(
            ({ left, top, width, height }) =>
              Math.min(...xs) < left + width &&
              Math.max(...xs) > left &&
              Math.min(...ys) < top + height &&
              Math.max(...ys) > top,
          );
        };
        const large = extentOfLargeKit(kit, rig, { seenFrom, size });
        expect(isUnder(extentOf(kit)), kit.name).toBe(false);
        expect(isUnder(large), kit.name).toBe(false);
        expect(scaleOf(large, size)).toBeGreaterThan(0.75 * scaleOf(extentOfKit(kit, rig), size));
        if (isUnder(extentOfKit(kit, rig))) moved += 1;
      }
    }
  }
  expect(moved).toBeGreaterThan(0);
});
