import type { Context } from 'konva/lib/Context.js';
import type { Shape as KonvaShape } from 'konva/lib/Shape.js';
import { memo, useCallback } from 'react';
import { Shape } from 'react-konva/es/ReactKonvaCore.js';
import type { Palette } from '../palette.ts';
import type { Pen } from '../shapes/pen.ts';

interface Props {
  /** Keeps its identity while what it draws is the same: then nothing is done. */
  readonly paint: (pen: Pen) => void;
  readonly colours: Palette;
}

/** One node of the canvas, painted by a function in the units of the group it stands in. */
export const Drawn = memo(function Drawn({ paint, colours }: Props) {
  const scene = useCallback(
    (context: Context, shape: KonvaShape): void => {
      const scale = Math.abs(shape.getAbsoluteScale().x);
      try {
        paint({ canvas: context._context, px: 1 / scale, colours });
      } catch (fault) {
        // One thing that can't be drawn must not take the whole plan along; the page says that something went wrong.
        reportError(fault);
      }
    },
    [paint, colours],
  );
  return <Shape sceneFunc={scene} listening={false} />;
});
