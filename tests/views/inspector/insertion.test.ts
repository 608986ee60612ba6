import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STARTING_KITS } from '../../../src/layout/catalogue/kits/startingKits.ts';
import { tiltPiece } from '../../../src/layout/edit/pieces.ts';
import { insertionOf, insertTo } from '../../../src/views/inspector/insertion.ts';
import { turnTo } from '../../../src/views/inspector/turnTo.ts';
import { sample } from '../words/sampleLayout.ts';

const kickIn = sample.mics.find((mic) => mic.name === 'Kick in');
if (!kickIn) throw new Error('the sample kit has a mic in the kick');

describe('how deep a kick mic stands in the port', () => {
  it('is known for mics on stands that hear a kick first, and for no others', () => {
    for (const { make } of STARTING_KITS) {
      const layout = make('kit');
      for (const mic of layout.mics) {
        const source = layout.pieces.find((piece) => piece.id === mic.hears[0]);
        const expected = mic.mount.kind === 'stand' && source?.kind === 'kick';
        expect(insertionOf(layout, mic) !== undefined, `${layout.name}: ${mic.name}`).toBe(
          expected,
        );
      }
    }
  });

  it('is the depth of the shell when the tip is at the batter head, by hand', () => {
    const kick = sample.pieces.find((piece) => piece.kind === 'kick');
    if (kick?.kind !== 'kick' || kickIn.mount.kind !== 'stand')
      throw new Error('a kick on a stand');
    // The sample's kick faces the audience (turn 90), so its batter head is half the depth behind its centre in y.
    const tip = { x: kick.x, y: kick.y - kick.depth / 2, z: kick.z };
    const mic = { ...kickIn, mount: { ...kickIn.mount, tip } };
    expect(insertionOf(sample, mic)?.depth).toBeCloseTo(kick.depth, 9);
  });

  it('comes out as it was set, whatever way the kick faces and rises', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -300, max: 450 }),
        fc.integer({ min: 0, max: 359 }),
        fc.integer({ min: -10, max: 20 }),
        (depth, turn, rise) => {
          const turned = tiltPiece(turnTo(sample, 'kick', turn), 'kick', rise);
          const set = insertTo(turned, kickIn.id, depth);
          const mic = set.mics.find((each) => each.id === kickIn.id);
          expect(mic && insertionOf(set, mic)?.depth).toBeCloseTo(depth, 3);
        },
      ),
    );
  });
});
