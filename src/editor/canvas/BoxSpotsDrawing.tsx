import { useCallback } from 'react';
import { useBoxSearch } from '../../session/boxSearch.ts';
import type { Palette } from '../palette.ts';
import { paintBoxSpots } from '../shapes/boxSpots.ts';
import type { Pen } from '../shapes/pen.ts';
import { Drawn } from './Drawn.tsx';

/** How good the spots along the deck's edges are, while they are looked at (inside the deck frame). */
export function BoxSpotsDrawing({ colours }: { readonly colours: Palette }) {
  const { current, by } = useBoxSearch();
  const spots = current?.kind === 'found' ? current.spots : null;
  const paint = useCallback(
    (pen: Pen) => {
      if (spots) paintBoxSpots(pen, spots, by);
    },
    [spots, by],
  );
  return spots && <Drawn paint={paint} colours={colours} />;
}
