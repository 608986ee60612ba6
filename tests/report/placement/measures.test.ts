import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moveKit } from '../../../src/layout/edit/stage.ts';
import { measuresOf } from '../../../src/report/placement/measures.ts';
import { spotOfBox, spotsOfMic, spotsOfPiece } from '../../../src/report/placement/spots.ts';
import { createRigBuilder } from '../../../src/rig/buildRig.ts';
import { deckOutline, toDeck } from '../../../src/rig/deckFrame.ts';
import { randomKit } from '../../support/randomKit.ts';

const spotsIn = (
  layout: Parameters<typeof spotOfBox>[0] &
    Parameters<typeof spotsOfPiece>[1] & { mics: readonly Parameters<typeof spotsOfMic>[0][] },
) => [
  ...layout.pieces.flatMap((piece) => spotsOfPiece(piece, layout)),
  ...layout.mics.flatMap((mic) => spotsOfMic(mic, layout)),
];

describe('measures of a spot', () => {
  test('two edges give it back (T1)', () => {
    fc.assert(
      fc.property(randomKit, (layout) => {
        const [corner = { x: 0, y: 0 }] = deckOutline(layout.deck);
        for (const { at, measures } of [...spotsIn(layout), spotOfBox(layout)]) {
          expect(corner.x + measures.fromLeft).toBeCloseTo(at.x, 6);
          expect(corner.y + measures.fromBack).toBeCloseTo(at.y, 6);
        }
      }),
    );
  });

  test('a stand and the front of its mic are measured, a plate by its front edge: they fix both on the deck (T3)', () => {
    const rigOf = createRigBuilder();
    fc.assert(
      fc.property(randomKit, (layout) => {
        const { mics } = rigOf(layout);
        for (const { mic, tip, stand } of mics) {
          const at = (point: string) =>
            spotsOfMic(mic, layout).find((spot) => spot.point === point)?.at;
          const front = toDeck(layout.deck, { x: tip.x, y: tip.y });
          if (mic.mount.kind === 'plateOnDeck') expect(at('frontEdge')).toEqual(front);
          if (!stand) continue;
          const { x, y } = stand.footprint.hub;
          expect(at('micFront')).toEqual(front);
          expect(at('stand')).toEqual(toDeck(layout.deck, { x, y }));
        }
      }),
    );
  });

  test('from throne and kick they stay the same wherever the kit is moved and turned (T2)', () => {
    const number = fc.double({ min: -3000, max: 3000, noNaN: true });
    fc.assert(
      fc.property(randomKit, number, number, number, (layout, x, y, turn) => {
        const moved = moveKit(layout, { x, y, turn });
        const [before, after] = [spotsIn(layout), spotsIn(moved)];
        before.forEach(({ measures }, i) => {
          expect(after[i]?.measures.fromThrone).toBeCloseTo(measures.fromThrone, 3);
          if (measures.fromKick !== null) {
            expect(after[i]?.measures.fromKick).toBeCloseTo(measures.fromKick, 3);
          }
        });
      }),
    );
  });

  test('by hand: 1200 right of and 900 before the throne is 1500 from it', () => {
    const deck = {
      width: 3000,
      depth: 2000,
      height: 0,
      kit: { x: 100, y: -400, turn: 0 },
      stairs: [],
    };
    expect(measuresOf({ deck, pieces: [] }, { x: 1300, y: 500 })).toEqual({
      fromLeft: 2800,
      fromBack: 1500,
      fromThrone: 1500,
      fromKick: null,
    });
  });
});
