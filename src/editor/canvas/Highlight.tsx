import { useCallback } from 'react';
import type { Palette } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { paintHighlight } from '../shapes/highlight.ts';
import type { Pen } from '../shapes/pen.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly outlines: readonly Outline[];
  readonly colours: Palette;
}

/** The outline of what is selected; the first on its layer, because it clears what it surrounds (inside the frame of the drawing). */
export function Highlight({ outlines, colours }: Props) {
  const paint = useCallback((pen: Pen) => paintHighlight(pen, outlines), [outlines]);
  return <Drawn paint={paint} colours={colours} />;
}
