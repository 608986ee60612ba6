import { readFileSync } from 'node:fs';
import { expect, type Locator, type Page } from '@playwright/test';
import { appIsOpen } from './offline.ts';

/** Starts a layout from the five-piece kit on a fresh profile, and waits until it is stored. */
export async function startLayout(page: Page, address = '/'): Promise<void> {
  await page.goto(address);
  await appIsOpen(page);
  await page
    .getByRole('button', { name: /Five-piece, one rack tom/ })
    .first()
    .click();
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
}

/** The sign that says whether what is open is stored. */
export const savedSign = (page: Page): Locator => page.locator('[data-saving]');

/** An edit like any other: gives the open layout another name. Does not wait for it to be stored. */
export async function rename(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: /, rename$/ }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name').fill(name);
  await dialog.getByRole('button', { name: 'Rename' }).click();
  await expect(nameOf(page)).toContainText(name);
}

/** The name of the open layout, as the page's heading. */
export const nameOf = (page: Page): Locator => page.getByRole('heading', { level: 1 });

export async function renameAndSave(page: Page, name: string): Promise<void> {
  await rename(page, name);
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
}

export const closeLayout = (page: Page): Promise<void> =>
  page.getByRole('button', { name: 'Layouts' }).click();

/** Names in the list of layouts. */
export const listed = (page: Page): Locator => page.locator('.layout-name');

/** What a click on a button hands out as a file. */
export async function downloaded(
  page: Page,
  button: Locator,
): Promise<{ readonly name: string; readonly text: string }> {
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return { name: download.suggestedFilename(), text: readFileSync(await download.path(), 'utf8') };
}

/** Offers a file for import. */
export const importText = (page: Page, name: string, text: string): Promise<void> =>
  page.getByLabel('Layout file').setInputFiles({
    name,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
