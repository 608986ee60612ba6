import type { Page } from '@playwright/test';
import { closeLayout, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const heading = (page: Page) => page.getByRole('heading', { level: 2, name: 'Rack tom' });

async function openRackTom(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Rack tom', { exact: true }).click();
  await expect(heading(page)).toBeVisible();
}

test('the verdict stays in view over the numbers that change it @portrait', async ({ page }) => {
  await startLayout(page);
  await openRackTom(page);
  const kept = page.locator('.verdict-kept p');
  const card = page.getByRole('region', { name: 'Clearance' });
  await expect(card).toBeInViewport();
  const inPanel = async () => {
    const panel = await page.locator('.panel-view').boundingBox();
    const bar = await kept.boundingBox();
    return panel && bar ? bar.y - panel.y : Number.NaN;
  };
  // At rest it lies under the card, which says the same at length, and nothing of it looks out.
  expect(await inPanel()).toBeGreaterThan(60);
  const [over, under] = [await card.boundingBox(), await kept.boundingBox()];
  if (!over || !under) throw new Error('expected the card and what is kept of it');
  expect(under.x).toBeGreaterThanOrEqual(over.x);
  expect(under.x + under.width).toBeLessThanOrEqual(over.x + over.width);
  expect(under.y + under.height).toBeLessThan(over.y + over.height - 8);
  const reach = page.getByLabel('Inside the rim', { exact: true });
  await page.locator('.panel-view').evaluate((view) => view.scrollTo(0, view.scrollHeight));
  await expect(card).not.toBeInViewport();
  await expect.poll(inPanel).toBeCloseTo(0, 0);
  await expect(kept).toContainText(/Rack tom.*Clear.*\d+ mm/);
  await page.locator('.panel-view').evaluate((view) => view.scrollTo(0, 300));
  await page.getByLabel('Round the rim', { exact: true }).fill('270');
  await page.getByLabel('Round the rim', { exact: true }).press('Enter');
  await reach.fill('60');
  await reach.press('Enter');
  await expect(kept).toContainText(/Struck.*−\d+ mm/);
  await expect(kept).toBeInViewport();
});

test('what is selected is selected again after a reload, not after the layout was closed', async ({
  page,
}) => {
  await startLayout(page);
  await openRackTom(page);
  await page.reload();
  await expect(heading(page)).toBeVisible();
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await closeLayout(page);
  await page.locator('.layout-name').first().click();
  await expect(page.getByRole('application', { name: 'Plan of the deck' })).toBeVisible();
  await expect(heading(page)).toBeHidden();
});

test('a row of the input list says which number is the channel and which the input of the box @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Patch' }).click();
  const row = page.locator('.input-line').first();
  const [channel, box] = [
    row.getByText('Ch', { exact: true }),
    row.getByText('Box', { exact: true }),
  ];
  await expect(channel).toBeVisible();
  await expect(box).toBeVisible();
  await expect(
    row.getByRole('button', { name: /^Channel 1\s.*Box input 1, brown/s }),
  ).toBeVisible();
});
