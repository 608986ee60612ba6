import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { type Browser, chromium, type Page } from '@playwright/test';
import { build } from 'vite';
import { serveFolder } from '../../../src/app/launch/localServer.mjs';
import { largeKit } from '../../../src/layout/catalogue/kits/largeKit.ts';
import type { Layout } from '../../../src/layout/layout.ts';
import { findOrInstallChromium } from '../../support/chromium.mjs';
import { type Bench, type DragCost, measureDrag, prepareDrags } from './drag.ts';
import { exposeSession } from './exposeSession.ts';
import { itemsOf } from './items.ts';

/**
 * What dragging costs in a browser whose processor is slowed down 4 times: every item of the largest starting kit, beside an empty
 * stage and a blank page in the same run.
 */

const SLOWED_DOWN = 4;
/** Aims: the 95th percentile of frames, ms, and how old a result may be, frames. */
const AIMS = { frameP95: 33, resultAge: 2 } as const;
/** Two frames of a screen of 60 Hz last 33.3 ms; what is measured of them is rounded up by a part of a ms. */
const TWO_FRAMES = 33.5;
const SCREEN = { width: 1180, height: 820 };
const SOME = 7;

interface Row {
  readonly name: string;
  readonly cost: DragCost;
}

/** Drags every item (or some) and tells what each cost. */
export async function benchmarkDrags(someOnly: boolean) {
  const folder = join(process.cwd(), 'node_modules', '.cache', 'strokespace', 'bench-site');
  await build({
    logLevel: 'warn',
    build: { outDir: folder, emptyOutDir: true },
    plugins: [exposeSession],
    worker: { format: 'es', plugins: () => [exposeSession] },
  });
  const site = await serveFolder(folder, 0);
  const browser = await chromium.launch({
    executablePath: await findOrInstallChromium(process.cwd()),
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run'],
  });
  try {
    const large = largeKit('bench');
    return {
      browser: browser.version(),
      slowedDown: SLOWED_DOWN,
      kit: { pieces: large.pieces.length, mics: large.mics.length },
      aims: AIMS,
      blankPage: await blank(browser),
      emptyStage: (await drags(browser, site.address, emptyStage(large), 1))[0]?.cost ?? null,
      items: await drags(browser, site.address, large, someOnly ? SOME : Number.POSITIVE_INFINITY),
    };
  } finally {
    await browser.close();
    site.close();
  }
}

const emptyStage = (layout: Layout): Layout => ({
  ...layout,
  name: 'Empty stage',
  pieces: layout.pieces.filter(({ kind }) => kind === 'throne'),
  mics: [],
});

/** A page of nothing but a surface that takes the same fingers. */
async function blank(browser: Browser): Promise<DragCost> {
  const page = await newPage(browser);
  await page.goto('data:text/html,<div id="surface" style="position:fixed;inset:0"></div>');
  await slowDown(page);
  const cost = await measureDrag(browser, page, '#surface', { x: 300, y: 300 });
  await page.close();
  return cost;
}

/** Drags the first so many items of a layout, spread over all kinds, each on the layout as it was. */
async function drags(
  browser: Browser,
  address: string,
  layout: Layout,
  most: number,
): Promise<readonly Row[]> {
  const page = await newPage(browser);
  await page.goto(address);
  await page.getByLabel('Layout file').setInputFiles({
    name: 'bench.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(layout)),
  });
  // A mouse left on the page would be asked in every frame what lies under it; a tablet has none.
  await page.getByRole('button', { name: 'Open it' }).tap();
  const surface = page.getByRole('application', { name: 'Plan of the deck' });
  await surface.waitFor();
  const box = await surface.boundingBox();
  if (!box) throw new Error('expected the plan on the page');
  const size = { width: Math.floor(box.width), height: Math.floor(box.height) };
  await slowDown(page);
  const rows: Row[] = [];
  const items = itemsOf(layout, size);
  const step = Math.max(1, Math.floor(items.length / most));
  for (const { name, selection, at } of items.filter((_, i) => i % step === step - 1)) {
    const from = { x: box.x + at.x, y: box.y + at.y };
    const cost = await measureDrag(browser, page, '.plan-touch', from);
    const undo = page.getByRole('button', { name: /^Undo/ });
    // A thing that could not be taken hold of would measure nothing, or what lies over it.
    if ((await undo.isDisabled()) || !isDeepStrictEqual(await selectedIn(page), selection)) {
      throw new Error(`${name} was not dragged`);
    }
    await undo.tap();
    // What is selected would be taken hold of before anything that lies over it.
    await surface.press('Escape');
    rows.push({ name, cost });
  }
  await page.close();
  return rows;
}

const selectedIn = (page: Page): Promise<unknown> =>
  page.evaluate(() => {
    const { bench } = window as unknown as { bench: Bench };
    return bench.session?.getState().selection;
  });

async function newPage(browser: Browser): Promise<Page> {
  const context = await browser.newContext({
    viewport: SCREEN,
    hasTouch: true,
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  await prepareDrags(page);
  return page;
}

async function slowDown(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED_DOWN });
}

/** The figures as a table to read. */
export function dragTable(result: Awaited<ReturnType<typeof benchmarkDrags>>): string {
  const { blankPage, emptyStage: empty, items, kit } = result;
  const ms = (value: number): string => value.toFixed(1).padStart(8);
  const line = (name: string, { frames, work, ...ages }: DragCost): string =>
    name.slice(0, 30).padEnd(31) +
    [frames.median, frames.p95, frames.most, work.median, work.p95, work.most].map(ms).join('') +
    [ages.ringAge, ages.answerAge, ages.panelAge, ages.drawnAge]
      .map((age) => (age ? `${age.p95}` : '').padStart(8))
      .join('') +
    `${ages.drawnAge?.most ?? ''}`.padStart(8);
  const worst = items.toSorted((a, b) => b.cost.frames.p95 - a.cost.frames.p95)[0];
  const later = (than: number): number => items.filter(({ cost }) => cost.frames.p95 > than).length;
  return [
    `Chromium ${result.browser}, processor slowed down ${result.slowedDown} times; ${kit.pieces} pieces, ${kit.mics} mics`,
    '',
    `${'ms'.padEnd(31)}  frame     95 %    most    work    95 %    most    ring  answer   panel   drawn    most`,
    line('blank page', blankPage),
    ...(empty ? [line('empty stage, box', empty)] : []),
    ...items.map(({ name, cost }) => line(name, cost)),
    '',
    'frame: from frame to frame; work: script and drawing of the main thread in a frame;',
    'ring, answer: frames until a rim ring, and what is said of the layout, was there after it was asked for;',
    'panel: frames from one change of its numbers to the next (95 %);',
    'drawn: how many frames ago that was placed whose answers the plan shows, in every frame',
    `(95 % and most; aim ${AIMS.resultAge})`,
    worst
      ? `worst: ${worst.name}, 95 % of its frames within ${worst.cost.frames.p95.toFixed(1)} ms (aim ${AIMS.frameP95});`
      : '',
    `${later(AIMS.frameP95)} of ${items.length} items are later than that, ${later(TWO_FRAMES)} later than two frames of the screen`,
  ].join('\n');
}
