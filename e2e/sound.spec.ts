import type { Page } from '@playwright/test';
import { startLayout } from './support/layouts.ts';
import { Fingers } from './support/plan.ts';
import { expect, test } from './support/test.ts';

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const heading = (page: Page, part: string) =>
  page.locator('.sound-part h3').getByRole('button', { name: part });

/** Opens a part of the Sound section of the five-piece kit. */
async function openPart(page: Page, part: string): Promise<void> {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Sound' }).click();
  await openAnother(page, part);
}

async function openAnother(page: Page, part: string): Promise<void> {
  const button = heading(page, part);
  await expect(button).toBeVisible();
  if ((await button.getAttribute('aria-expanded')) === 'false') await button.click();
  await expect(button).toHaveAttribute('aria-expanded', 'true');
}

const height = (page: Page) =>
  page.getByLabel('All overheads over the highest cymbal', { exact: true });

test('a close mic says what its last change did, and the change can be undone', async ({
  page,
}) => {
  await openPart(page, 'Close mics');
  await expect(page.getByText('harm hearing')).toBeVisible();
  await expect(page.getByText('A direct-sound estimate.')).toBeVisible();
  const mic = page.locator('.sound-part-body .line-button').filter({ hasText: 'Rack tom mic' });
  await mic.click();
  await expect(page.getByText('Not moved yet')).toBeVisible();
  await expect(page.getByRole('img', { name: /^Polar plot/ })).toBeVisible();
  await page.getByRole('button', { name: /^Adjust/ }).click();
  await page.getByRole('button', { name: 'Points down by, more' }).click();
  await page.getByRole('tab', { name: 'Sound' }).click();
  await expect(page.locator('.sound-change')).toHaveText(
    /Since its last change: own level .*, isolation .*, aim moved \d+ mm/,
  );
  await undo(page).click();
  await expect(page.getByText('Not moved yet')).toBeVisible();
});

test('dragging over the chart moves the overheads in one step; a typed height does too @portrait', async ({
  page,
}) => {
  await openPart(page, 'Overheads');
  const before = await height(page).inputValue();
  const chart = page.getByRole('img', { name: /against overhead height/ });
  await chart.scrollIntoViewIfNeeded();
  const box = await chart.boundingBox();
  if (!box) throw new Error('the chart is on the screen');
  const y = box.y + box.height / 2;
  const fingers = await Fingers.on(page);
  await fingers.drag({ x: box.x + box.width * 0.3, y }, { x: box.x + box.width * 0.8, y });
  await expect(async () => {
    expect(Number(await height(page).inputValue())).toBeGreaterThan(1000);
  }).toPass();
  await undo(page).click();
  await expect(height(page)).toHaveValue(before);
  await height(page).fill('900');
  await height(page).press('Enter');
  await expect(page.getByText('Now 900 mm over the highest cymbal.')).toBeVisible();
});

test('an arrangement is one tap and one undo', async ({ page }) => {
  await openPart(page, 'Overheads');
  await page.getByRole('button', { name: 'Snare-equidistant' }).click();
  await expect(page.getByText('The snare is even between left and right.')).toBeVisible();
  await expect(undo(page)).toHaveAccessibleName(/Snare-equidistant overheads/);
});

test('timing names the polarity to try first; style moves the high-pass and is kept', async ({
  page,
}) => {
  await openPart(page, 'Timing');
  await page.locator('.sound-row summary').first().click();
  await expect(page.getByText(/^Try (normal|inverted) first/).first()).toBeVisible();
  await expect(page.getByText(/^Delay .* samples at 48 kHz/).first()).toBeVisible();
  await openAnother(page, 'High-pass');
  const overhead = page.locator('.sound-line').filter({ hasText: 'Overhead' }).first();
  await expect(overhead).toContainText('200 to 400 Hz');
  await page.getByLabel('Style of music').selectOption({ label: 'Jazz' });
  await expect(overhead).toContainText('30 to 60 Hz');
  await page.getByRole('tab', { name: 'Patch' }).click();
  const style = page.getByRole('combobox', { name: 'Style of music' });
  await expect(style).toHaveValue('jazz');
  await style.selectOption({ label: 'Big band' });
  await page.getByRole('tab', { name: 'Sound' }).click();
  await expect(heading(page, 'High-pass')).toContainText('big band');
  await undo(page).click();
  await expect(heading(page, 'High-pass')).toContainText('jazz');
  await page.reload();
  await page.getByRole('tab', { name: 'Sound' }).click();
  await expect(heading(page, 'High-pass')).toContainText('jazz');
});

test('the numbers of the charts stand in tables, read aloud before they are shown', async ({
  page,
}) => {
  await openPart(page, 'Overheads');
  const lowest = page.getByRole('row', { name: /^400 mm/ });
  await expect(lowest).toHaveCount(1);
  await page.getByRole('button', { name: /^Show the numbers of the heights/ }).click();
  await lowest.scrollIntoViewIfNeeded();
  await expect(lowest).toBeInViewport();
  await openAnother(page, 'Close mics');
  await page.locator('.sound-part-body .line-button').first().click();
  await expect(page.getByRole('table', { name: /polar plot/ })).toHaveCount(1);
});
