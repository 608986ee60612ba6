import type { Box } from '../../layout/cabling.ts';
import { type BandColour, colourBands } from '../../units/colourCode.ts';
import { toScreen, type View } from '../view/view.ts';
import { inputPitch, inputSpots } from './boxShape.ts';
import { apart, type Pen } from './pen.ts';

/** The colours of IEC 60062, each with what is read best on it; the same on every theme. */
const BANDS: Readonly<Record<BandColour, readonly [ground: string, digit: string]>> = {
  black: ['#000000', '#ffffff'],
  brown: ['#6b3a12', '#ffffff'],
  red: ['#b3121d', '#ffffff'],
  orange: ['#ff8c1a', '#000000'],
  yellow: ['#ffe11a', '#000000'],
  green: ['#0b6b34', '#ffffff'],
  blue: ['#1248b3', '#ffffff'],
  violet: ['#6f2c9c', '#ffffff'],
  grey: ['#9a9a9a', '#000000'],
  white: ['#ffffff', '#000000'],
};

/** Two bands with their digits side by side, px; from inputs so far apart on the screen they are drawn. */
const WIDTH = 24;
const HEIGHT = 20;
const FONT = '700 14px sans-serif';
const ROOM = WIDTH + 4;

/** Whether inputs are so far apart on the screen that their numbers stand in place of their connectors. */
export const showsDigits = (pxPerMm: number): boolean => inputPitch(pxPerMm) >= ROOM;

/** The number of every input of the box, digit by digit, each on its colour, framed where it is plugged (in px of the screen). */
export function paintBoxDigits(
  pen: Pen,
  { box, plugged }: { readonly box: Box; readonly plugged: ReadonlySet<number> },
  view: View,
): void {
  if (!showsDigits(view.scale)) return;
  apart(pen, () => {
    const { canvas } = pen;
    canvas.font = FONT;
    canvas.textAlign = 'center';
    canvas.textBaseline = 'middle';
    for (const [i, spot] of inputSpots(box).entries()) {
      const at = toScreen(view, spot);
      const bands = colourBands(i + 1);
      for (const [place, { digit, colour }] of bands.entries()) {
        const [ground, ink] = BANDS[colour];
        const width = WIDTH / bands.length;
        const left = at.x - WIDTH / 2 + place * width;
        canvas.fillStyle = ground;
        canvas.fillRect(left, at.y - HEIGHT / 2, width, HEIGHT);
        canvas.fillStyle = ink;
        canvas.fillText(String(digit), left + width / 2, at.y + 1);
      }
      const isPlugged = plugged.has(i + 1);
      canvas.strokeStyle = isPlugged ? pen.colours.cable : pen.colours.inkSoft;
      canvas.lineWidth = isPlugged ? 3 : 1;
      canvas.strokeRect(at.x - WIDTH / 2, at.y - HEIGHT / 2, WIDTH, HEIGHT);
    }
  });
}
