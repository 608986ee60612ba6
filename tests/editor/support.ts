import { type KitView, kitToScreen } from '../../src/editor/view/kitView.ts';
import type { ScreenPoint } from '../../src/editor/view/view.ts';
import { fitted } from '../../src/editor/view/view.ts';
import { STARTING_KITS } from '../../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../../src/layout/layout.ts';
import type { Mic } from '../../src/layout/mics/mic.ts';
import type { StandMount } from '../../src/layout/mics/mount.ts';
import type { Piece } from '../../src/layout/pieces/piece.ts';
import type { Report } from '../../src/report/report.ts';
import type { SeenFrom } from '../../src/rig/standpoint.ts';

/** A starting kit by its key. */
export function kit(key: string): Layout {
  const found = STARTING_KITS.find((one) => one.key === key);
  if (!found) throw new Error(`expected a starting kit, found ${key}`);
  return found.make('kit');
}

/** The member of the union of pieces that can be of a kind. */
type PieceOf<Kind, Member = Piece> = Member extends { readonly kind: unknown }
  ? Kind extends Member['kind']
    ? Member
    : never
  : never;

export function pieceOf<Kind extends Piece['kind']>(layout: Layout, kind: Kind): PieceOf<Kind> {
  const found = layout.pieces.find((piece) => piece.kind === kind);
  if (!found) throw new Error(`expected a ${kind} in the kit`);
  return found as PieceOf<Kind>;
}

export function standMic(layout: Layout): { readonly mic: Mic; readonly mount: StandMount } {
  for (const mic of layout.mics) if (mic.mount.kind === 'stand') return { mic, mount: mic.mount };
  throw new Error('expected a mic on a stand');
}

export const pieceAfter = (layout: Layout, id: string): Piece => {
  const found = layout.pieces.find((piece) => piece.id === id);
  if (!found) throw new Error(`expected the piece ${id}`);
  return found;
};

export const micAfter = (layout: Layout, id: string): Mic => {
  const found = layout.mics.find((mic) => mic.id === id);
  if (!found) throw new Error(`expected the mic ${id}`);
  return found;
};

/** The whole deck on a screen of 800 x 760. */
export const viewOf = (layout: Layout, seenFrom: SeenFrom = 'house'): KitView => ({
  deck: layout.deck,
  view: fitted(
    { seenFrom, size: { width: 800, height: 760 }, centre: { x: 0, y: 0 }, scale: 1 },
    {
      left: -layout.deck.width / 2,
      right: layout.deck.width / 2,
      back: -layout.deck.depth / 2,
      front: layout.deck.depth / 2,
    },
    { top: 40, right: 40, bottom: 40, left: 40 },
  ),
});

/** The tips of all mics on the screen. */
export const tipsIn = ({ rig }: Pick<Report, 'rig'>, kitView: KitView): readonly ScreenPoint[] =>
  rig.mics.map(({ tip }) => kitToScreen(kitView, tip));
