import type { Page } from '@playwright/test';
import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

async function chooseSnareMic(page: Page): Promise<void> {
  await page.getByRole('tab', { name: /Mics/ }).click();
  await page
    .getByRole('button', { name: /^Snare/ })
    .first()
    .click();
}

test('the ground on which the chosen mic would be struck is computed beside the page', async ({
  page,
}) => {
  await startLayout(page);
  await page.getByRole('tab', { name: /Mics/ }).click();
  const [worker] = await Promise.all([
    page.waitForEvent('worker'),
    page
      .getByRole('button', { name: /^Snare/ })
      .first()
      .click(),
  ]);
  expect(new URL(worker.url()).pathname).toMatch(/^\/assets\/fieldWorker-.*\.js$/);
  await expect(page.getByText(/^Struck with its tip here/)).toBeVisible({ timeout: 60_000 });
});

test('while its mic is moved the ground is marked as that of before, with the height that it is for', async ({
  page,
}) => {
  await startLayout(page);
  await chooseSnareMic(page);
  const legend = page.locator('.plan-legends');
  await expect(legend).toContainText(/Struck with its tip here, [\d.]+ mm high/, {
    timeout: 60_000,
  });
  const height = /[\d.]+ mm/.exec((await legend.textContent()) ?? '')?.[0] ?? 'a height';
  const more = page.getByRole('button', { name: 'Height of the tip, more' });
  await more.scrollIntoViewIfNeeded();
  await more.hover();
  await page.mouse.down();
  await expect(legend).toContainText(`Before this change: struck with its tip at ${height}`);
  await page.mouse.up();
  await expect(legend).toContainText('Struck with its tip here', { timeout: 60_000 });
  await expect(legend).not.toContainText(height);
});

test('a struck zone that has not come is told from one that is empty', async ({ page }) => {
  await page.addInitScript(() => {
    const post = Worker.prototype.postMessage;
    Worker.prototype.postMessage = function (
      this: Worker,
      message: { kind?: string },
      ...given: never[]
    ) {
      if (message.kind !== 'zone') post.call(this, message, ...given);
    } as typeof post;
  });
  await startLayout(page);
  await chooseSnareMic(page);
  await expect(page.getByText('Struck zone: not worked out yet')).toBeVisible();
});
