import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import DxfParser from 'dxf-parser';
import { PNG } from 'pngjs';
import { openPdf, type Raster, renderPage, wordsOf } from '../tests/sheet/writers/readPdf.ts';
import { startLayout } from './support/layouts.ts';
import { readyOffline } from './support/offline.ts';
import { expect, test } from './support/test.ts';

async function openSheets(page: Page, address = '/'): Promise<void> {
  await startLayout(page, address);
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Sheets/ }).click();
  await expect(picture(page)).toBeVisible();
}

const picture = (page: Page) => page.locator('.sheet-picture').first();
const choose = (page: Page, text: string) =>
  page.locator('.sheets-choices .choice-option', { hasText: text }).click();

async function file(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

/** How far the scale bar that a picture of a plan shows is off, as a part of its length: the row at the foot that comes nearest. */
function barError(raster: Raster, words: string): number {
  const scale = Number(/1:(\d+) on/.exec(words)?.[1]);
  const stands = Number(/^([\d.]+) m$/m.exec(words)?.[1]) * 1000;
  const [from, to] = [8, 90].map((mm) => Math.round(mm * raster.pixelsPerMm));
  const errors = Array.from({ length: Math.round(raster.height * 0.2) }, (_, i) => {
    const y = Math.round(raster.height * 0.8) + i;
    const dark: number[] = [];
    for (let x = from ?? 0; x < (to ?? 0); x += 1) if (raster.grey(x, y) < 128) dark.push(x);
    const first = dark.at(0);
    const last = dark.at(-1);
    if (first === undefined || last === undefined) return 1;
    return Math.abs((((last + 1 - first) / raster.pixelsPerMm) * scale) / stands - 1);
  });
  return Math.min(...errors);
}

test('every sheet is shown on every paper, and the page is clean for reading aids @portrait', async ({
  page,
}) => {
  await openSheets(page);
  for (const paper of ['Letter', 'A4']) {
    await choose(page, paper);
    for (const turned of ['Portrait', 'Landscape']) {
      await choose(page, turned);
      for (const sheet of [
        'Elevations',
        'Stands and mics',
        'sign-off',
        'Set-up list',
        'Placement',
      ]) {
        await choose(page, sheet);
        const shown = picture(page);
        await expect(shown).toHaveAttribute('alt', new RegExp(sheet));
        const size = await shown.evaluate(async (each: HTMLImageElement) => {
          await each.decode();
          return { wide: each.naturalWidth > each.naturalHeight, width: each.naturalWidth };
        });
        expect(size.wide).toBe(turned === 'Landscape');
        expect(size.width).toBeGreaterThan(700);
      }
    }
  }
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});

test('the sheets come out as PDF that another reader reads, with a bar that is right', async ({
  page,
}) => {
  await openSheets(page);
  await choose(page, 'A4');
  const { name, bytes } = await file(page, 'All sheets as PDF');
  expect(name).toMatch(/ - sheets, A4 landscape\.pdf$/);
  const pages = await openPdf(new Uint8Array(bytes));
  expect(pages.length).toBeGreaterThanOrEqual(5);
  const [first] = pages;
  if (!first) throw new Error('no page');
  const words = await wordsOf(first);
  expect(barError(await renderPage(first, 300), words)).toBeLessThan(0.005);
});

test('the plan comes out as SVG, PNG and DXF that other readers read, all to the same scale', async ({
  page,
  context,
}) => {
  await openSheets(page);
  await choose(page, 'A4');
  await choose(page, 'Landscape');
  const svg = await file(page, 'Plan as SVG');
  const png = await file(page, 'Plan as PNG');
  const dxf = await file(page, 'Plan as DXF (mm)');

  const reader = await context.newPage();
  await reader.setContent(`<body style="margin:0">${svg.bytes.toString('utf8')}</body>`);
  const seen = await reader.evaluate(() => {
    const root = document.querySelector('svg')?.getBoundingClientRect();
    const deck = document.querySelector('.deck polygon')?.getBoundingClientRect();
    const texts = Array.from(document.querySelectorAll('text'), (text) => ({
      text: text.textContent,
      box: text.getBoundingClientRect().toJSON() as DOMRect,
    }));
    return { width: root?.width ?? 0, deck: deck?.width ?? 0, texts };
  });
  const pxPerMm = 96 / 25.4;
  expect(seen.width / pxPerMm).toBeCloseTo(297, 1);
  const words = seen.texts.map(({ text }) => text).join('\n');
  const scale = Number(/1:(\d+) on/.exec(words)?.[1]);
  for (const [i, a] of seen.texts.entries()) {
    // Boxes of letters are a little taller than the letters: only what overlaps by more than that counts.
    const over = seen.texts
      .slice(i + 1)
      .filter(
        (b) =>
          Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left) > 1 &&
          Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top) > 3,
      );
    expect(over.map(({ text }) => `${a.text} / ${text}`)).toEqual([]);
  }

  const found = new DxfParser().parseSync(dxf.bytes.toString('utf8'));
  const deck = found?.entities.find(({ layer }) => layer === 'DECK') as unknown as {
    readonly vertices: readonly { readonly x: number }[];
  };
  const xs = deck.vertices.map(({ x }) => x);
  const width = Math.max(...xs) - Math.min(...xs);
  expect(Math.abs((seen.deck / pxPerMm) * scale - width)).toBeLessThan(width * 0.005 + 20);

  const picturePng = PNG.sync.read(png.bytes);
  expect(picturePng.width).toBeGreaterThan(2400);
  expect(picturePng.width).toBeLessThanOrEqual(4096);
  expect(picturePng.width / picturePng.height).toBeCloseTo(297 / 210, 2);
  const raster: Raster = {
    width: picturePng.width,
    height: picturePng.height,
    pixelsPerMm: picturePng.width / 297,
    grey: (x, y) => picturePng.data[(y * picturePng.width + x) * 4] ?? 255,
  };
  expect(barError(raster, words)).toBeLessThan(0.005);
});

