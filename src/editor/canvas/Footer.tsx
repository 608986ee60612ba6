import { useCallback } from 'react';
import type { LengthUnit } from '../../units/lengthText.ts';
import { FONTS } from '../labels/lettering.ts';
import { stampsOn } from '../labels/stamps.ts';
import type { Palette } from '../palette.ts';
import { paintLegend } from '../shapes/legend.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintScaleBar } from '../shapes/scaleBar.ts';
import type { View } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly view: View;
  readonly unit: LengthUnit;
  readonly legend: boolean;
  readonly colours: Palette;
}

/** The scale bar and what the marks mean, along the lower edge (screen px). */
export function Footer({ view, unit, legend, colours }: Props) {
  const paint = useCallback(
    ({ canvas }: Pen) => {
      const drawStamp = stampsOn(canvas, colours);
      const at = { x: 18, y: view.size.height - 22 };
      const bar = { left: at.x - 3, top: at.y - 26, width: 206, height: 36 };
      drawStamp({ key: `bar ${view.scale} ${unit}`, box: bar }, (ink) =>
        paintScaleBar(ink, { at, pxPerMm: view.scale, unit, font: FONTS.strong }, colours),
      );
      if (!legend) return;
      const place = { x: at.x + 205, y: at.y + 1, font: FONTS.plain, unit };
      const room = view.size.width - place.x - 190;
      const box = {
        left: place.x - 8,
        top: place.y - 14,
        width: Math.max(0, room) + 16,
        height: 28,
      };
      drawStamp({ key: `legend ${room} ${unit}`, box }, (ink) =>
        paintLegend(ink, { ...place, room }, colours),
      );
    },
    [view, unit, legend, colours],
  );
  return <Drawn paint={paint} colours={colours} />;
}
