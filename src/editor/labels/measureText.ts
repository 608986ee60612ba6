import type { Measure } from './lettering.ts';

const widths = new Map<string, number>();
/** Texts are few, but a long session renames things: the store is emptied before it grows without bound. */
const MOST = 2000;
let canvas: CanvasRenderingContext2D | null | undefined;

/** Width of a text as the canvas will draw it, px; each text is measured once. */
export const measureText: Measure = (text, font) => {
  const key = `${font}\n${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known;
  canvas ??= document.createElement('canvas').getContext('2d');
  if (!canvas) return text.length * 8;
  canvas.font = font;
  const { width } = canvas.measureText(text);
  if (widths.size >= MOST) widths.clear();
  widths.set(key, width);
  return width;
};
