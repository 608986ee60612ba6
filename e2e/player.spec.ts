import type { Page } from '@playwright/test';
import { closeLayout, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const playedBy = (page: Page) => page.locator('.played-by');

async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

async function openPlayer(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Player' }).click();
  await expect(field(page, 'Stature, standing')).toBeVisible();
}

test('another lead hand changes who plays what, and leaves the kit where it is', async ({
  page,
}) => {
  await startLayout(page);
  await openPlayer(page);
  await expect(playedBy(page)).toContainText('Right hand alone');
  await expect(playedBy(page).locator('dd').nth(1)).toHaveText('Ride');
  await page.getByRole('radio', { name: 'Left', exact: true }).check();
  await expect(playedBy(page)).toContainText('Left hand alone');
  await expect(playedBy(page)).not.toContainText('Right hand alone');
  await expect(undo(page)).toHaveAccessibleName('Undo: Lead hand');
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.locator('.line-name').getByText('Ride', { exact: true }).click();
  await expect(page.getByLabel('Played by')).toHaveValue('lead');
  await expect(page.getByLabel('Played by').locator('option:checked')).toHaveText(
    'Lead hand (left)',
  );
  await undo(page).click();
  await expect(page.getByLabel('Played by').locator('option:checked')).toHaveText(
    'Lead hand (right)',
  );
});

test('the hi-hat is played by either hand, crossed or open, and says so at the piece', async ({
  page,
}) => {
  await startLayout(page);
  await openPlayer(page);
  await page.getByRole('radio', { name: 'Open', exact: true }).check();
  const left = playedBy(page).locator('div', { hasText: 'Left hand alone' });
  await expect(left.locator('dd')).toHaveText('Hi-hat');
  await page.getByRole('radio', { name: 'Crossed', exact: true }).check();
  const right = playedBy(page).locator('div', { hasText: 'Right hand alone' });
  await expect(right.locator('dd')).toContainText('Hi-hat');
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.locator('.line-name').getByText('Hi-hat', { exact: true }).click();
  await expect(page.getByText('This player plays the hi-hat crossed')).toBeVisible();
});

test('the counts of the mics stay in view over the settings that change them @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await openPlayer(page);
  const tally = page.getByLabel('Mics by verdict');
  const margin = field(page, 'Wanted clearance');
  await margin.scrollIntoViewIfNeeded();
  await margin.evaluate((input) => input.scrollIntoView({ block: 'start' }));
  await expect(tally).toBeInViewport({ ratio: 1 });
  // What is brought to the top stands below the counts, not under them.
  const [counts, input] = [await tally.boundingBox(), await margin.boundingBox()];
  expect(input?.y).toBeGreaterThan((counts?.y ?? 0) + (counts?.height ?? Infinity));
  await expect(tally.locator('dd').nth(1)).toHaveText('0');
  await type(page, 'Wanted clearance', '100');
  await expect(tally.locator('dd').nth(1)).not.toHaveText('0');
  await expect(tally).toBeInViewport({ ratio: 1 });
});

test('strokes go from taps to full ones by name or by any number @portrait', async ({ page }) => {
  await startLayout(page);
  await openPlayer(page);
  await page.getByRole('radio', { name: /^Tap/ }).check();
  await expect(field(page, 'Stroke height')).toHaveValue('75');
  await page.getByRole('radio', { name: /^Half/ }).check();
  await expect(field(page, 'Stroke height')).toHaveValue('150');
  await type(page, 'Stroke height', '220');
  await expect(page.getByRole('radio', { name: /^(Tap|Half|Full)/, checked: true })).toHaveCount(0);
  await type(page, 'Stroke height', '2 m');
  await expect(page.getByRole('alert')).toContainText('Allowed: 20 to 600 mm');
});

test('a trunk that stays upright leaves pieces out of reach, by how much and of which hand', async ({
  page,
}) => {
  await startLayout(page);
  await openPlayer(page);
  await type(page, 'Trunk leans at most', '0');
  await page.getByRole('tab', { name: /Findings/ }).click();
  const line = page.getByRole('button', { name: /is out of the player's reach/ }).first();
  await line.click();
  await expect(page.locator('.line-more')).toContainText(
    /The (right|left) arm falls short by \d+ mm.*trunk lean included/,
  );
  await undo(page).click();
  await expect(line).toHaveCount(0);
});

test('body lengths show what stature gives beside what was measured', async ({ page }) => {
  await startLayout(page);
  await openPlayer(page);
  await page.locator('summary', { hasText: 'Measured body lengths' }).click();
  const arm = page.locator('.field', { has: field(page, 'Upper arm') });
  await expect(arm).toContainText('From stature: 334 mm');
  await type(page, 'Upper arm', '360');
  await expect(field(page, 'Upper arm')).toHaveValue('360 mm');
  await expect(arm).toContainText('From stature: 334 mm');
  await type(page, 'Stature, standing', '1900');
  await expect(arm).toContainText('From stature: 364 mm');
});

test('the margin can be set where the player is', async ({ page }) => {
  await startLayout(page);
  await openPlayer(page);
  const tally = page.getByLabel('Mics by verdict');
  await expect(tally).toContainText('Tight0');
  await type(page, 'Wanted clearance', '120');
  await expect(tally).not.toContainText('Tight0');
});

test('the player of another layout is one tap away, and undone like everything else', async ({
  page,
}) => {
  await startLayout(page);
  await openPlayer(page);
  await type(page, 'Stature, standing', '1910');
  await field(page, 'Name').fill('Tall drummer');
  await field(page, 'Name').press('Enter');
  await page.getByRole('radio', { name: 'Open', exact: true }).check();
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await closeLayout(page);
  await page.getByRole('button', { name: 'New layout' }).click();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /Four-piece/ })
    .click();
  await openPlayer(page);
  await expect(field(page, 'Stature, standing')).toHaveValue('1750');
  await page.getByRole('button', { name: 'Look for players' }).click();
  const other = page.getByRole('button', { name: /^Tall drummer/ });
  await expect(other).toContainText('1910 mm tall');
  await expect(other).toContainText('hi-hat open');
  await other.click();
  await expect(field(page, 'Stature, standing')).toHaveValue('1910');
  await expect(page.getByRole('radio', { name: 'Open', exact: true })).toBeChecked();
  await expect(other).toBeDisabled();
  await undo(page).click();
  await expect(field(page, 'Stature, standing')).toHaveValue('1750');
  await expect(field(page, 'Name')).toHaveValue('Drummer');
});
