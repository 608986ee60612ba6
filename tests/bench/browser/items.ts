import { hitsAt } from '../../../src/editor/pick/pick.ts';
import { type Grip, pickablesOf } from '../../../src/editor/pick/pickables.ts';
import { extentOf, FIT_BORDER } from '../../../src/editor/view/extent.ts';
import { type KitView, kitToScreen } from '../../../src/editor/view/kitView.ts';
import { fitted, type ScreenSize, toScreen } from '../../../src/editor/view/view.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { createAnalyst } from '../../../src/report/analyse.ts';
import type { Selection } from '../../../src/session/selection.ts';

/** Something that is dragged, and where on the plan a finger takes hold of it, px. */
export interface Item {
  readonly name: string;
  /** What a drag of it selects. */
  readonly selection: Selection;
  readonly at: { readonly x: number; readonly y: number };
}

/** Every piece, mic, stand and box of a layout that a finger can drag on the fitted plan. */
export function itemsOf(layout: Layout, size: ScreenSize): readonly Item[] {
  const start = { seenFrom: 'house', size, centre: { x: 0, y: 0 }, scale: 1 } as const;
  const kitView: KitView = {
    view: fitted(start, extentOf(layout), FIT_BORDER),
    deck: layout.deck,
  };
  const report = createAnalyst()(layout);
  const pickables = pickablesOf(layout, report, true);
  const first = (spot: { x: number; y: number }) =>
    hitsAt(pickables, spot, kitView.view.scale)[0]?.pickable;
  const found = (
    name: string,
    spots: readonly { x: number; y: number }[],
    grip: Grip,
    id: string,
  ) => {
    for (const spot of spots) {
      const met = first(spot);
      if (met !== undefined && idOf(met.selection) === id && met.grip === grip) {
        return [{ name, selection: met.selection, at: kitToScreen(kitView, spot) }];
      }
    }
    return [];
  };
  return [
    ...layout.pieces.flatMap((piece) => {
      if (!('x' in piece)) return [];
      const reach = 'diameter' in piece ? piece.diameter / 2 : piece.length / 2;
      return found(piece.name, about(piece, reach), 'whole', piece.id);
    }),
    ...report.rig.mics.flatMap(({ mic, tip, stand }) => [
      ...found(mic.name, about(tip, 20), 'tip', mic.id),
      ...(stand ? found(`${mic.name}, base`, about(stand.footprint.hub, 20), 'base', mic.id) : []),
    ]),
    { name: 'Box', selection: { kind: 'box' }, at: toScreen(kitView.view, layout.box) },
  ];
}

const idOf = (selection: Selection): string => ('id' in selection ? selection.id : selection.kind);

/** Spots of a thing, its middle first. */
const about = ({ x, y }: { readonly x: number; readonly y: number }, reach: number) =>
  [0, 0.35, 0.6, 0.85].flatMap((share) =>
    Array.from({ length: share === 0 ? 1 : 12 }, (_, i) => ({
      x: x + share * reach * Math.cos((i * Math.PI) / 6),
      y: y + share * reach * Math.sin((i * Math.PI) / 6),
    })),
  );
