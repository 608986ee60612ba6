import type { Ink } from '../ink/ink.ts';
import type { Palette } from '../palette.ts';
import { paintPlate } from '../shapes/plate.ts';
import type { ScreenSize } from '../view/view.ts';
import { FONTS, type Lettering } from './lettering.ts';
import { onScreen, type PlacedLabel } from './placeLabels.ts';

/** How many things that are seen have a name that found no room. Verdicts always stand; what is too small for a name at this zoom asks for none. */
export function namesLeftOut(
  labels: readonly Lettering[],
  placed: readonly Pick<PlacedLabel, 'key'>[],
  size: ScreenSize,
): number {
  const keys = new Set(placed.map(({ key }) => key));
  return labels.filter(
    ({ wish, look }) =>
      look.kind === 'name' && isOfThing(wish.key) && onScreen(wish.at, size) && !keys.has(wish.key),
  ).length;
}

const isOfThing = (key: string): boolean => key.startsWith('piece ');

/** From this width on there is room for the whole line beside the zoom buttons, px. */
const WHOLE_FROM = 420;

/** What is said of them on a drawing of a width in px; empty where none is left out. */
export function leftOutText(names: number, width: number): string {
  if (names === 0) return '';
  const said = `${names} ${names === 1 ? 'name' : 'names'} left out`;
  return width < WHOLE_FROM ? said : `${said}: zoom in`;
}

interface LinePen {
  readonly canvas: Ink;
  readonly colours: Pick<Palette, 'halo' | 'inkSoft' | 'plate'>;
}

/** From the lower left corner to the line, over the scale bar, px; labels keep out of it. */
const AT = { left: 15, bottom: 54 } as const;

/** A quiet line over the scale bar (screen px). */
export function paintLeftOut(
  { canvas, colours }: LinePen,
  names: number,
  { width, height }: ScreenSize,
): void {
  const text = leftOutText(names, width);
  if (text === '') return;
  canvas.font = FONTS.plain;
  const { width: wide } = canvas.measureText(text);
  paintPlate(
    canvas,
    { left: AT.left - 3, top: height - AT.bottom - 15, width: wide + 8, height: 22 },
    colours,
  );
  canvas.textAlign = 'left';
  canvas.textBaseline = 'alphabetic';
  canvas.lineJoin = 'round';
  canvas.strokeStyle = colours.halo;
  canvas.lineWidth = 4;
  canvas.fillStyle = colours.inkSoft;
  canvas.strokeText(text, AT.left, height - AT.bottom);
  canvas.fillText(text, AT.left, height - AT.bottom);
}
