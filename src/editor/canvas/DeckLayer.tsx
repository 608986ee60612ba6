import { useCallback } from 'react';
import type { Deck } from '../../layout/deck.ts';
import type { Report } from '../../report/report.ts';
import type { Palette } from '../palette.ts';
import { paintDeck } from '../shapes/deck.ts';
import type { Pen } from '../shapes/pen.ts';
import type { View } from '../view/view.ts';
import { BoxSpotsDrawing } from './BoxSpotsDrawing.tsx';
import { Drawn } from './Drawn.tsx';
import { DeckFrame } from './Frames.tsx';
import { LoomDrawing } from './LoomDrawing.tsx';
import { PaintedLayer } from './PaintedLayer.ts';

interface Props {
  readonly deck: Deck;
  /** The cables on it; null where they are not shown. */
  readonly loom: Report['loom'] | null;
  readonly selectedMic: string | null;
  readonly view: View;
  readonly colours: Palette;
}

/** The deck and what lies on it, under all that stands there. In a drag it is drawn when cables are laid anew, not in every frame. */
export function DeckLayer({ deck, loom, selectedMic, view, colours }: Props) {
  const paint = useCallback((pen: Pen) => paintDeck(pen, deck), [deck]);
  return (
    <PaintedLayer listening={false}>
      <DeckFrame view={view}>
        <Drawn paint={paint} colours={colours} />
        <BoxSpotsDrawing colours={colours} />
        {loom && <LoomDrawing {...{ loom, selectedMic, colours }} />}
      </DeckFrame>
    </PaintedLayer>
  );
}
