import type { Id } from '../../src/layout/fields.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import { isStruck } from '../../src/layout/pieces/piece.ts';

const onStand = (layout: Layout): readonly Mic[] =>
  layout.mics.filter(({ mount }) => mount.kind === 'stand');

const withMic = (layout: Layout, id: Id, change: (mic: Mic) => Mic): Layout => ({
  ...layout,
  mics: layout.mics.map((mic) => (mic.id === id ? change(mic) : mic)),
});

/** A large mic on a low boom that is far too short for where it is to be, off everything that moves. */
export function farFromStand(layout: Layout): { readonly layout: Layout; readonly id: Id } {
  const [mic] = onStand(layout);
  if (mic?.mount.kind !== 'stand') throw new Error('expected a mic on a stand');
  const { mount, id } = mic;
  return {
    id,
    layout: withMic(layout, id, (one) => ({
      ...one,
      micClass: 'kick-dynamic',
      mount: {
        ...mount,
        stand: 'tripodLow',
        tip: { x: 1350, y: 250, z: 1600 },
        base: { x: 800, y: 250 },
        mast: null,
      },
    })),
  };
}

/** Two mics on stands of which the tips meet, off everything that moves. */
export function cutting(layout: Layout): { readonly layout: Layout; readonly ids: readonly Id[] } {
  const [first, second] = onStand(layout);
  if (first?.mount.kind !== 'stand' || second?.mount.kind !== 'stand') {
    throw new Error('expected two mics on stands');
  }
  const tip = { x: 1100, y: -200, z: 1700 };
  const [a, b] = [first.mount, second.mount];
  const at = (y: number) => ({ stand: 'tripodTall' as const, mast: null, base: { x: 1100, y } });
  const one = withMic(layout, first.id, (mic) => ({
    ...mic,
    mount: { ...a, ...at(250), tip, azimuth: 270, pitch: -90 },
  }));
  return {
    ids: [first.id, second.id],
    layout: withMic(one, second.id, (mic) => ({
      ...mic,
      mount: { ...b, ...at(-220), tip: { ...tip, y: -210 }, azimuth: 90, pitch: -90 },
    })),
  };
}

/** A mic on a tall boom that hangs straight over the player's head, its tip so high over the deck, mm. */
export function overHead(layout: Layout, z: number): readonly [Layout, Id] {
  const mic = onStand(layout).find(({ mount }) => mount.kind === 'stand' && mount.tip.z > 1400);
  if (mic?.mount.kind !== 'stand') throw new Error('expected an overhead');
  const { mount, id } = mic;
  const hung = {
    ...mount,
    tip: { x: 0, y: 0, z },
    base: { x: -500, y: -250 },
    azimuth: 90,
    pitch: -90,
    mast: null,
  };
  return [withMic(layout, id, (one) => ({ ...one, mount: hung })), id];
}

/** For every piece on a stand of its own: the first mic on a stand with its tip in that stand's mast, 500 mm over the deck, its base farther out. */
export function inMasts(
  layout: Layout,
): readonly { readonly layout: Layout; readonly id: Id; readonly piece: Id }[] {
  const [mic] = onStand(layout);
  if (mic?.mount.kind !== 'stand') throw new Error('expected a mic on a stand');
  const { mount, id } = mic;
  return layout.pieces.flatMap((piece) => {
    if (!isStruck(piece) || piece.support.kind !== 'stand') return [];
    const hub = { x: piece.x + piece.support.dx, y: piece.y + piece.support.dy };
    const out = 1 + 500 / Math.hypot(hub.x, hub.y);
    const changed: Mic['mount'] = {
      ...mount,
      tip: { ...hub, z: 500 },
      base: { x: out * hub.x, y: out * hub.y },
      mast: null,
      azimuth: ((Math.atan2(-hub.y, -hub.x) * 180) / Math.PI + 360) % 360,
      pitch: 0,
    };
    const moved = withMic(layout, id, (one) => ({ ...one, mount: changed }));
    return [{ id, piece: piece.id, layout: moved }];
  });
}
