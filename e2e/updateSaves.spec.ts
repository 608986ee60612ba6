import { nameOf, rename, startLayout } from './support/layouts.ts';
import { readyOffline, versionOf } from './support/offline.ts';
import { expect, test } from './support/test.ts';

test('a newer version is offered, and taking it saves first', async ({ page, startSite }) => {
  const site = await startSite();
  await startLayout(page, site.address);
  await readyOffline(page);
  const newer = site.deploy({ 'assets/newer.js': 'export const newer = 1;' });
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  const offer = page.getByRole('button', { name: 'Save and update' });
  await expect(offer).toBeVisible();
  await rename(page, 'Just before');
  await offer.click();
  await expect.poll(() => versionOf(page)).toBe(newer);
  await expect(nameOf(page)).toContainText('Just before');
});
