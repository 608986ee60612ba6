import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

const steps = (page: Page) => page.getByRole('list', { name: 'To undo' }).getByRole('listitem');
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });

async function openSwap(page: Page): Promise<void> {
  await page.goto('/');
  await appIsOpen(page);
  await page
    .getByRole('button', { name: /Large kit/ })
    .first()
    .click();
  await page.getByRole('tab', { name: 'Patch' }).click();
  await page.locator('.patch .choice-option', { hasText: 'Swap' }).click();
}

test('what to undo before the snare comes out, and a way with less, by one tap @portrait', async ({
  page,
}) => {
  await openSwap(page);
  await expect(
    page.getByText(/^5 things to undo, then lift it straight up by 164 mm\.$/),
  ).toBeVisible();
  await expect(page.getByText('Numbered: what to undo, in order')).toBeVisible();
  await expect(steps(page)).toHaveText([
    /Unplug Snare mic, box input \d/,
    /Unplug Snare condenser, box input \d/,
    /Take Snare mic off with its clip/,
    /Take Snare condenser off with its clip/,
    /Open its stand/,
  ]);
  const { violations } = await new AxeBuilder({ page }).include('.panel').analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);

  await expect(page.getByText(/^4 things instead of 5: Snare mic on a boom/)).toBeVisible();
  await page
    .getByRole('button', { name: /^Take it/ })
    .first()
    .click();
  await expect(steps(page)).toHaveCount(4);
  await expect(steps(page).filter({ hasText: 'Swing the boom of Snare mic away' })).toHaveCount(1);
  await undo(page).click();
  await expect(steps(page)).toHaveCount(5);
});

test('a step is shown on the plan, and the list is where it was after that', async ({ page }) => {
  await openSwap(page);
  await steps(page).nth(2).getByRole('button').click();
  await page.getByRole('button', { name: 'Adjust' }).click();
  await expect(page.getByRole('heading', { name: 'Snare', exact: true })).toBeVisible();
  await expect(page.getByText('Numbered: what to undo, in order')).toHaveCount(0);
  await page.getByRole('tab', { name: 'Patch' }).click();
  await expect(steps(page)).toHaveCount(5);
});

test('the details of any drum lead to what its swap takes', async ({ page }) => {
  await openSwap(page);
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page
    .getByRole('button', { name: /^Floor tom 2/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'What to undo to swap it' }).click();
  await expect(page.getByLabel('Drum to lift out')).toHaveValue('floor-2');
  await expect(steps(page)).toHaveCount(2);
});
