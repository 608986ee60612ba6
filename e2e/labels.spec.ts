import type { Page } from '@playwright/test';
import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

/** How many colour values of the plan's uppermost canvas differ by more than rounding from those of the call before; all at the first. */
const changed = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    await new Promise((go) => requestAnimationFrame(() => requestAnimationFrame(go)));
    const kept = window as { drawing?: Uint8ClampedArray };
    const canvas = [...document.querySelectorAll<HTMLCanvasElement>('.plan canvas')].at(-1);
    const now = canvas?.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data;
    const before = kept.drawing;
    if (now) kept.drawing = now;
    return now?.filter((value, i) => Math.abs(value - (before?.[i] ?? 1000)) > 8).length ?? -1;
  });

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
  expect(await changed(page)).toBeGreaterThan(0);
  await toAndFro(page);
  expect(await changed(page)).toBe(0);
});
