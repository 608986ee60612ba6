import type { Page } from '@playwright/test';
import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

async function openMic(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText(name, { exact: true }).click();
  await expect(page.getByRole('heading', { level: 2, name, exact: true })).toBeVisible();
}

test('a stand that does not reach is changed for the smallest that does, by one tap', async ({
  page,
}) => {
  await startLayout(page);
  await openMic(page, 'Overhead, hi-hat side');
  const stand = page.getByLabel('Class of stand');
  const before = await stand.inputValue();
  await stand.selectOption('tripodLow');
  const card = page.getByRole('region', { name: 'Clearance' });
  await expect(card.getByText(/out of its stand's reach$/)).toBeVisible();
  await expect(page.getByTestId('verdict-news')).toHaveText(/^Won't hold: .*stand's reach\.$/);
  await page.getByRole('button', { name: /^Take another stand/ }).click();
  await expect(card.getByText(/out of its stand's reach/)).toHaveCount(0);
  await expect(stand).toHaveValue(before);
  await undo(page).click();
  await expect(stand).toHaveValue('tripodLow');
});

test('feet that overlap are turned free by one tap', async ({ page }) => {
  await startLayout(page);
  await openMic(page, 'Overhead, hi-hat side');
  const turn = field(page, 'First foot toward');
  const offer = page.getByRole('button', { name: /^Turn the feet of/ });
  await expect(offer).toHaveCount(0);
  // The base beside the hi-hat mic's own, its first leg toward that: somewhere on the way they overlap.
  await openMic(page, 'Hi-hat');
  const [x, y] = [
    await field(page, 'Right of the throne').nth(1).inputValue(),
    await field(page, 'In front of the throne').nth(1).inputValue(),
  ];
  await openMic(page, 'Overhead, hi-hat side');
  await field(page, 'Right of the throne')
    .nth(1)
    .fill(String(Number(x) - 330));
  await field(page, 'Right of the throne').nth(1).press('Enter');
  await field(page, 'In front of the throne').nth(1).fill(y);
  await field(page, 'In front of the throne').nth(1).press('Enter');
  for (let degrees = 0; degrees < 120 && (await offer.count()) === 0; degrees += 10) {
    await turn.fill(String(degrees));
    await turn.press('Enter');
  }
  await expect(offer.first()).toBeVisible();
  const overlap = page.getByText(/^Feet of .* overlap$/);
  const found = await overlap.count();
  await offer.first().click();
  await expect(overlap).toHaveCount(found - 1);
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Feet of/);
});

test('one mic is mirrored to the other side and back', async ({ page }) => {
  await startLayout(page);
  await openMic(page, 'Overhead, hi-hat side');
  const x = field(page, 'Right of the throne').first();
  const before = Number(await x.inputValue());
  await page.getByRole('button', { name: /^Mirror Overhead, hi-hat side/ }).click();
  await expect(x).toHaveValue(String(-before));
  await undo(page).click();
  await expect(x).toHaveValue(String(before));
  await openMic(page, 'Rack tom');
  const angle = field(page, 'Round the rim');
  const was = Number(await angle.inputValue());
  await page.getByRole('button', { name: /^Mirror Rack tom/ }).click();
  await expect(angle).toHaveValue(String((540 - was) % 360));
});

test('the stick floor is drawn and taken away by its switch', async ({ page }) => {
  await startLayout(page);
  const floor = page.getByRole('checkbox', { name: 'Stick floor' });
  await expect(floor).not.toBeChecked();
  await floor.check();
  await expect(page.locator('.plan-frame')).toContainText(/stick floor/i, { timeout: 60_000 });
  await page.reload();
  await expect(floor).toBeChecked();
  await floor.uncheck();
  await expect(page.locator('.plan-frame')).not.toContainText(/stick floor/i);
});
