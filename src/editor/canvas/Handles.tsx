import { useCallback } from 'react';
import { type Box, boxAbout } from '../labels/placeLabels.ts';
import type { Palette } from '../palette.ts';
import { HANDLE_REACH, paintHandle } from '../shapes/handle.ts';
import { apart, FULL_TURN, type Pen } from '../shapes/pen.ts';
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

/**
 * Cut out of what is drawn before on the same layer: while something moves, handles are drawn on the layer below the labels, and are seen
 * through them (screen px).
 */
export function HandleHoles({ handles, colours }: Props) {
  const paint = useCallback(
    (pen: Pen) => {
      apart(pen, () => {
        pen.canvas.globalCompositeOperation = 'destination-out';
        for (const { at } of handles) {
          pen.canvas.beginPath();
          pen.canvas.arc(at.x, at.y, HANDLE_REACH, 0, FULL_TURN);
          pen.canvas.fill();
        }
      });
    },
    [handles],
  );
  return <Drawn paint={paint} colours={colours} />;
}

const HALF = 16;

/** Where labels should not stand. */
export const handleBoxes = (handles: readonly Handle[]): readonly Box[] =>
  handles.map(({ at }) => boxAbout(at, HALF));
