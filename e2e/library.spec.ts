import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { closeLayout, listed, nameOf, renameAndSave, startLayout } from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

/** Starts one more layout from the list, under a name, and goes back to the list. */
async function another(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'New layout' }).click();
  await page.getByRole('button', { name: /Five-piece, one rack tom/ }).click();
  await renameAndSave(page, name);
  await closeLayout(page);
}

async function first(page: Page, name: string): Promise<void> {
  await startLayout(page);
  await renameAndSave(page, name);
  await closeLayout(page);
}

const more = (page: Page, name: string) => page.getByRole('button', { name: `More for ${name}` });

/** The whole library as a file. */
async function exported(page: Page): Promise<{ name: string; bytes: Buffer }> {
  const button = page.getByRole('button', { name: 'Export the whole library' });
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}

const takeIn = (page: Page, name: string, buffer: Buffer) =>
  page
    .getByLabel('Layout file')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer });

test('layouts are found by words, starred, tagged and archived @portrait', async ({ page }) => {
  await first(page, 'Town hall');
  await another(page, 'Small club');
  await another(page, 'Open air');
  await expect(page.locator('.layout-open .kit-picture circle').first()).toBeVisible();
  const search = page.getByRole('searchbox', { name: 'Search layouts' });
  await search.fill('hall');
  await expect(listed(page)).toHaveText(['Town hall']);
  await search.fill('nowhere');
  await expect(page.getByText('No layout is found by “nowhere”.')).toBeVisible();
  await search.fill('');
  await page.getByRole('button', { name: 'Favourite: Small club' }).click();
  await expect(page.getByRole('button', { name: 'Favourite: Small club' })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await page.getByRole('radio', { name: 'Favourites' }).check();
  await expect(listed(page)).toHaveText(['Small club']);
  await page.getByRole('radio', { name: 'All' }).check();
  await more(page, 'Town hall').click();
  await page.getByRole('button', { name: 'Tags', exact: true }).click();
  await page.getByRole('dialog').getByLabel('Tags, with commas between').fill('tour, summer');
  await page.getByRole('dialog').getByRole('button', { name: 'Keep them' }).click();
  await page.getByRole('button', { name: 'Archive', exact: true }).click();
  await expect(listed(page)).toHaveText(['Open air', 'Small club']);
  const archived = page.getByText('Archived “Town hall”');
  await expect(archived).toBeVisible();
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect(listed(page)).toHaveText(['Open air', 'Small club', 'Town hall']);
  await expect(archived).toHaveCount(0);
  await more(page, 'Town hall').click();
  await page.getByRole('button', { name: 'Archive', exact: true }).click();
  await expect(listed(page)).toHaveText(['Open air', 'Small club']);
  await search.fill('summer');
  await expect(listed(page)).toHaveText(['Town hall']);
  await page.reload();
  await expect(listed(page)).toHaveText(['Open air', 'Small club']);
  await page.getByRole('radio', { name: 'Archive' }).check();
  await expect(listed(page)).toHaveText(['Town hall']);
});

test('what was deleted comes back from the list of deleted layouts, also after a reload', async ({
  page,
}) => {
  await first(page, 'Town hall');
  await more(page, 'Town hall').click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(page.getByRole('heading', { name: /No layouts yet/ })).toBeVisible();
  await page.reload();
  await page.getByRole('button', { name: 'Bin', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog).toContainText('Town hall');
  await expect(dialog).toContainText(/kept until \d{4}-\d\d-\d\d/);
  await dialog.getByRole('button', { name: 'Bring back Town hall' }).click();
  await expect(dialog).toContainText('There are none.');
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(listed(page)).toHaveText(['Town hall']);
});

test('what comes back from the bin is not said to be deleted any more', async ({ page }) => {
  await first(page, 'Town hall');
  await more(page, 'Town hall').click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  const deleted = page.getByText('Deleted “Town hall”');
  await expect(deleted).toBeVisible();
  await page.getByRole('button', { name: 'Bin', exact: true }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Bring back Town hall' }).click();
  await expect(dialog).toContainText('There are none.');
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(listed(page)).toHaveText(['Town hall']);
  await expect(deleted).toHaveCount(0);
});

test('a library goes to another tablet; what both changed stands in two lines, and one is chosen', async ({
  page,
  startBrowser,
}) => {
  await first(page, 'Town hall');
  await another(page, 'Small club');
  const file = await exported(page);
  expect(file.name).toMatch(/^Strokespace \d{4}-\d\d-\d\d\.layouts$/);
  await expect(page.getByText(`Saved as ${file.name}`)).toBeVisible();
  const other = await (await startBrowser()).newPage();
  await other.goto('/');
  await appIsOpen(other);
  await takeIn(other, file.name, file.bytes);
  const report = other.getByRole('dialog');
  await expect(report).toContainText('2 layouts new here');
  await report.getByRole('button', { name: 'Close' }).last().click();
  await expect(listed(other)).toHaveText(['Small club', 'Town hall']);
  await listed(other).last().click();
  await renameAndSave(other, 'Town hall, here');
  await closeLayout(other);
  await listed(page).last().click();
  await renameAndSave(page, 'Town hall, there');
  await closeLayout(page);
  const second = await exported(page);
  await takeIn(other, second.name, second.bytes);
  await expect(report).toContainText('1 layout changed on both tablets');
  await expect(report).toContainText('1 layout the same as here already');
  await report.getByRole('button', { name: 'Open Town hall, here' }).click();
  await expect(nameOf(other)).toContainText('Town hall, here');
  await other.getByRole('button', { name: 'Pages', exact: true }).click();
  await other.getByRole('button', { name: /^History/ }).click();
  await other.locator('.history-points .line-button').getByText('From another tablet').click();
  await expect(other.locator('.history-changes')).toContainText(
    'name Town hall, there → Town hall, here',
  );
  await other.getByRole('button', { name: 'Bring it back' }).click();
  await expect(other.getByText('is open again, as a new point.')).toBeVisible();
  await expect(other.locator('.page-layout')).toHaveText('Town hall, there');
  await other.getByRole('button', { name: 'Plan', exact: true }).click();
  await closeLayout(other);
  await expect(listed(other)).toHaveText(['Town hall, there', 'Small club']);
  await expect(other.getByText('Changed on another tablet too')).toHaveCount(0);
});

test('a library file that is cut off or something else is said to be that, and nothing is lost', async ({
  page,
}) => {
  await first(page, 'Town hall');
  await another(page, 'Small club');
  const { bytes } = await exported(page);
  await takeIn(page, 'half.layouts', bytes.subarray(0, Math.floor(bytes.length * 0.7)));
  const report = page.getByRole('dialog');
  await expect(report).toContainText('The file is cut off');
  await expect(report).toContainText('nothing that was here is changed or lost');
  await report.getByRole('button', { name: 'Close' }).last().click();
  await takeIn(page, 'photo.layouts', Buffer.from('not a library at all'));
  await expect(page.getByRole('alert')).toContainText(
    'Import failed: it is no library of this app',
  );
  await expect(listed(page)).toHaveText(['Small club', 'Town hall']);
});

test('a row says how much is to solve in its layout, and one that knows nothing is looked through at rest @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await closeLayout(page);
  const row = page.locator('.layout-row').first();
  await expect(row).toContainText('Nothing to solve');
  await row.locator('.layout-open').click();
  await page.getByRole('tab', { name: 'Stage' }).click();
  const wanted = page.getByLabel('Wanted clearance', { exact: true });
  await wanted.fill('90');
  await wanted.press('Enter');
  await closeLayout(page);
  await expect(row).toContainText('to look at');
  await expect(row).not.toContainText('Nothing to solve');
  await row.locator('.layout-open').click();
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Rack tom', { exact: true }).click();
  for (const [field, value] of [
    ['Round the rim', '270'],
    ['Inside the rim', '60'],
  ] as const) {
    await page.getByLabel(field, { exact: true }).fill(value);
    await page.getByLabel(field, { exact: true }).press('Enter');
  }
  await closeLayout(page);
  await expect(row).toContainText('1 to solve');
  await page.evaluate(() => localStorage.removeItem('strokespace.needs'));
  await page.reload();
  await expect(row).toContainText('1 to solve');
});
