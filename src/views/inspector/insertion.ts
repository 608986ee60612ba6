import { moveMicTip } from '../../layout/edit/mics.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';

/** Where a mic on a stand has its tip against a kick's front head. */
export interface Insertion {
  readonly kick: Kick;
  /** How far the tip stands behind the front head, along the shell; in front of it: below 0. */
  readonly depth: Mm;
}

/** The unit direction in which a kick's front head faces. */
function facing({ turn, rise }: Kick) {
  const flat = cosDeg(rise);
  return { x: flat * cosDeg(turn), y: flat * sinDeg(turn), z: sinDeg(rise) };
}

/** How deep the tip of a mic on a stand stands in the kick that it hears first; undefined for every other mic. */
export function insertionOf(layout: Layout, mic: Mic): Insertion | undefined {
  const kick = layout.pieces.find((piece) => piece.id === mic.hears[0]);
  if (kick?.kind !== 'kick' || mic.mount.kind !== 'stand') return undefined;
  const { tip } = mic.mount;
  const f = facing(kick);
  const along = (tip.x - kick.x) * f.x + (tip.y - kick.y) * f.y + (tip.z - kick.z) * f.z;
  return { kick, depth: kick.depth / 2 - along };
}

/** Moves the tip of a mic along the kick's shell until it stands so deep behind the front head. */
export function insertTo(layout: Layout, id: Id, depth: Mm): Layout {
  const mic = layout.mics.find((each) => each.id === id);
  const now = mic && insertionOf(layout, mic);
  if (!now || mic?.mount.kind !== 'stand') return layout;
  const { tip } = mic.mount;
  const f = facing(now.kick);
  const out = now.depth - depth;
  return moveMicTip(layout, id, {
    x: tip.x + f.x * out,
    y: tip.y + f.y * out,
    z: tip.z + f.z * out,
  });
}
