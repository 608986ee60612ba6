import { describe, expect, test } from 'vitest';
import { createClearances } from '../../../../src/clearance/clearances.ts';
import { STARTING_KITS } from '../../../../src/layout/catalogue/kits/startingKits.ts';
import { mirrorKit } from '../../../../src/layout/edit/mirror.ts';
import type { Layout } from '../../../../src/layout/layout.ts';
import { isCymbal, isDrum, isStruck, type PieceKind } from '../../../../src/layout/pieces/piece.ts';
import { checkLayout } from '../../../../src/layout/read.ts';
import { Arm } from '../../../../src/player/arm.ts';
import { plays, signOf } from '../../../../src/player/hands.ts';
import { strikeOn } from '../../../../src/player/strike.ts';
import { buildRig } from '../../../../src/rig/buildRig.ts';
import { findStanding } from '../../../../src/rig/standing/findStanding.ts';

const kits = STARTING_KITS.map(({ key, make }) => [key, make(key)] as const);
const kitOf = (key: string): Layout => {
  const found = kits.find(([name]) => name === key);
  if (!found) throw new Error(`no kit ${key}`);
  return found[1];
};
const countOf = (layout: Layout, kind: PieceKind): number =>
  layout.pieces.filter((piece) => piece.kind === kind).length;

describe.each(kits)('%s', (key, layout) => {
  test('passes its own check and takes the id it is given', () => {
    expect(checkLayout(layout)).toEqual({ ok: true, layout });
    expect(STARTING_KITS.find((kit) => kit.key === key)?.make('other').id).toBe('other');
  });

  test('every mic is clear of all that moves, by the margin at least', () => {
    const rows = createClearances()(layout, buildRig(layout).mics);
    const near = rows.filter(({ clearance }) => !(clearance >= layout.margin));
    expect(near.map(({ mic, clearance }) => [mic, clearance])).toEqual([]);
    expect(rows).toHaveLength(layout.mics.length);
  });

  test('nothing stands in anything, feet pass each other, all is on the deck', () => {
    expect(findStanding(buildRig(layout), layout.deck)).toEqual([]);
  });

  test('every hand reaches what it plays, and every stand its mic', () => {
    const arm = new Arm(layout.player);
    const beyond = layout.pieces.filter(isStruck).flatMap((piece) =>
      (['right', 'left'] as const)
        .filter((side) => plays(side, piece.hands, layout.player.leadHand))
        .map((side) => {
          const { grip } = strikeOn(piece, signOf(side), arm, layout.player.strokeHeight);
          return [piece.id, side, arm.beyond(grip.x, grip.y, grip.z)];
        }),
    );
    expect(beyond.filter(([, , far]) => far !== 0)).toEqual([]);
    const stands = buildRig(layout).mics.filter(({ stand }) => (stand?.beyondReach ?? 0) > 0);
    expect(stands.map(({ mic }) => mic.id)).toEqual([]);
  });

  test('the mics fill the first inputs of the box, each once', () => {
    expect(layout.mics.map(({ input }) => input)).toEqual(layout.mics.map((_, i) => i + 1));
    expect(layout.mics.length).toBeLessThanOrEqual(layout.box.inputs);
  });

  test('the box stands at an edge of the deck, with cables for every mic', () => {
    const { box, deck, cabling } = layout;
    const toEdge = Math.min(deck.width / 2 - Math.abs(box.x), deck.depth / 2 - Math.abs(box.y));
    expect(toEdge).toBeGreaterThanOrEqual(0);
    expect(toEdge).toBeLessThanOrEqual(150);
    const carried = cabling.stock.reduce((sum, { count }) => sum + count, 0);
    expect(carried).toBeGreaterThanOrEqual(layout.mics.length);
  });

  test('there is one throne, a kick has its pedal and a hi-hat its own', () => {
    const plays = layout.pieces.flatMap((piece) => (piece.kind === 'pedal' ? [piece.plays] : []));
    expect(countOf(layout, 'throne')).toBe(1);
    expect(plays.includes('kick')).toBe(countOf(layout, 'kick') > 0);
    expect(plays.includes('hiHat')).toBe(countOf(layout, 'hiHat') > 0);
  });
});

describe('the kits that are asked for', () => {
  test.each([
    ['four-piece-jazz', { kick: 1, snare: 1, rackTom: 1, floorTom: 1 }],
    ['five-piece-one-rack', { kick: 1, snare: 1, rackTom: 1, floorTom: 2 }],
    ['five-piece-two-racks', { kick: 1, snare: 1, rackTom: 2, floorTom: 1 }],
  ] as const)('%s', (key, drums) => {
    const kinds = ['kick', 'snare', 'rackTom', 'floorTom'] as const;
    const counted = kinds.map((kind) => [kind, countOf(kitOf(key), kind)]);
    expect(Object.fromEntries(counted)).toEqual(drums);
  });

  test('a large kit with eight drums, seven cymbals and sixteen mics', () => {
    const kit = kitOf('large-kit');
    const drums = kit.pieces.filter((piece) => isDrum(piece) || piece.kind === 'kick');
    const cymbals = kit.pieces.filter((piece) => isCymbal(piece) || piece.kind === 'hiHat');
    expect([drums.length, cymbals.length, kit.mics.length]).toEqual([8, 7, 16]);
  });

  test('a left-handed kit, the mirror image of a right-handed one', () => {
    const left = kitOf('left-handed');
    expect(left.player.leadHand).toBe('left');
    expect(mirrorKit(left).pieces).toEqual(kitOf('five-piece-one-rack').pieces);
    expect(mirrorKit(left).mics).toEqual(kitOf('five-piece-one-rack').mics);
  });

  test('an empty deck has a throne and nothing else', () => {
    const { pieces, mics } = kitOf('empty-deck');
    expect([pieces.map(({ kind }) => kind), mics]).toEqual([['throne'], []]);
  });

  test('what is said about each counts right', () => {
    for (const { key, about } of STARTING_KITS) {
      const said = /(\d+) mics/.exec(about)?.[1];
      if (said !== undefined) expect([key, kitOf(key).mics.length]).toEqual([key, Number(said)]);
    }
  });
});
