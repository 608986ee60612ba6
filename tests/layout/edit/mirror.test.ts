import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Vec3 } from '../../../src/geometry/vector.ts';
import { fivePieceTwoRacks } from '../../../src/layout/catalogue/kits/fivePieceTwoRacks.ts';
import {
  mirrorKit,
  mirrorMic,
  mirrorPiece,
  mirrorUnderPlayer,
} from '../../../src/layout/edit/mirror.ts';
import { buildRig } from '../../../src/rig/buildRig.ts';
import { randomKit } from '../../support/randomKit.ts';

const kit = fivePieceTwoRacks('kit');

test('twice mirrored is the same again, to the last bit', () => {
  fc.assert(
    fc.property(randomKit, (layout) => {
      expect(mirrorKit(mirrorKit(layout))).toEqual(layout);
    }),
    { numRuns: 60 },
  );
});

test('one piece twice mirrored is the same again', () => {
  for (const { id } of kit.pieces) expect(mirrorPiece(mirrorPiece(kit, id), id)).toEqual(kit);
});

test('deck, stairs and box stay, the lead hand and the feet change sides', () => {
  const left = mirrorKit(kit);
  expect([left.deck, left.box]).toEqual([kit.deck, kit.box]);
  expect(left.player.leadHand).toBe('left');
  const feet = left.pieces.flatMap((piece) => (piece.kind === 'pedal' ? [piece.foot] : []));
  expect(feet).toEqual(['left', 'right']);
});

test('mirrored under the same player: the kit of the mirror image, the hand that led leads on', () => {
  fc.assert(
    fc.property(randomKit, (layout) => {
      const under = mirrorUnderPlayer(layout);
      expect(under).toEqual({ ...mirrorKit(layout), player: layout.player });
      expect(mirrorUnderPlayer(under)).toEqual(layout);
    }),
    { numRuns: 30 },
  );
});

test('in space, every mic, shell and foot of the mirrored kit is the mirror image of the first', () => {
  const image = ({ x, y, z }: Vec3) =>
    [-x + 0, y + 0, z + 0].map((c) => Math.round(c * 1e6) / 1e6 + 0);
  const plain = ({ x, y, z }: Vec3) => [x, y, z].map((c) => Math.round(c * 1e6) / 1e6 + 0);
  fc.assert(
    fc.property(randomKit, (layout) => {
      const [first, second] = [buildRig(layout), buildRig(mirrorKit(layout))];
      expect(second.mics.map(({ tip }) => plain(tip))).toEqual(
        first.mics.map(({ tip }) => image(tip)),
      );
      expect(second.mics.map(({ axis }) => plain(axis))).toEqual(
        first.mics.map(({ axis }) => image(axis)),
      );
      const shells = (rig: typeof first, show: typeof plain) =>
        rig.pieces.map((piece) =>
          piece.shells.map(({ centre, axis }) => [show(centre), show(axis)]),
        );
      expect(shells(second, plain)).toEqual(shells(first, image));
      const feet = (rig: typeof first, show: typeof plain) =>
        rig.pieces.map((piece) =>
          piece.footprints
            .flatMap((print) => [print.hub, ...print.feet])
            .map(({ x, y }) => show({ x, y, z: 0 }).join(' '))
            .toSorted(),
        );
      expect(feet(second, plain)).toEqual(feet(first, image));
    }),
    { numRuns: 40 },
  );
});

test('one mic is mirrored alone: its image is that in the mirrored kit', () => {
  const image = mirrorKit(kit);
  for (const mic of kit.mics) {
    const alone = mirrorMic(kit, mic.id);
    expect(alone.mics.find(({ id }) => id === mic.id)).toEqual(
      image.mics.find(({ id }) => id === mic.id),
    );
    expect({ ...alone, mics: [] }).toEqual({ ...kit, mics: [] });
    const others = ({ id }: { readonly id: string }) => id !== mic.id;
    expect(alone.mics.filter(others)).toEqual(kit.mics.filter(others));
    expect(mirrorMic(alone, mic.id)).toEqual(kit);
  }
});

test('a plate in a kick is its own mirror image, and an unknown mic mirrors nothing', () => {
  expect(mirrorMic(kit, 'mic-kick-plate')).toBe(kit);
  expect(mirrorMic(kit, 'nobody')).toBe(kit);
});
