import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { movePiece } from '../../../src/layout/edit/pieces.ts';
import { moveThrone } from '../../../src/layout/edit/throne.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { toDeck } from '../../../src/rig/deckFrame.ts';
import { randomKit } from '../../support/randomKit.ts';

const step = fc.integer({ min: -800, max: 800 });

/** Where every mic, hub and foot stands on the deck, and how high; without the throne's own. */
function placesOnDeck(layout: Layout): number[] {
  const rig = buildRig(layout);
  const pieces = rig.pieces.filter(({ piece }) => piece.kind !== 'throne');
  const spots = [
    ...rig.mics.flatMap(({ tip, deckPoint }) => [tip, deckPoint]),
    ...pieces.flatMap(({ shells }) => shells.map(({ centre }) => centre)),
    ...pieces.flatMap(({ footprints }) => footprints.flatMap(({ hub, feet }) => [hub, ...feet])),
  ];
  return spots.flatMap((spot) => {
    const { x, y } = toDeck(layout.deck, spot);
    return [x, y];
  });
}

test('everything but the throne stands where it stood on the deck', () => {
  fc.assert(
    fc.property(randomKit, step, step, (layout, x, y) => {
      const [before, after] = [placesOnDeck(layout), placesOnDeck(moveThrone(layout, { x, y }))];
      expect(after).toHaveLength(before.length);
      for (const [index, place] of before.entries()) expect(after[index]).toBeCloseTo(place, 4);
    }),
    { numRuns: 40 },
  );
});

test('the throne itself goes where it was moved', () => {
  fc.assert(
    fc.property(randomKit, step, step, (layout, x, y) => {
      const wanted = toDeck(layout.deck, { x, y });
      const { kit } = moveThrone(layout, { x, y }).deck;
      expect(kit.x).toBeCloseTo(wanted.x, 4);
      expect(kit.y).toBeCloseTo(wanted.y, 4);
    }),
    { numRuns: 40 },
  );
});

test('there and back is where it was', () => {
  const kit = fivePieceTwoRacks('kit');
  const there = movePiece(kit, 'throne', { x: 120, y: -45 });
  expect(there).not.toEqual(kit);
  expect(movePiece(there, 'throne', { x: -120, y: 45 })).toEqual(kit);
});

test('a way that puts something beyond the plan is not gone', () => {
  const kit = fivePieceTwoRacks('kit');
  expect(moveThrone(kit, { x: 30_000, y: 0 })).toBe(kit);
});
