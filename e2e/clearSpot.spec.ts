import type { Page } from '@playwright/test';
import { savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const angle = (page: Page) => page.getByLabel('Round the rim', { exact: true });
const card = (page: Page) => page.getByRole('region', { name: 'Clearance' });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const tally = (page: Page) => page.getByLabel('Mics by verdict');

/** The rack tom's clip turned to the player, where it is in the way. */
async function turnInTheWay(page: Page): Promise<void> {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Rack tom', { exact: true }).click();
  await angle(page).fill('270');
  await angle(page).press('Enter');
  await expect(card(page)).toContainText(/Struck|Tight/);
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
}

test('a clear spot is shown before it is taken, left without a trace, and taken as one step', async ({
  page,
}) => {
  await turnInTheWay(page);
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  const offer = page.getByRole('region', { name: /^Clear spot of Rack tom/ });
  await expect(offer).toContainText('There is a clear spot', { timeout: 60_000 });
  await expect(offer.locator('tbody tr').first()).toBeVisible();
  await expect(card(page)).toContainText('Clear');
  await expect(undo(page)).toHaveAccessibleName('Undo: Move Rack tom');
  await offer.getByRole('button', { name: 'Leave it' }).click();
  await expect(offer).toHaveCount(0);
  await expect(angle(page)).toHaveValue('270');
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  await offer.getByRole('button', { name: 'Take it' }).click({ timeout: 60_000 });
  await expect(card(page)).toContainText('Clear');
  await expect(page.getByRole('button', { name: 'Find a clear spot' })).toHaveCount(0);
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Clear spot of Rack tom/);
  await undo(page).click();
  await expect(angle(page)).toHaveValue('270');
  await expect(card(page)).toContainText(/Struck|Tight/);
});

test('an offer that is walked away from is left, and never stored', async ({ page }) => {
  await turnInTheWay(page);
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  await expect(page.getByRole('button', { name: 'Take it' })).toBeVisible({ timeout: 60_000 });
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Rack tom', { exact: true }).click();
  await expect(angle(page)).toHaveValue('270');
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  await expect(page.getByRole('button', { name: 'Take it' })).toBeVisible({ timeout: 60_000 });
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(tally(page)).not.toContainText('Clear8');
});

test('everything in the way is cleared in one step, with what moved and what is left @portrait', async ({
  page,
}) => {
  await turnInTheWay(page);
  await page.getByRole('tab', { name: /Findings/ }).click();
  await page.getByRole('button', { name: /^Clear everything/ }).click();
  const offer = page.getByRole('region', { name: 'Clear everything' });
  await expect(offer).toContainText('1 mic would move', { timeout: 60_000 });
  await expect(offer.getByRole('listitem').first()).toContainText(/Rack tom.*→ Clear/);
  await offer.getByRole('button', { name: /^Take/ }).click();
  await expect(tally(page)).toContainText('Clear8');
  await expect(undo(page)).toHaveAccessibleName('Undo: Clear everything');
  await undo(page).click();
  await expect(tally(page)).not.toContainText('Clear8');
});

test('where nothing is within reach it is said, with what to try', async ({ page }) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Player' }).click();
  await page.getByLabel('Wanted clearance', { exact: true }).fill('300');
  await page.getByLabel('Wanted clearance', { exact: true }).press('Enter');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await page.getByRole('button', { name: /^Rack tom mic/ }).click();
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  const none = page.getByRole('region', { name: /^Clear spot of Rack tom/ });
  await expect(none).toContainText('None within reach', { timeout: 60_000 });
  await expect(none).toContainText('Another mount');
  await expect(none).toContainText('smaller margin');
});
