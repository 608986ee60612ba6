import { describe, expect, test } from 'vitest';
import type { LineMark, Page, Point } from '../../../src/sheet/mark.ts';
import { barOf } from '../../../src/sheet/paper/scaleBar.ts';
import { toPdf } from '../../../src/sheet/writers/toPdf.ts';
import { PAPERS, sheetsOf, startingKit } from '../samples.ts';
import { openPdf, type Raster, renderPage, wordsOf } from './readPdf.ts';

const DOTS_PER_INCH = 300;

/** Where the bar must be looked for: its outline on the page, mm. */
function barOn(page: Page): { readonly left: number; readonly right: number; readonly y: number } {
  const black = page.marks.filter(
    (mark): mark is LineMark =>
      mark.kind === 'line' && mark.layer === 'DIMENSIONS' && mark.look.fill === 0,
  );
  const corners: readonly Point[] = black.flatMap(({ points }) => points);
  const ys = corners.map(({ y }) => y);
  const xs = corners.map(({ x }) => x);
  return {
    left: Math.min(...xs),
    right: Math.max(...xs),
    y: (Math.min(...ys) + Math.max(...ys)) / 2,
  };
}

/** Length of the bar as it is rendered, mm: its left edge is that of a black part, its right edge that of its outline. */
function measured(raster: Raster, near: ReturnType<typeof barOn>): number {
  const row = Math.round(near.y * raster.pixelsPerMm);
  const isDark = (x: number): boolean => raster.grey(x, row) < 128;
  const from = Math.round((near.left - 3) * raster.pixelsPerMm);
  const to = Math.round((near.right + 20) * raster.pixelsPerMm);
  const dark = Array.from({ length: to - from }, (_, i) => from + i).filter(isDark);
  return (Math.max(...dark) + 1 - Math.min(...dark)) / raster.pixelsPerMm;
}

describe.each(['large-kit', 'demo'])('the PDF of %s', (key) => {
  const layout = startingKit(key);

  test.each(PAPERS)('has a scale bar that is right to 0.5 % on %o', async (paper) => {
    const sheets = sheetsOf(layout, paper).filter(({ name }) =>
      ['placement', 'elevations'].includes(name),
    );
    // A table that goes on, on the next page, has no bar there.
    const pages = sheets.flatMap((sheet) => sheet.pages.slice(0, 1));
    const read = await openPdf(await toPdf(pages, layout.name));
    for (const [index, page] of pages.entries()) {
      const seen = read[index];
      if (!seen) throw new Error('a page is missing');
      const words = await wordsOf(seen);
      const scale = Number(/1:(\d+)/.exec(words)?.[1]);
      const { stands, drawn } = barOf(scale, 'mm');
      expect(words).toContain(`${(stands / 1000).toFixed(1)} m`);
      const length = measured(await renderPage(seen, DOTS_PER_INCH), barOn(page));
      expect(Math.abs(length / drawn - 1)).toBeLessThan(0.005);
      expect(length * scale).toBeGreaterThan(stands * 0.995);
      expect(length * scale).toBeLessThan(stands * 1.005);
    }
  });
});

test('the paper is as large as it says: A4 of ISO 216, Letter of 8.5 by 11 in', async () => {
  const sizes = await Promise.all(
    PAPERS.map(async (paper) => {
      const [placement] = sheetsOf(startingKit('demo'), paper);
      const [page] = await openPdf(await toPdf(placement?.pages ?? [], 'x'));
      const { width, height } = page?.getViewport({ scale: 1 }) ?? { width: 0, height: 0 };
      return [width, height].map((points) => Math.round(points * 10) / 10);
    }),
  );
  expect(sizes).toEqual([
    [841.9, 595.3],
    [595.3, 841.9],
    [792, 612],
    [612, 792],
  ]);
});

test('everything that is written can be selected', async () => {
  const layout = startingKit('large-kit');
  const [paper = { size: 'a4', orientation: 'portrait' } as const] = PAPERS;
  const pages = sheetsOf(layout, paper).flatMap((sheet) => sheet.pages);
  const read = await openPdf(await toPdf(pages, layout.name));
  for (const [index, page] of pages.entries()) {
    const seen = read[index];
    const words = (seen ? await wordsOf(seen) : '').replaceAll(/\s+/g, ' ');
    for (const mark of page.marks) if (mark.kind === 'text') expect(words).toContain(mark.text);
  }
});

test('the same pages make the same file', async () => {
  const [paper = { size: 'a4', orientation: 'portrait' } as const] = PAPERS;
  const pages = sheetsOf(startingKit('demo'), paper).flatMap((sheet) => sheet.pages);
  expect(await toPdf(pages, 'x')).toEqual(await toPdf(pages, 'x'));
});
