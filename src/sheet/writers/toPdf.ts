import { grayscale, PDFDocument, type PDFFont, type PDFPage, StandardFonts } from 'pdf-lib';
import type { CircleMark, LineMark, Page, TextMark } from '../mark.ts';
import { textWidth } from '../paper/lettering.ts';
import { printable } from '../paper/printable.ts';

/** One PostScript point, mm: an inch has 72 (ISO 32000-1, 8.3.2.3). */
const MM_PER_POINT = 25.4 / 72;
const points = (mm: number): number => mm / MM_PER_POINT;

interface Fonts {
  readonly regular: PDFFont;
  readonly bold: PDFFont;
}

/**
 * Pages as a PDF with the fonts that every reader has; text can be selected and searched. Nothing in it depends on when or where it
 * was written. Letters outside those fonts are replaced (see {@link printable}).
 */
export async function toPdf(pages: readonly Page[], title: string): Promise<Uint8Array> {
  const pdf = await PDFDocument.create({ updateMetadata: false });
  pdf.setTitle(title);
  pdf.setCreator('Strokespace');
  const fonts = {
    regular: await pdf.embedFont(StandardFonts.Helvetica),
    bold: await pdf.embedFont(StandardFonts.HelveticaBold),
  };
  for (const { width, height, marks } of pages) {
    const sheet = pdf.addPage([points(width), points(height)]);
    for (const mark of marks) {
      if (mark.kind === 'line') drawLine(sheet, mark);
      else if (mark.kind === 'circle') drawCircle(sheet, mark);
      else drawText(sheet, mark, fonts);
    }
  }
  return pdf.save();
}

/** An SVG path in points: pdf-lib turns y round when the path starts at the page's upper left corner. */
function drawLine(sheet: PDFPage, { points: corners, closed, look }: LineMark): void {
  const path = corners
    .map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'} ${points(x)} ${points(y)}`)
    .join(' ');
  sheet.drawSvgPath(closed ? `${path} Z` : path, {
    x: 0,
    y: sheet.getHeight(),
    ...(look.ink !== null && {
      borderColor: grayscale(look.ink),
      borderWidth: points(look.width),
    }),
    ...(look.fill !== null && { color: grayscale(look.fill) }),
    ...(look.dash.length > 0 && { borderDashArray: look.dash.map(points) }),
  });
}

function drawCircle(sheet: PDFPage, { centre, radius, look }: CircleMark): void {
  sheet.drawCircle({
    x: points(centre.x),
    y: sheet.getHeight() - points(centre.y),
    size: points(radius),
    ...(look.ink !== null && {
      borderColor: grayscale(look.ink),
      borderWidth: points(look.width),
    }),
    ...(look.fill !== null && { color: grayscale(look.fill) }),
  });
}

function drawText(sheet: PDFPage, mark: TextMark, { regular, bold }: Fonts): void {
  const text = printable(mark.text);
  const width = textWidth(text, mark.size, mark.bold);
  const shift = mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? width : width / 2;
  sheet.drawText(text, {
    x: points(mark.at.x - shift),
    y: sheet.getHeight() - points(mark.at.y),
    size: points(mark.size),
    font: mark.bold ? bold : regular,
    color: grayscale(mark.ink),
  });
}
