import type { Page } from '@playwright/test';
import { bundleUpdatesPage } from './support/bundleUpdatesPage.ts';
import { type Deployment, pageWithScript } from './support/deployment.ts';
import { appIsOpen, keptVersions, readyOffline, versionOf } from './support/offline.ts';
import { expect, test } from './support/test.ts';

/**
 * Files of a version with a chunk that is loaded late, as only that version has it. The chunk is not under /assets/, so that
 * the browser's own cache does not keep it.
 */
async function version(name: 'one' | 'two'): Promise<Record<string, string>> {
  return {
    'index.html': pageWithScript('/assets/updates-page.js'),
    'assets/updates-page.js': await bundleUpdatesPage(),
    [`late-${name}.js`]: `export const late = '${name}';`,
  };
}

const loadLate = (page: Page, name: 'one' | 'two'): Promise<string> =>
  page.evaluate(async (address) => (await import(address)).late, `/late-${name}.js`);

async function deployNewer(site: Deployment, page: Page): Promise<string> {
  const newer = site.deploy(await version('two'));
  await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
  await expect(offer(page)).toBeVisible();
  return newer;
}

const offer = (page: Page) => page.getByRole('button', { name: 'Use the newer version' });

test('a newer version waits while a tab is open, which keeps its own late files (O2, O3)', async ({
  page,
  context,
  startSite,
}) => {
  const site = await startSite(await version('one'));
  await page.goto(site.address);
  await readyOffline(page);
  await expect(page.locator('body')).toHaveAttribute('data-offline', 'ready');
  const old = await versionOf(page);
  const newer = await deployNewer(site, page);
  expect(newer).not.toBe(old);
  expect(await loadLate(page, 'one')).toBe('one');
  await page.reload();
  expect(await versionOf(page)).toBe(old);
  await expect(offer(page)).toBeVisible();
  expect(await keptVersions(page)).toEqual([old, newer].sort());
  await page.close();
  const next = await context.newPage();
  await expect(async () => {
    // A page that is there already would keep the old version in use, and without one the browser takes a moment to put the newer in its place.
    await next.goto('about:blank');
    await next.waitForTimeout(1000);
    await next.goto(site.address);
    expect(await versionOf(next)).toBe(newer);
  }).toPass();
  await expect.poll(() => keptVersions(next)).toEqual([newer]);
});

test('the user takes the newer version; another tab goes on with the old one and is offered it (O2, O3)', async ({
  page,
  context,
  startSite,
}) => {
  const site = await startSite(await version('one'));
  await page.goto(site.address);
  await readyOffline(page);
  const old = await versionOf(page);
  const other = await context.newPage();
  await other.goto(site.address);
  await appIsOpen(other);
  const newer = await deployNewer(site, page);
  site.switchOff();
  await offer(page).click();
  await expect.poll(() => versionOf(page)).toBe(newer);
  expect(await loadLate(page, 'two')).toBe('two');
  expect(await versionOf(other)).toBe(old);
  expect(await loadLate(other, 'one')).toBe('one');
  await expect(offer(other)).toBeVisible();
  await offer(other).click();
  await expect.poll(() => versionOf(other)).toBe(newer);
  await other.reload();
  await expect.poll(() => keptVersions(other)).toEqual([newer]);
});
