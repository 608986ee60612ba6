import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Box,
  drawnOver,
  type LabelWish,
  onScreen,
  placeLabels,
} from '../../../src/editor/labels/placeLabels.ts';
import { reservedZones } from '../../../src/editor/labels/reserved.ts';
import { overBroad, roundAbout } from '../../../src/editor/labels/spots.ts';

const size = { width: 800, height: 600 };
const nothing = { size, covered: [], reserved: [], before: new Map<string, number>(), tips: [] };

const anyWish = (must: fc.Arbitrary<boolean>) =>
  fc.record({
    at: fc.record({
      x: fc.integer({ min: -100, max: 900 }),
      y: fc.integer({ min: -100, max: 700 }),
    }),
    long: fc.integer({ min: 30, max: 220 }),
    short: fc.integer({ min: 10, max: 30 }),
    rank: fc.integer({ min: 0, max: 5 }),
    broad: fc.boolean(),
    must,
  });
const anyWishes = (must: fc.Arbitrary<boolean>, most: number) =>
  fc.array(anyWish(must), { maxLength: most }).map((wishes) =>
    wishes.map(
      ({ at, long, short, rank, broad, must: shown }, i): LabelWish => ({
        key: `label-${i}`,
        at,
        spots: broad ? overBroad(40, true) : roundAbout(12),
        forms: [
          { text: 'long', width: long, height: 22 },
          { text: 'short', width: short, height: 22 },
        ],
        rank,
        must: shown,
      }),
    ),
  );

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.left + b.width &&
  b.left < a.left + a.width &&
  a.top < b.top + b.height &&
  b.top < a.top + a.height;

const isInside = (box: Box): boolean =>
  box.left >= 0 &&
  box.top >= 0 &&
  box.left + box.width <= size.width &&
  box.top + box.height <= size.height;

