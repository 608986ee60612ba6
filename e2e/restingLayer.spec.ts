import type { Page } from '@playwright/test';
import { openPlan } from './support/plan.ts';
import { expect, test } from './support/test.ts';

/** What the canvas of all that stands still shows, as a number; 0 where it shows nothing. */
const standing = (page: Page): Promise<number> =>
  page.evaluate(async () => {
    await new Promise((go) => requestAnimationFrame(() => requestAnimationFrame(go)));
    const canvas = document.querySelectorAll<HTMLCanvasElement>('.plan-pane canvas')[1];
    const pen = document.createElement('canvas').getContext('2d');
    if (!canvas || !pen) throw new Error('expected the plan’s canvases');
    Object.assign(pen.canvas, { width: canvas.width, height: canvas.height });
    pen.drawImage(canvas, 0, 0);
    return pen
      .getImageData(0, 0, canvas.width, canvas.height)
      .data.reduce((sum, value, i) => (sum * 31 + value * (i % 7)) % 1_000_003, 0);
  });

test('a kit whose picture was lost while nobody looked is drawn again', async ({ page }) => {
  await openPlan(page);
  const before = await standing(page);
  expect(before).not.toBe(0);
  await page.evaluate(() => {
    const canvas = document.querySelectorAll<HTMLCanvasElement>('.plan-pane canvas')[1];
    const screen = canvas && HTMLCanvasElement.prototype.getContext.call(canvas, 'bitmaprenderer');
    (screen as ImageBitmapRenderingContext | null)?.transferFromImageBitmap(null);
  });
  expect(await standing(page)).toBe(0);
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
  expect(await standing(page)).toBe(before);
});

test.describe('on a screen of two device pixels to one', () => {
  test.use({ deviceScaleFactor: 2 });

  test('the kit stands where it stands on any other, and stays so when it is drawn again', async ({
    page,
  }) => {
    const plan = await openPlan(page);
    const before = await standing(page);
    const throne = plan.kit({ x: 0, y: 0 });
    const colourAt = (x: number, y: number): Promise<number[]> =>
      page.evaluate(
        ([left, top]) => {
          const canvas = document.querySelectorAll<HTMLCanvasElement>('.plan-pane canvas')[1];
          const pen = document.createElement('canvas').getContext('2d');
          if (!canvas || !pen) throw new Error('expected the plan’s canvases');
          const box = canvas.getBoundingClientRect();
          pen.drawImage(canvas, 2 * (box.left - left), 2 * (box.top - top));
          return [...pen.getImageData(0, 0, 1, 1).data];
        },
        [x, y] as const,
      );
    expect((await colourAt(throne.x, throne.y))[3]).toBe(255);
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    expect(await standing(page)).toBe(before);
  });
});
