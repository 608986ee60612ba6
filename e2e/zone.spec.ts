import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

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
  await expect(page.getByText(/^Struck if moved here/)).toBeVisible({ timeout: 60_000 });
});
