import type { Mm } from '../../units/quantity.ts';
import type { Look, Mark, Page, Point, TextMark } from '../mark.ts';
import { textWidth } from '../paper/lettering.ts';

/** A page as an SVG document in mm: printed at 100 % it is to scale. Every text keeps the length it was set for, whatever the font. */
export function toSvg({ width, height, marks }: Page): string {
  const size = `width="${short(width)}mm" height="${short(height)}mm" viewBox="0 0 ${short(width)} ${short(height)}"`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" ${size} font-family="Helvetica, Arial, 'Liberation Sans', sans-serif">`,
    `<rect width="${short(width)}" height="${short(height)}" fill="#fff"/>`,
    ...grouped(marks),
    '</svg>',
    '',
  ].join('\n');
}

/** Marks in their order, those of one layer that follow each other in one group. */
function grouped(marks: readonly Mark[]): readonly string[] {
  const lines: string[] = [];
  let layer: Mark['layer'] | null = null;
  for (const mark of marks) {
    if (mark.layer !== layer) {
      if (layer !== null) lines.push('</g>');
      layer = mark.layer;
      lines.push(`<g class="${layer.toLowerCase()}">`);
    }
    lines.push(element(mark));
  }
  if (layer !== null) lines.push('</g>');
  return lines;
}

function element(mark: Mark): string {
  switch (mark.kind) {
    case 'line': {
      const points = mark.points.map(pair).join(' ');
      const tag = mark.closed ? 'polygon' : 'polyline';
      return `<${tag} points="${points}"${styled(mark.look)}/>`;
    }
    case 'circle': {
      const { centre, radius } = mark;
      return `<circle cx="${short(centre.x)}" cy="${short(centre.y)}" r="${short(radius)}"${styled(mark.look)}/>`;
    }
    case 'text':
      return textElement(mark);
  }
}

function textElement({ at, text, size, anchor, bold, ink }: TextMark): string {
  const width = short(textWidth(text, size, bold));
  const where = `x="${short(at.x)}" y="${short(at.y)}" font-size="${short(size)}"`;
  const set = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  const weight = bold ? ' font-weight="bold"' : '';
  const fill = ink === 0 ? '' : ` fill="${grey(ink)}"`;
  return `<text ${where}${set}${weight}${fill} textLength="${width}" lengthAdjust="spacingAndGlyphs">${escaped(text)}</text>`;
}

function styled({ ink, width, fill, dash }: Look): string {
  const stroke =
    ink === null
      ? ''
      : ` stroke="${grey(ink)}" stroke-width="${short(width)}" stroke-linejoin="round"`;
  const dashes = dash.length > 0 ? ` stroke-dasharray="${dash.map(short).join(' ')}"` : '';
  return ` fill="${fill === null ? 'none' : grey(fill)}"${stroke}${dashes}`;
}

const pair = ({ x, y }: Point): string => `${short(x)},${short(y)}`;

/** Thousandths of a mm are finer than any printer. */
const short = (value: Mm): string => String(Math.round(value * 1000) / 1000 + 0);

function grey(ink: number): string {
  const hex = Math.round(ink * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${hex}${hex}${hex}`;
}

const escaped = (text: string): string =>
  text
    .replace(/[^\P{C}\t]/gu, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');
