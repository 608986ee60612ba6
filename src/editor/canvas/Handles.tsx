import { useCallback } from 'react';
import { type Box, boxAbout } from '../labels/placeLabels.ts';
import type { Palette } from '../palette.ts';
import { paintHandle } from '../shapes/handle.ts';
import type { Pen } from '../shapes/pen.ts';
import type { Handle } from '../tools/handles.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly handles: readonly Handle[];
  readonly colours: Palette;
}

/** The handles of what is selected (screen px). */
export function Handles({ handles, colours }: Props) {
  const paint = useCallback(
    ({ canvas }: Pen) => {
      for (const handle of handles) paintHandle(canvas, handle, colours);
    },
    [handles, colours],
  );
  return <Drawn paint={paint} colours={colours} />;
}

const HALF = 16;

/** Where labels should not stand. */
export const handleBoxes = (handles: readonly Handle[]): readonly Box[] =>
  handles.map(({ at }) => boxAbout(at, HALF));
