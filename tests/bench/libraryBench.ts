import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium, type Page } from '@playwright/test';
import { deflateSync, strToU8 } from 'fflate';
import { build } from 'vite';
import { serveFolder } from '../../src/app/launch/localServer.mjs';
import { largeKit } from '../../src/layout/catalogue/kits/largeKit.ts';
import { digestOf } from '../../src/layout/digest.ts';
import { writeLayout } from '../../src/layout/read.ts';
import type { Meta } from '../../src/storage/records/meta.ts';
import { recordBytes } from '../../src/storage/records/record.ts';
import { findOrInstallChromium } from '../support/chromium.mjs';

/**
 * How a library of many layouts opens and is searched, in a browser on a profile of its own: `npm run bench:library`, with `-- 100` for
 * another number of layouts. It is brought in through the app's own import; what is measured is the second start after it.
 */
const LAYOUTS = Number(process.argv.find((text) => /^\d+$/.test(text)) ?? 1000);
const REVISIONS = 20;
const STARTS = 7;
const SEARCHES = ['venue 7', 'gig 512', 'december', 'drummer 3', 'tour', 'gig', '2026-07', 'venu'];

function library(): Uint8Array[] {
  const record = (meta: Meta, body = new Uint8Array()) => recordBytes([{ meta, body }]);
  const parts = [record({ kind: 'library', version: 1, madeAt: 0, layouts: LAYOUTS })];
  for (let index = 0; index < LAYOUTS; index++) {
    const id = `bench-${index}`;
    const kit = largeKit(id);
    const date = `2026-${String(1 + (index % 12)).padStart(2, '0')}-11`;
    const venue = { ...kit.venue, name: `Venue ${index % 97}`, date };
    const player = { ...kit.player, name: `Drummer ${index % 41}` };
    const name = `Gig ${index}`;
    const text = writeLayout({ ...kit, name, venue, player });
    for (let revision = 1; revision <= REVISIONS; revision++) {
      const own = text.replace('"margin": 50', `"margin": ${30 + revision}`);
      const at = 1_780_000_000_000 + index * 100_000 + revision * 1000;
      const chain = { id, revision, parent: revision - 1, at, digest: digestOf(own) };
      const body = deflateSync(strToU8(own), { level: 1 });
      parts.push(
        record({ kind: 'revision', ...chain, name: '', signed: null, shared: true }, body),
      );
    }
    const marks = { favourite: index % 10 === 0, archived: false, tags: index % 9 ? [] : ['tour'] };
    const head = { id, name, revision: REVISIONS, asides: [], removedAt: null };
    parts.push(record({ kind: 'head', ...head, ...marks }));
  }
  parts.push(record({ kind: 'end', layouts: LAYOUTS }));
  return parts;
}

const median = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

/** From the start of the app's own script to the first row that is drawn, ms, and from the navigation on. */
async function open(page: Page): Promise<{ app: number; navigation: number }> {
  await page.reload();
  await page.waitForSelector('.layout-row');
  return page.evaluate(() => {
    const app = performance.getEntriesByName('app-start')[0]?.startTime ?? 0;
    const shown = performance.getEntriesByName('rows-shown')[0]?.startTime ?? Number.NaN;
    return { app: shown - app, navigation: shown };
  });
}

/** Marks when the page's own script begins and when the first row stands on the page. */
async function watchStart(page: Page): Promise<void> {
  await page.addInitScript(() => {
    new MutationObserver((_, observer) => {
      if (
        document.querySelector('#page') &&
        performance.getEntriesByName('app-start').length === 0
      ) {
        performance.mark('app-start');
      }
      if (document.querySelector('.layout-row') === null) return;
      performance.mark('rows-shown');
      observer.disconnect();
    }).observe(document, { childList: true, subtree: true });
  });
}

/** From a typed text to the list that answers it, ms, laid out. */
const search = (page: Page, text: string): Promise<number> =>
  page.evaluate(async (wanted) => {
    const field = document.querySelector<HTMLInputElement>('input[type=search]');
    if (field === null) throw new Error('the search is on the screen');
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    const start = performance.now();
    set?.call(field, wanted);
    field.dispatchEvent(new Event('input', { bubbles: true }));
    document.body.getBoundingClientRect();
    const spent = performance.now() - start;
    await new Promise((go) => setTimeout(go, 100));
    return spent;
  }, text);

async function benchmark() {
  const cache = join(process.cwd(), 'node_modules', '.cache', 'strokespace');
  const folder = join(cache, 'bench-library-site');
  await build({ logLevel: 'warn', build: { outDir: folder, emptyOutDir: true } });
  const site = await serveFolder(folder, 0);
  const file = join(cache, 'bench.layouts');
  const parts = library();
  writeFileSync(file, Buffer.concat(parts));
  const browser = await chromium.launch({
    executablePath: await findOrInstallChromium(process.cwd()),
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  try {
    const page = await browser.newPage({ viewport: { width: 1180, height: 820 } });
    page.setDefaultTimeout(600_000);
    await watchStart(page);
    await page.goto(site.address);
    const importFrom = Date.now();
    await page.getByLabel('Layout file').setInputFiles(file);
    await page.getByText('A library was taken in').waitFor();
    const imported = Date.now() - importFrom;
    const starts = [];
    for (let count = 0; count < STARTS; count++) starts.push(await open(page));
    await page.waitForTimeout(2000);
    await page.locator('input[type=search]').focus();
    const searches = [];
    for (const text of [...SEARCHES, ...SEARCHES]) searches.push(await search(page, text));
    return {
      layouts: LAYOUTS,
      revisions: REVISIONS,
      megabytes: Math.round(parts.reduce((sum, part) => sum + part.length, 0) / 1e5) / 10,
      importSeconds: Math.round(imported / 100) / 10,
      listFromAppStart: { median: median(starts.map(({ app }) => app)), aim: 300 },
      listFromNavigation: { median: median(starts.map(({ navigation }) => navigation)) },
      search: {
        median: median(searches),
        worst: Math.max(...searches),
        first: searches[0],
        aim: 50,
      },
    };
  } finally {
    await browser.close();
    site.close();
  }
}

process.stdout.write(`${JSON.stringify(await benchmark(), null, 2)}\n`);
