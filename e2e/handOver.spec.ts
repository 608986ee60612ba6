import { readFileSync, writeFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import encodeQR from 'qr';
import { filmOf, readElsewhere, screensOfCodes } from './support/codes.ts';
import {
  closeLayout,
  downloaded,
  listed,
  nameOf,
  renameAndSave,
  startLayout,
} from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { landscape, launchOptions } from './support/tablet.ts';
import { expect, test } from './support/test.ts';

const name = 'Barn, Saturday';

async function showCodes(page: Page, called = name): Promise<readonly Buffer[]> {
  await startLayout(page);
  await renameAndSave(page, called);
  return screensOfCodes(page);
}

/** What of a layout goes over: all but its id, which is the receiving tablet's own. */
function content(text: string): unknown {
  const { id: _, ...rest } = JSON.parse(text);
  return rest;
}

const offered = (screens: readonly Buffer[]) =>
  screens.map((buffer, i) => ({ name: `screen-${i}.png`, mimeType: 'image/png', buffer }));

const backToList = async (page: Page) => {
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await closeLayout(page);
};

test('every code is read off the screen by another program @portrait', async ({ page }) => {
  const screens = await showCodes(page);
  expect(screens.length).toBeGreaterThan(2);
  const texts = screens.map(readElsewhere);
  for (const [i, text] of texts.entries()) {
    expect(text).toMatch(new RegExp(`^STROKESPACE\\.1/[0-9A-F]{16}/${i + 1}/${screens.length}/`));
  }
});

test('a camera that looks at the other tablet takes the layout in', async ({
  page,
  baseURL,
}, info) => {
  const screens = await showCodes(page);
  const sent = await downloaded(page, page.getByRole('button', { name: 'Save the file' }));
  const film = info.outputPath('codes.y4m');
  writeFileSync(film, filmOf(screens));
  const { args = [], ...rest } = launchOptions();
  const browser = await chromium.launch({
    ...rest,
    args: [
      ...args,
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ],
  });
  const other = await browser.newPage({
    ...landscape,
    ...(baseURL === undefined ? {} : { baseURL }),
  });
  await other.goto('/');
  await appIsOpen(other);
  await other.getByRole('button', { name: 'Read codes' }).click();
  await expect(listed(other)).toHaveText([name], { timeout: 60_000 });
  await listed(other).first().click();
  await expect(nameOf(other)).toContainText(name);
  const got = await downloaded(other, other.getByRole('button', { name: 'Export', exact: true }));
  expect(content(got.text)).toEqual(content(sent.text));
  await browser.close();
});

test('pictures of codes: lost ones are named, repeated and foreign ones do no harm @portrait', async ({
  page,
}) => {
  const screens = await showCodes(page);
  await backToList(page);
  await page.getByRole('button', { name: 'New layout' }).click();
  await page
    .getByRole('button', { name: /Five-piece, one rack tom/ })
    .first()
    .click();
  await expect(nameOf(page)).toContainText('Five-piece');
  const [stranger] = await screensOfCodes(page);
  if (!stranger) throw new Error('no code of the other layout');
  await backToList(page);
  await expect(listed(page)).toHaveCount(2);

  await page.getByRole('button', { name: 'Read codes' }).click();
  await expect(page.getByRole('alert')).toContainText(/camera/);
  const pictures = page.getByLabel('Pictures of codes');
  const [first, second, ...later] = screens;
  if (!first || !second) throw new Error('too few codes');

  await pictures.setInputFiles(offered([...later.toReversed(), second, second]));
  const progress = page.locator('.read-progress');
  await expect(progress).toContainText(`${screens.length - 1} of ${screens.length} codes read.`);
  await expect(progress).toContainText('Still to come: 1.');

  await pictures.setInputFiles(offered([stranger]));
  await expect(progress).toContainText('of another layout');
  await expect(progress).toContainText('Still to come: 1.');

  const foreign = Buffer.from(encodeQR('https://example.org/', 'gif', { scale: 6, border: 4 }));
  await pictures.setInputFiles([{ name: 'foreign.gif', mimeType: 'image/gif', buffer: foreign }]);
  await expect(progress).toContainText('not of this app');

  await pictures.setInputFiles([
    { name: 'notes.txt', mimeType: 'image/png', buffer: Buffer.from('no picture') },
  ]);
  await expect(page.getByRole('alert').filter({ hasText: 'notes.txt' })).toBeVisible();

  await pictures.setInputFiles(offered([first]));
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(listed(page)).toHaveCount(3);
  await expect(listed(page).filter({ hasText: name })).toHaveCount(2);
});

test('a file that the system opens with the app is taken in and shown, a bad one is named', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, name);
  const sent = await downloaded(page, page.getByRole('button', { name: 'Export', exact: true }));
  await page.addInitScript(
    (files) => {
      // Stands in for the system, which hands files to an installed app only.
      const handles = files.map(([called, text]) => ({
        getFile: async () => new File([text], called),
      }));
      Object.defineProperty(window, 'launchQueue', {
        value: { setConsumer: (take: (launch: object) => void) => take({ files: handles }) },
      });
    },
    [
      [sent.name, sent.text],
      ['broken.json', '{'],
    ] as [string, string][],
  );
  await page.goto('/');
  await expect(nameOf(page)).toContainText(name);
  await expect(page.getByRole('complementary', { name: 'Trouble' })).toContainText(
    '“broken.json” was not opened',
  );
  await page.getByRole('button', { name: 'Dismiss' }).click();
  await closeLayout(page);
  await expect(listed(page)).toHaveText([`${name} (copy)`, name]);
});

test('the manifest offers the app for layout files', async ({ page }) => {
  const answer = await page.request.get('/manifest.webmanifest');
  const { file_handlers: handlers } = await answer.json();
  const accept = { 'application/json': ['.json'], 'application/octet-stream': ['.layouts'] };
  expect(handlers).toEqual([{ action: '/', accept }]);
});

test('a library dropped over an open layout is taken in there, and what is open stays open', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, name);
  await closeLayout(page);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Export the whole library' }).click(),
  ]);
  const bytes = [...readFileSync(await download.path())];
  await listed(page).first().click();
  await expect(nameOf(page)).toContainText(name);
  await page.evaluate((content) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([new Uint8Array(content)], 'all.layouts'));
    const plan = document.querySelector('.workspace');
    for (const type of ['dragover', 'drop']) {
      const init = { dataTransfer, bubbles: true, cancelable: true };
      plan?.dispatchEvent(new DragEvent(type, init));
    }
  }, bytes);
  const report = page.getByRole('dialog', { name: 'A library was taken in' });
  await expect(report).toContainText('1 layout the same as here already.');
  await report.getByRole('button', { name: 'Close' }).last().click();
  await expect(report).toBeHidden();
  await expect(nameOf(page)).toContainText(name);
});

test('a file dropped over an open layout is taken in and shown', async ({ page }) => {
  await startLayout(page);
  await renameAndSave(page, name);
  const sent = await downloaded(page, page.getByRole('button', { name: 'Export', exact: true }));
  await renameAndSave(page, 'Another name');
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'sent.json', { type: 'application/json' }));
    const plan = document.querySelector('.workspace');
    for (const type of ['dragover', 'drop']) {
      const init = { dataTransfer, bubbles: true, cancelable: true };
      plan?.dispatchEvent(new DragEvent(type, init));
    }
  }, sent.text);
  await expect(nameOf(page)).toContainText(name);
  await closeLayout(page);
  await expect(listed(page)).toHaveText([name, 'Another name']);
});
