import { expect, type Page } from '@playwright/test';

export async function appIsOpen(page: Page): Promise<void> {
  await expect(page).toHaveTitle(/Strokespace/);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
}

/** Waits until the service worker has kept everything and answers this page. */
export async function readyOffline(page: Page): Promise<void> {
  await appIsOpen(page);
  await page.waitForFunction(() => navigator.serviceWorker.controller?.state === 'activated');
}

/** The version that the open page is of. */
export const versionOf = (page: Page): Promise<string | null> =>
  page.locator('meta[name="version"]').getAttribute('content');

/** The versions whose files the browser keeps. */
export const keptVersions = (page: Page): Promise<string[]> =>
  page.evaluate(async () =>
    (await caches.keys()).map((name) => name.replace(/^strokespace-/, '')).sort(),
  );
