import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { createCanvas } from '@napi-rs/canvas';
import { getDocument, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

const folder = dirname(createRequire(import.meta.url).resolve('pdfjs-dist/package.json'));

/** Opens a PDF with a reader that is not ours. */
export async function openPdf(bytes: Uint8Array): Promise<readonly PDFPageProxy[]> {
  const document = await getDocument({
    data: bytes.slice(),
    standardFontDataUrl: `${join(folder, 'standard_fonts')}/`,
    verbosity: 0,
  }).promise;
  return Promise.all(Array.from({ length: document.numPages }, (_, i) => document.getPage(i + 1)));
}

/** A page as a picture: grey values by rows, at so many dots per inch. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly pixelsPerMm: number;
  /** 0 (black) to 255 (white) of the pixel at a column and a row. */
  grey(x: number, y: number): number;
}

/** Renders a page with the reader. */
export async function renderPage(page: PDFPageProxy, dotsPerInch: number): Promise<Raster> {
  const viewport = page.getViewport({ scale: dotsPerInch / 72 });
  const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
  const canvas = createCanvas(width, height);
  const context = canvas.getContext('2d');
  // The types of the two packages name the same canvas differently.
  await page.render({ canvas: canvas as never, canvasContext: context as never, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  return {
    width,
    height,
    pixelsPerMm: dotsPerInch / 25.4,
    grey: (x, y) => data[(y * width + x) * 4] ?? 255,
  };
}

/** The words of a page, as a reader selects them. */
export async function wordsOf(page: PDFPageProxy): Promise<string> {
  const { items } = await page.getTextContent();
  return items.map((item) => ('str' in item ? item.str : '')).join('\n');
}
