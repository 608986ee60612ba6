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
const BAND = 12;
const HEIGHT = 18;
const FONT = '700 14px sans-serif';
const ROOM = 2 * BAND + 4;

/** The number of every input of the box, digit by digit, each on its colour (in px of the screen); nothing from far away. */
export function paintBoxDigits(pen: Pen, box: Box, view: View): void {
  if (inputPitch(view.scale) < ROOM) return;
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
        const left = at.x + (place - bands.length / 2) * BAND;
        canvas.fillStyle = ground;
        canvas.fillRect(left, at.y - HEIGHT / 2, BAND, HEIGHT);
        canvas.fillStyle = ink;
        canvas.fillText(String(digit), left + BAND / 2, at.y + 1);
      }
      canvas.strokeStyle = pen.colours.cable;
      canvas.lineWidth = 1;
      const width = bands.length * BAND;
      canvas.strokeRect(at.x - width / 2, at.y - HEIGHT / 2, width, HEIGHT);
    }
  });
}
