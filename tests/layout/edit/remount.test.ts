import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import { remount } from '../../../src/layout/edit/remount.ts';
import { deletePiece } from '../../../src/layout/edit/removePiece.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import type { Mic } from '../../../src/layout/mics/mic.ts';
import { placeMic } from '../../../src/rig/placeMic.ts';

const kit = fivePieceTwoRacks('kit');
const micOf = (layout: Layout, id: string): Mic => {
  const found = layout.mics.find((mic) => mic.id === id);
  if (!found) throw new Error(`no mic ${id}`);
  return found;
};
const placed = (layout: Layout, id: string) => placeMic(micOf(layout, id), layout);
const stands = ['tripodLow', 'tripodMedium', 'tripodTall', 'roundBoom'] as const;

describe('from a clip to a stand', () => {
  test('tip and aim stay, to a hundredth of a mm, and the stand reaches', () => {
    const clips = ['mic-rack-1', 'mic-rack-2', 'mic-floor-tom'];
    fc.assert(
      fc.property(fc.constantFrom(...clips), fc.constantFrom(...stands), (id, stand) => {
        const before = placed(kit, id);
        const after = placed(remount(kit, id, stand, before), id);
        expect(after.stand?.standClass).toBe(stand);
        expect(after.stand?.beyondReach).toBe(0);
        for (const axis of ['x', 'y', 'z'] as const) {
          expect(after.tip[axis]).toBeCloseTo(before.tip[axis], 2);
          expect(after.axis[axis]).toBeCloseTo(before.axis[axis], 5);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('and back to the clip it comes to the same place on the same drum', () => {
    for (const id of ['mic-rack-1', 'mic-rack-2', 'mic-floor-tom']) {
      const before = placed(kit, id);
      const stood = remount(kit, id, 'tripodMedium', before);
      const back = remount(stood, id, 'clip', placed(stood, id));
      expect(micOf(back, id).mount).toMatchObject({ kind: 'clip', drum: micOf(kit, id).hears[0] });
      expect(placed(back, id).tip.x).toBeCloseTo(before.tip.x, 2);
      expect(placed(back, id).tip.y).toBeCloseTo(before.tip.y, 2);
      expect(placed(back, id).tip.z).toBeCloseTo(before.tip.z, 2);
    }
  });
});

test('between classes of stand the base stays too', () => {
  const before = micOf(kit, 'mic-snare').mount;
  const after = micOf(
    remount(kit, 'mic-snare', 'tripodMedium', placed(kit, 'mic-snare')),
    'mic-snare',
  );
  expect(after.mount).toEqual({ ...before, stand: 'tripodMedium' });
});

test('a clip is put on the drum its mic hears, if any, else on the nearest', () => {
  const snare = remount(kit, 'mic-snare', 'clip', placed(kit, 'mic-snare'));
  expect(micOf(snare, 'mic-snare').mount).toMatchObject({ kind: 'clip', drum: 'snare' });
  const hat = remount(kit, 'mic-hi-hat', 'clip', placed(kit, 'mic-hi-hat'));
  expect(micOf(hat, 'mic-hi-hat').mount).toMatchObject({ kind: 'clip', drum: 'rack-1' });
});

test('a plate lies in the kick, or on the deck under where the mic was', () => {
  const pose = placed(kit, 'mic-kick-in');
  const inside = remount(kit, 'mic-kick-in', 'plateInKick', pose);
  expect(micOf(inside, 'mic-kick-in').mount).toMatchObject({ kind: 'plateInKick', kick: 'kick' });
  const onDeck = remount(kit, 'mic-kick-in', 'plateOnDeck', pose);
  expect(micOf(onDeck, 'mic-kick-in').mount).toEqual({
    kind: 'plateOnDeck',
    x: 50,
    y: 1214,
    turn: 270,
  });
});

test('without a kick there is no plate in one', () => {
  const without = deletePiece(kit, 'kick');
  const pose = placed(without, 'mic-kick-in');
  expect(remount(without, 'mic-kick-in', 'plateInKick', pose)).toBe(without);
});