test('a sheet is printed on its own paper and to scale', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  await openSheets(page);
  await choose(page, 'Letter');
  await choose(page, 'Landscape');
  const svg = await file(page, 'Plan as SVG');
  // Texts of the SVG, a line each: in the printed page they are letters of a picture.
  const shown = svg.bytes.toString('utf8').replaceAll(/<[^>]*>/g, '');
  await page.getByRole('button', { name: 'Print this sheet' }).click();
  await expect(page.locator('body[data-printing]')).toHaveCount(1);
  const pages = await openPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
  expect(pages).toHaveLength(1);
  const [first] = pages;
  if (!first) throw new Error('no page');
  const { width, height } = first.getViewport({ scale: 1 });
  expect(barError(await renderPage(first, 300), shown)).toBeLessThan(0.005);
  expect(Math.abs(width - 792)).toBeLessThan(1);
  expect(Math.abs(height - 612)).toBeLessThan(1);
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await expect(page.locator('.printed-page')).toHaveCount(0);
});

test('letters that the PDF lacks are said, and the file is written all the same', async ({
  page,
}) => {
  await startLayout(page);
  await page.getByRole('button', { name: /, rename$/ }).click();
  await page.getByRole('dialog').getByLabel('Name').fill('Łódź 鼓');
  await page.getByRole('dialog').getByRole('button', { name: 'Rename' }).click();
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Sheets/ }).click();
  await expect(page.getByText(/Some letters are not among/)).toBeVisible();
  const { bytes } = await file(page, 'This sheet as PDF');
  const [first] = await openPdf(new Uint8Array(bytes));
  expect(first && (await wordsOf(first))).toContain('Lódz ?');
});

test('PDF and DXF are written without a network', async ({ page, startSite }) => {
  const site = await startSite();
  await page.goto(site.address);
  await readyOffline(page);
  site.switchOff();
  await openSheets(page, site.address);
  const pdf = await file(page, 'All sheets as PDF');
  expect((await openPdf(new Uint8Array(pdf.bytes))).length).toBeGreaterThanOrEqual(5);
  const dxf = await file(page, 'Plan as DXF (mm)');
  expect(new DxfParser().parseSync(dxf.bytes.toString('utf8'))?.entities.length).toBeGreaterThan(
    100,
  );
});