describe('places for labels', () => {
  test('L1: none is cut off by the edge of the screen', () => {
    fc.assert(
      fc.property(anyWishes(fc.boolean(), 30), (wishes) => {
        for (const label of placeLabels(wishes, nothing)) expect(isInside(label.box)).toBe(true);
      }),
    );
  });

  test('L2: no two that may be left out overlap', () => {
    fc.assert(
      fc.property(anyWishes(fc.constant(false), 40), (wishes) => {
        const labels = placeLabels(wishes, nothing);
        for (const [i, a] of labels.entries()) {
          for (const b of labels.slice(i + 1)) expect(overlap(a.box, b.box)).toBe(false);
        }
      }),
    );
  });

  test('L3: one that must be shown is, whenever its thing is on the screen, and no other', () => {
    fc.assert(
      fc.property(anyWishes(fc.constant(true), 40), (wishes) => {
        const keys = placeLabels(wishes, nothing).map((label) => label.key);
        const seen = wishes.filter(({ at }) => onScreen(at, size));
        expect(new Set(keys)).toEqual(new Set(seen.map((wish) => wish.key)));
      }),
    );
  });

  test('L3: one whose thing is off the screen is left out, and leaves no fragment at the edge', () => {
    const wish = wishAt(-50, 300);
    expect(placeLabels([wish], nothing)).toEqual([]);
    expect(placeLabels([{ ...wish, must: true }], nothing)).toEqual([]);
  });

  test('L4: none that may be left out stands under what stands over the drawing', () => {
    const zones = reservedZones(size, {
      head: true,
      legend: true,
      foot: 66,
      legends: { width: 300, height: 110 },
    });
    expect(zones.some((zone) => overlap(zone, { left: 290, top: 100, width: 9, height: 9 }))).toBe(
      true,
    );
    fc.assert(
      fc.property(anyWishes(fc.constant(false), 40), (wishes) => {
        for (const label of placeLabels(wishes, { ...nothing, reserved: zones })) {
          for (const zone of zones) expect(overlap(label.box, zone)).toBe(false);
        }
      }),
    );
  });

  test('L4: one that must be shown, though its thing lies under the legend, is moved out of there with a line to it', () => {
    const zones = reservedZones(size, {
      head: true,
      legend: true,
      foot: 0,
      legends: { width: 0, height: 0 },
    });
    const under = fc.record({
      x: fc.integer({ min: 0, max: 500 }),
      y: fc.constantFrom(...[3, 20, 40, 570, 585, 599]),
    });
    fc.assert(
      fc.property(under, ({ x, y }) => {
        const wish = { ...wishAt(x, y), points: true, must: true } as const;
        const [label] = placeLabels([wish], { ...nothing, reserved: zones });
        if (!label) throw new Error('expected a label');
        for (const zone of zones) expect(overlap(label.box, zone)).toBe(false);
        expect(isInside(label.box)).toBe(true);
      }),
    );
  });

  test('L8: one that names another point at every spot has its line to the point beside it', () => {
    const spots = [0, 200].map((x) => ({ x, y: 40, sideX: 0, sideY: 1, names: { x, y: 0 } }));
    const ground = { ...nothing, reserved: [{ left: 60, top: 300, width: 80, height: 80 }] };
    const [label] = placeLabels([{ ...wishAt(100, 300), spots }], ground);
    expect(label).toMatchObject({ place: 1, at: { x: 300, y: 300 }, led: true });
  });

  test('L9: one that keeps apart does not stand on the line of another', () => {
    const far = { ...wishAt(100, 300), spots: [{ x: 200, y: 0, sideX: 1, sideY: 0 }], rank: 0 };
    const height = (apart: number | undefined): LabelWish => ({
      ...wishAt(200, 300),
      key: 'height',
      spots: [0, 60].map((y) => ({ x: 0, y, sideX: 0, sideY: 0 })),
      rank: 1,
      ...(apart !== undefined && { apart }),
    });
    const placeOf = (wish: LabelWish) =>
      placeLabels([far, wish], nothing).find(({ key }) => key === 'height')?.place;
    expect(placeOf(height(24))).toBe(1);
    expect(placeOf(height(undefined))).toBe(0);
  });

  test('L5: of free places one is taken that is not nearer to the tip of another mic', () => {
    const point = (key: string, x: number, rank: number): LabelWish => ({
      ...wishAt(x, 300),
      key,
      forms: [{ text: 'x', width: 50, height: 22 }],
      rank,
      points: true,
    });
    const tips = [400, 440].map((x) => ({ x, y: 300 }));
    const labels = placeLabels([point('a', 400, 0), point('b', 440, 1)], { ...nothing, tips });
    const away = (box: Box, x: number) =>
      Math.hypot(
        Math.max(box.left - x, 0, x - box.left - box.width),
        Math.max(box.top - 300, 0, 300 - box.top - box.height),
      );
    for (const { key, box } of labels) {
      const [own, other] = key === 'a' ? [400, 440] : [440, 400];
      expect(away(box, own), key).toBeLessThanOrEqual(away(box, other));
    }
    expect(labels.map(({ led }) => led)).toEqual([false, false]);
  });

  test('L6: one that would be hidden by a mic is left out, unless it must be shown', () => {
    const mic: Box = { left: 350, top: 250, width: 100, height: 100 };
    const name: LabelWish = { ...wishAt(400, 300), spots: overBroad(20, false) };
    expect(placeLabels([name], { ...nothing, covered: [mic] })).toEqual([]);
    expect(placeLabels([{ ...name, must: true }], { ...nothing, covered: [mic] })).toHaveLength(1);
  });

  test('L6: one that may be left out never lies under what is drawn over labels, and one that must be shown goes where that hides least', () => {
    // Over the last letter only: an arrow, as of the side where the audience is.
    const handle: Box = { left: 420, top: 290, width: 32, height: 32 };
    const name: LabelWish = { ...wishAt(400, 300), spots: overBroad(0, false) };
    const forms = [{ text: 'long', width: 50, height: 20 }];
    const at = (covered: readonly Box[], must: boolean) =>
      placeLabels([{ ...name, forms, must }], { ...nothing, covered });
    expect(at([handle], false)).toHaveLength(1);
    expect(at(drawnOver([handle]), false)).toEqual([]);
    const aside = [
      { x: 0, y: 0, sideX: 0, sideY: 0 },
      { x: 200, y: 0, sideX: 0, sideY: 0 },
    ];
    const mic: Box = { left: 575, top: 290, width: 16, height: 20 };
    const [label] = placeLabels([{ ...name, forms, spots: aside, must: true }], {
      ...nothing,
      covered: [...drawnOver([handle]), mic],
    });
    expect(label?.place).toBe(1);
  });

  test('L7: of labels that keep apart, the first to choose stands and the others only as far off as they keep', () => {
    const height = (key: string, x: number, rank: number): LabelWish => ({
      ...wishAt(x, 300),
      key,
      spots: [{ x: 0, y: 0, sideX: 0, sideY: 0 }],
      forms: [{ text: '900', width: 30, height: 18 }],
      rank,
      apart: 40,
    });
    const wishes = [height('near', 460, 1), height('first', 400, 0), height('far', 475, 2)];
    const keys = placeLabels(wishes, nothing).map(({ key }) => key);
    expect(keys).toEqual(['first', 'far']);
    const { apart, ...free } = height('free', 435, 3);
    expect(apart).toBe(40);
    expect(placeLabels([...wishes, free], nothing).map(({ key }) => key)).toContain('free');
  });

  test('the shorter form is taken where the longer finds no room', () => {
    const crowd = [-1, 1].map(
      (side): LabelWish => ({
        ...wishAt(400 + 60 * side, 300),
        key: `crowd-${side}`,
        spots: [{ x: 0, y: 0, sideX: 0, sideY: 0 }],
        forms: [{ text: 'x', width: 60, height: 22 }],
        rank: 0,
      }),
    );
    const between: LabelWish = {
      ...wishAt(400, 300),
      spots: [{ x: 0, y: 0, sideX: 0, sideY: 0 }],
      rank: 1,
    };
    const labels = placeLabels([...crowd, between], nothing);
    expect(labels.find((label) => label.key === 'wish')?.form.text).toBe('short');
  });

  test('a label stands where it hides least, as trying every place of every form tells', () => {
    const boxes = fc.array(
      fc.record({
        left: fc.integer({ min: -20, max: 780 }),
        top: fc.integer({ min: -20, max: 580 }),
        width: fc.integer({ min: 5, max: 90 }),
        height: fc.integer({ min: 5, max: 90 }),
      }),
      { maxLength: 40 },
    );
    const places = fc.array(fc.integer({ min: -1, max: 26 }), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(anyWishes(fc.constant(false), 40), boxes, places, (wishes, covered, kept) => {
        const before = new Map(wishes.flatMap(({ key }, i) => [[key, kept[i] ?? -1] as const]));
        const labels = placeLabels(wishes, { ...nothing, covered, before });
        const taken: Box[] = [];
        for (const wish of wishes.toSorted((a, b) => a.rank - b.rank)) {
          const label = labels.find(({ key }) => key === wish.key);
          const best = bestPlace(wish, taken, covered, before.get(wish.key));
          expect(label && { place: label.place, text: label.form.text }).toEqual(best);
          if (label) taken.push(label.box);
        }
      }),
    );
  });

  test('a label keeps its place while it is free, so that nothing jumps during a drag', () => {
    const wish = wishAt(400, 300);
    for (const place of [0, 3, 6]) {
      const [label] = placeLabels([wish], { ...nothing, before: new Map([['wish', place]]) });
      expect(label?.place).toBe(place);
    }
  });
});

