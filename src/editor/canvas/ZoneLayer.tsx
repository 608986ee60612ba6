import { useCallback } from 'react';
import type { ForbiddenZone } from '../../report/zone.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintZone } from '../shapes/zone.ts';
import type { KitView } from '../view/kitView.ts';
import { Drawn } from './Drawn.tsx';
import { DeckFrame, KitFrame } from './Frames.tsx';
import { PaintedLayer } from './PaintedLayer.ts';

interface Props {
  readonly zone: ForbiddenZone;
  readonly isOld: boolean;
  /** What is drawn below and must not be hatched: a mic that stands there is not what the zone is about. */
  readonly mics: readonly PlacedMic[];
  readonly kitView: KitView;
  readonly colours: Palette;
}

/** Where the selected mic would be struck. A layer of its own: mics are cut out of the hatch, and nothing of it is drawn in a frame of a drag. */
export function ZoneLayer({ zone: { rings }, isOld, mics, kitView, colours }: Props) {
  const paint = useCallback(
    (pen: Pen) => paintZone(pen, { rings, isOld, mics }),
    [rings, isOld, mics],
  );
  return (
    <PaintedLayer listening={false}>
      <DeckFrame view={kitView.view}>
        <KitFrame kit={kitView.deck.kit}>
          <Drawn paint={paint} colours={colours} />
        </KitFrame>
      </DeckFrame>
    </PaintedLayer>
  );
}
