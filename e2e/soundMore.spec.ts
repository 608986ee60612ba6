import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { importText, listed, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const heading = (page: Page, part: string) =>
  page.locator('.sound-part h3').getByRole('button', { name: part });

async function openPart(page: Page, part: string): Promise<void> {
  await page.getByRole('tab', { name: 'Sound' }).click();
  const button = heading(page, part);
  if ((await button.getAttribute('aria-expanded')) === 'false') await button.click();
  await expect(button).toHaveAttribute('aria-expanded', 'true');
}

test('a mic inside the kick says what its shell keeps out, and the figure is the user’s @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await openPart(page, 'Close mics');
  const mic = page.locator('.sound-part-body .line-button').filter({ hasText: 'Kick in' });
  await expect(mic).toContainText(/at least \d+\.\d dB over all the rest/);
  await mic.click();
  await expect(page.getByText(/taken to keep 10 dB of the other pieces out/)).toBeVisible();
  const isolation = async () =>
    Number(/≥ (\d+\.\d) dB/.exec((await mic.textContent()) ?? '')?.[1] ?? Number.NaN);
  const before = await isolation();
  await openPart(page, 'Levels');
  await page.getByLabel('Kept out by a shell', { exact: true }).fill('16');
  await page.getByLabel('Kept out by a shell', { exact: true }).press('Enter');
  await openPart(page, 'Close mics');
  expect(await isolation()).toBeCloseTo(before + 6, 0);
});

test('a seat shaker is split off a kick mic by one tap, seen in the patch and undone', async ({
  page,
}) => {
  await startLayout(page);
  await openPart(page, 'Kick');
  await page.getByRole('button', { name: 'Split Kick in for a seat shaker' }).click();
  await expect(
    page.getByText(/Kick in also feeds Seat shaker, over an isolated leg/),
  ).toBeVisible();
  await page.getByRole('button', { name: 'Open the patch' }).click();
  await page.getByRole('radio', { name: 'Splits' }).or(page.getByText('Splits')).first().click();
  await expect(page.getByRole('region', { name: 'Split of Kick in' })).toBeVisible();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByText('No signal is split.')).toBeVisible();
});

test('the last venue’s air comes from the layout this one was started from', async ({ page }) => {
  const file = new URL('../tests/fixtures/layouts/v4-signed.json', import.meta.url);
  await page.goto('/');
  await importText(page, 'signed.json', readFileSync(file, 'utf8'));
  await listed(page).first().click();
  await openPart(page, 'Timing');
  await expect(page.getByText('Last venue, Barn: 17.0 °C and 61 %.')).toBeVisible();
  // 343.2 sqrt(T / 293.15) at 17 and 24 degrees C (ISO 9613-1).
  await expect(
    page.getByText(/^From 341\.4 to 345\.5 m\/s\. The longest delay changes by −/),
  ).toBeVisible();
  await expect(page.getByLabel('Last venue, temperature')).toHaveCount(0);
  await page.getByRole('button', { name: /^Show the numbers of the delays then and now/ }).click();
  await expect(page.getByRole('table', { name: 'the delays then and now' })).toBeVisible();
});

test('timed pairs come by harm, can be cut to one mic and one overhead, and print', async ({
  page,
}) => {
  await startLayout(page);
  await openPart(page, 'Timing');
  const rows = page.locator('.sound-row');
  // A layout that was not started from another: the earlier air is typed.
  await expect(page.getByLabel('Last venue, temperature', { exact: true })).toBeVisible();
  await expect(page.getByText('All of 13 pairs, the most harmful first.')).toBeVisible();
  await page.getByLabel('Pairs of', { exact: true }).selectOption({ label: 'Snare mic' });
  await expect(rows).toHaveCount(2);
  await page.getByLabel('With', { exact: true }).selectOption({ index: 1 });
  await expect(rows).toHaveCount(1);
  await expect(page.getByText('1 of 13 pairs, the most harmful first.')).toBeVisible();
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await page.getByRole('button', { name: 'Print these pairs and delays' }).click();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.sound-sheet tbody').first().locator('tr')).toHaveCount(1);
  await expect(page.locator('.panel')).toBeHidden();
  const pdf = await page.pdf({ format: 'A4', landscape: true });
  expect(pdf.toString('latin1')).toMatch(/\/Count 1\b/);
  await page.emulateMedia({ media: 'screen' });
  await expect(page.locator('.sound-sheet')).toHaveCount(0);
  await page.getByRole('button', { name: 'Print all of it' }).click();
  await page.emulateMedia({ media: 'print' });
  for (const title of ['Close mics', 'Overheads', '3:1 pairs', 'High-pass']) {
    await expect(page.locator('.sound-sheet h2').filter({ hasText: title }).first()).toBeVisible();
  }
});
