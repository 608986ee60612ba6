import type { Page } from '@playwright/test';
import { nameOf, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

test('a page has an address of its own: Back, Forward and a reload keep to it @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const plan = page.url();
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Hand over/ }).click();
  const heading = page.getByRole('heading', { level: 1, name: 'Hand over' });
  await expect(heading).toBeFocused();
  expect(page.url()).toBe(`${plan}/hand-over`);

  await page.goBack();
  await expect(nameOf(page)).toBeVisible();
  expect(page.url()).toBe(plan);
  await page.goForward();
  await expect(heading).toBeVisible();
  await page.reload();
  await expect(heading).toBeVisible();
  expect(page.url()).toBe(`${plan}/hand-over`);

  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await expect(nameOf(page)).toBeVisible();
  expect(page.url()).toBe(plan);
});

test('the name of a starting kit stands whole over the plan @portrait', async ({ page }) => {
  await startLayout(page);
  const name = page.locator('.title-text');
  await expect(name).toHaveText('Five-piece, one rack tom');
  expect(await name.evaluate((text) => text.scrollWidth - text.clientWidth)).toBe(0);
  await expect(page.getByRole('button', { name: 'Not signed off' })).toBeVisible();
  for (const button of ['Light screen', 'Export', 'Pages']) {
    await expect(page.getByRole('button', { name: button, exact: true })).toBeVisible();
  }
});

test('the frame round the name is there for keys, not after touching @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const name = page.locator('.title-text');
  await page.getByRole('button', { name: /, rename$/ }).click();
  const field = page.getByRole('dialog').getByLabel('Name');
  await field.fill('Town hall');
  await field.press('Enter');
  await expect(name).toHaveText('Town hall');
  await expect(page.getByRole('button', { name: /, rename$/ })).toBeFocused();
  await expect(name).toHaveCSS('outline-style', 'none');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Shift+Tab');
  await expect(name).toHaveCSS('outline-style', 'solid');
  await page.getByRole('heading', { level: 1 }).dispatchEvent('pointerdown');
  await expect(name).toHaveCSS('outline-style', 'none');
});

test('Back closes a dialog first, then leaves the layout @portrait', async ({ page }) => {
  await startLayout(page);
  const plan = page.url();
  const dialog = page.getByRole('dialog');
  await page.getByRole('button', { name: /, rename$/ }).click();
  await expect(dialog).toBeVisible();
  await page.goBack();
  await expect(dialog).toBeHidden();
  await expect(nameOf(page)).toBeVisible();
  expect(page.url()).toBe(plan);

  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await dialog.getByRole('button', { name: 'Close' }).click();
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^History/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'History' })).toBeVisible();
  await page.goBack();
  await expect(nameOf(page)).toBeVisible();
  expect(page.url()).toBe(plan);

  for (let times = 0; times < 2; times += 1) {
    await page.getByRole('button', { name: /, rename$/ }).click();
    await dialog.getByRole('button', { name: 'Cancel' }).click();
    await expect(dialog).toBeHidden();
    await nothingOver(page);
  }
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Strokespace' })).toBeVisible();
});

/** Waits until the browser has left the entry of a dialog that was closed by its button. */
const nothingOver = (page: Page): Promise<unknown> =>
  page.waitForFunction(() => history.state === null);