/** The place and form that hide least, found by trying all; of equal ones the earlier. */
function bestPlace(
  { at, spots, forms }: LabelWish,
  taken: readonly Box[],
  covered: readonly Box[],
  kept: number | undefined,
) {
  if (at.x < 0 || at.y < 0 || at.x > size.width || at.y > size.height) return undefined;
  for (const { text, width, height } of forms) {
    const choices = spots.flatMap(({ x, y, sideX, sideY }, place) => {
      const left = at.x + x + ((sideX - 1) * width) / 2;
      const top = at.y + y + ((sideY - 1) * height) / 2;
      const box = { left, top, width, height };
      const room = { left: left - 3, top: top - 3, width: width + 6, height: height + 6 };
      const hidden = covered.reduce((sum, other) => sum + common(box, other), 0);
      const isFree =
        isInside(room) &&
        taken.every((other) => common(room, other) === 0) &&
        hidden <= width * height * 0.25;
      return isFree ? [{ place, cost: place === kept ? hidden : hidden + 5 + 30 * place }] : [];
    });
    const least = Math.min(...choices.map(({ cost }) => cost));
    const best = choices.find(({ cost }) => cost === least);
    if (best) return { place: best.place, text };
  }
  return undefined;
}

/** What two boxes have in common, px². */
const common = (a: Box, b: Box): number =>
  Math.max(0, Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left)) *
  Math.max(0, Math.min(a.top + a.height, b.top + b.height) - Math.max(a.top, b.top));

const wishAt = (x: number, y: number): LabelWish => ({
  key: 'wish',
  at: { x, y },
  spots: roundAbout(12),
  forms: [
    { text: 'long', width: 120, height: 22 },
    { text: 'short', width: 30, height: 22 },
  ],
  rank: 2,
  must: false,
});
