import type { Page } from '@playwright/test';
import { differing, isDrawn, pixelsOf } from './support/canvas.ts';
import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

/** Moves the plan aside and back, by its empty ground: all is drawn again and again, and stands where it stood. */
async function toAndFro(page: Page): Promise<void> {
  const plan = await page.getByRole('application', { name: 'Plan of the deck' }).boundingBox();
  const [x, y] = [(plan?.x ?? 0) + 40, (plan?.y ?? 0) + 110];
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const aside of [20, 40, 20, 0]) {
    await page.mouse.move(x + aside, y);
    await page.evaluate(() => new Promise((go) => requestAnimationFrame(go)));
  }
  await page.mouse.up();
}

test('labels look the same when they are drawn again', async ({ page }) => {
  await startLayout(page);
  await toAndFro(page);
  await page.getByRole('button', { name: /^Light/ }).click();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'light');
  const before = await pixelsOf(page, '.plan canvas', -1);
  expect(isDrawn(before)).toBe(true);
  await toAndFro(page);
  expect(differing(before, await pixelsOf(page, '.plan canvas', -1))).toBe(0);
});
