import { useCallback } from 'react';
import type { Palette } from '../palette.ts';
import type { Outline } from '../pick/outline.ts';
import { paintGhosts } from '../shapes/ghost.ts';
import type { Pen } from '../shapes/pen.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly outlines: readonly Outline[];
  readonly colours: Palette;
}

/** Where things are that are only shown elsewhere, below them (inside the frame of the drawing). */
export function Ghosts({ outlines, colours }: Props) {
  const paint = useCallback((pen: Pen) => paintGhosts(pen, outlines), [outlines]);
  return outlines.length > 0 && <Drawn paint={paint} colours={colours} />;
}
