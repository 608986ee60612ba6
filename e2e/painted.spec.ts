import type { Page } from '@playwright/test';
import { differing, isDrawn, pixelsOf } from './support/canvas.ts';
import { openPlan } from './support/plan.ts';
import { expect, test } from './support/test.ts';

/** The canvas of all that stands still. */
const STANDING = 1;
const standing = (page: Page): Promise<Uint8Array> => pixelsOf(page, '.plan-pane canvas', STANDING);

/** The worker that paints; it starts with the page. */
const painter = (page: Page) => page.workers().find((one) => one.url().includes('paintWorker'));

test('the plan is painted beside the page, and painted again when somebody comes back to it', async ({
  page,
}) => {
  await openPlan(page);
  const before = await standing(page);
  expect(isDrawn(before)).toBe(true);
  // What the graphics memory lost is seen only where it is painted: there the canvases are emptied.
  await painter(page)?.evaluate(() => {
    const { clearRect } = OffscreenCanvasRenderingContext2D.prototype;
    const counted = { clears: 0 };
    Object.assign(globalThis, { counted });
    OffscreenCanvasRenderingContext2D.prototype.clearRect = function (...area) {
      counted.clears += 1;
      clearRect.apply(this, area);
    };
  });
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  const canvases = await page.locator('.plan-pane canvas').count();
  const cleared = () =>
    painter(page)?.evaluate(
      () => (globalThis as unknown as { counted: { clears: number } }).counted.clears,
    );
  await expect.poll(cleared).toBe(canvases);
  expect(differing(before, await standing(page))).toBe(0);
});

test.describe('without a service worker, which would bring the file from its store', () => {
  test.use({ serviceWorkers: 'block' });

  test('a plan that can’t be painted beside the page is drawn on it, and that is said', async ({
    page,
  }) => {
    await openPlan(page);
    const before = await standing(page);
    await page.route('**/paintWorker*.js', (route) => route.abort());
    await page.reload();
    await expect(page.getByText('Drawings can’t be painted beside the page')).toBeVisible();
    await page.getByRole('button', { name: 'Dismiss' }).click();
    expect(differing(before, await standing(page))).toBe(0);
  });
});

test.describe('on a screen of two device pixels to one', () => {
  test.use({ deviceScaleFactor: 2 });

  test('the kit stands where it stands on any other', async ({ page }) => {
    const plan = await openPlan(page);
    const canvas = page.locator('.plan-pane canvas').nth(STANDING);
    const box = await canvas.boundingBox();
    if (!box) throw new Error('expected the plan’s canvases');
    const pixels = await standing(page);
    const throne = plan.kit({ x: 0, y: 0 });
    const [x, y] = [2 * Math.round(throne.x - box.x), 2 * Math.round(throne.y - box.y)];
    expect(pixels).toHaveLength(4 * 2 * box.width * 2 * box.height);
    expect(pixels[4 * (y * 2 * box.width + x) + 3]).toBe(255);
  });
});
