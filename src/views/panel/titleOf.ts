import type { Layout } from '../../layout/layout.ts';
import type { Selection } from '../../session/selection.ts';
import { nameOf } from '../words/nameOf.ts';

/** What a selected thing is called; null when it is no longer in the layout. */
export function titleOf(selection: Selection, layout: Layout): string | null {
  switch (selection.kind) {
    case 'piece':
      return layout.pieces.find((piece) => piece.id === selection.id)?.name ?? null;
    case 'mic':
      return layout.mics.some((mic) => mic.id === selection.id)
        ? nameOf(layout, selection.id)
        : null;
    case 'box':
      return 'Box';
    case 'deck':
      return 'Deck';
    case 'player':
      return 'Player';
  }
}
