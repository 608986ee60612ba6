import { Layer } from 'react-konva/es/ReactKonvaCore.js';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import type { KitView } from '../view/kitView.ts';
import { Drawn } from './Drawn.tsx';
import { DeckFrame, KitFrame } from './Frames.tsx';

interface Props {
  readonly paint: (pen: Pen) => void;
  readonly kitView: KitView;
  readonly colours: Palette;
}

/** One drawing in the kit frame on a layer of its own: it is not drawn again in every frame of a drag. */
export function KitLayer({ paint, kitView, colours }: Props) {
  return (
    <Layer listening={false}>
      <DeckFrame view={kitView.view}>
        <KitFrame kit={kitView.deck.kit}>
          <Drawn paint={paint} colours={colours} />
        </KitFrame>
      </DeckFrame>
    </Layer>
  );
}
