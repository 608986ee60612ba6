import type { Page } from '@playwright/test';
import { renameAndSave, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const points = (page: Page) => page.locator('.history-points .line-button');

async function openHistory(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^History/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'History' })).toBeVisible();
}

/** The field of the snare's height, in its details. */
async function snareHeight(page: Page) {
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.locator('.line-name').getByText('Snare', { exact: true }).click();
  return page.getByLabel('Height of the head', { exact: true });
}

/** Types a height for the snare, and waits until it is stored. */
async function raiseSnare(page: Page, height: string): Promise<void> {
  const field = await snareHeight(page);
  await field.fill(height);
  await field.press('Enter');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
}

test('an earlier point is looked at, compared in mm, and brought back as a new one @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await raiseSnare(page, '700');
  await raiseSnare(page, '750');
  await openHistory(page);
  await expect(page).toHaveURL(/\/history$/);
  await expect(points(page)).toHaveCount(3);
  await expect(points(page).first()).toContainText('As it is now');
  await expect(points(page).first()).toContainText('Snare moved');
  await expect(points(page).nth(1)).toContainText('Snare moved');
  // What changed there is what the point is called; only the oldest has nothing before it.
  await expect(points(page).nth(1).locator('.line-name')).toHaveText('Snare moved');
  await expect(points(page).nth(2).locator('.line-name')).toHaveText('The first point there is');
  await points(page).nth(1).click();
  await expect(page.getByRole('heading', { name: /^As it was/ })).toBeVisible();
  const changes = page.locator('.history-changes');
  await expect(changes).toContainText('Snare: moved 50 mm');
  await changes.getByLabel('From this point to').selectOption({ index: 1 });
  await expect(changes).toContainText(/Snare: moved \d+ mm/);
  await expect(changes).not.toContainText('Snare: moved 50 mm');
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByText('is open again, as a new point.')).toBeVisible();
  await expect(points(page)).toHaveCount(4);
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  const field = await snareHeight(page);
  await expect(field).toHaveValue('700');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(field).toHaveValue('750');
});

test('looking at a point changes nothing, whatever one does after it', async ({ page }) => {
  await startLayout(page);
  await raiseSnare(page, '700');
  await raiseSnare(page, '750');
  await openHistory(page);
  await points(page).last().click();
  await expect(page.getByRole('heading', { name: /^As it was/ })).toBeVisible();
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await expect(await snareHeight(page)).toHaveValue('750');
  await page.reload();
  await openHistory(page);
  await expect(points(page)).toHaveCount(3);
});

test('a point is named by hand, and the name stays', async ({ page }) => {
  await startLayout(page);
  await renameAndSave(page, 'Town hall');
  await openHistory(page);
  await page.getByRole('button', { name: 'Name this point' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name').fill('Before the show');
  await dialog.getByRole('button', { name: 'Keep the name' }).click();
  await expect(points(page).first()).toContainText('“Before the show”');
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await raiseSnare(page, '720');
  await page.reload();
  await openHistory(page);
  await expect(points(page).nth(1)).toContainText('“Before the show”');
  await page.getByLabel('Only named and signed points').check();
  await expect(points(page)).toHaveCount(2);
});

test('a long name of a layout or a point stays in its place, a longer one is refused @portrait', async ({
  page,
}) => {
  const long = 'Midsummer'.repeat(9).slice(0, 80);
  await startLayout(page);
  await renameAndSave(page, long);
  await expectInside(page, '.title-text', '.bar-title');
  await openHistory(page);
  await expectInside(page, '.page-layout', '.bar-title');
  await page.getByRole('button', { name: 'Name this point' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByLabel('Name').fill(`${long}s`);
  await expect(dialog.getByRole('alert')).toHaveText('At most 80 characters; this has 81.');
  await dialog.getByRole('button', { name: 'Keep the name' }).click();
  await expect(dialog.getByLabel('Name')).toHaveValue(`${long}s`);
  await dialog.getByLabel('Name').fill(long);
  await dialog.getByRole('button', { name: 'Keep the name' }).click();
  await expect(points(page).first()).toContainText(`“${long}”`);
  await expect(page.getByText(`Named “${long}”`)).toBeVisible();
  for (const part of ['[role=status]', '.line-button', '.line-name', '.check']) {
    await expectInside(page, `.history-points ${part}`, '.history-points');
  }
});

/** That nothing of what is shown reaches out of what holds it. */
async function expectInside(page: Page, what: string, holder: string): Promise<void> {
  const outer = await page.locator(holder).first().boundingBox();
  const inner = await page.locator(what).first().boundingBox();
  if (!outer || !inner) throw new Error(`${what} in ${holder} is to be shown`);
  expect(inner.x).toBeGreaterThanOrEqual(outer.x);
  expect(inner.x + inner.width).toBeLessThanOrEqual(outer.x + outer.width + 0.5);
}

test('the picture of the point that was tapped stays in view, however far down the list @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const field = await snareHeight(page);
  for (let height = 700; height < 716; height += 1) {
    await field.fill(String(height));
    await field.press('Enter');
    await expect(savedSign(page)).toHaveText(/^Saved \d/);
  }
  await openHistory(page);
  await expect(points(page)).toHaveCount(17);
  await points(page).last().scrollIntoViewIfNeeded();
  await points(page).last().tap();
  await expect(page.getByRole('heading', { name: /^As it was/ })).toBeAttached();
  await points(page).last().scrollIntoViewIfNeeded();
  await expect(points(page).last()).toBeInViewport();
  await expect(page.locator('.history-plan')).toBeInViewport({ ratio: 0.9 });
});
