import type { Page } from '@playwright/test';
import {
  closeLayout,
  listed,
  nameOf,
  renameAndSave,
  savedSign,
  startLayout,
} from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

/** Deletes the database while no page of the app is open, as browsers do that find it damaged. */
async function deleteDatabase(page: Page): Promise<void> {
  await page.goto('/icons/mark.svg');
  await page.evaluate(
    () =>
      new Promise<void>((done, fail) => {
        const request = indexedDB.deleteDatabase('strokespace');
        request.onsuccess = () => done();
        request.onerror = () => fail(request.error);
      }),
  );
}

test('a database that the browser threw away comes back from the second copy, and it is said @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Town hall');
  await renameAndSave(page, 'Town hall, day two');
  await closeLayout(page);
  await deleteDatabase(page);
  await page.goto('/');
  await expect(listed(page)).toHaveText(['Town hall, day two']);
  const notice = page.getByRole('status').filter({ hasText: 'brought back from the second copy' });
  await expect(notice).toContainText('1 layout brought back');
  await expect(notice).toContainText('Town hall, day two');
  await expect(page.getByText('The layouts that were kept here are gone')).toHaveCount(0);
  await notice.getByRole('button', { name: 'Dismiss' }).click();
  await expect(notice).toHaveCount(0);
  await listed(page).click();
  await expect(nameOf(page)).toContainText('Town hall, day two');
  await renameAndSave(page, 'Town hall, day three');
  await page.reload();
  await expect(nameOf(page)).toContainText('Town hall, day three');
  await expect(page.getByText('brought back from the second copy')).toHaveCount(0);
});

test('the address of a layout that the database lost opens it all the same', async ({ page }) => {
  await startLayout(page);
  await renameAndSave(page, 'Linked');
  const address = page.url();
  await deleteDatabase(page);
  await page.goto(address);
  await expect(nameOf(page)).toContainText('Linked');
  await expect(savedSign(page)).toHaveText(/^Saved \d\d:\d\d$/);
});

test('where there is no place for a second copy, the app works and says so', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(StorageManager.prototype, 'getDirectory', { value: undefined });
  });
  await page.goto('/');
  await appIsOpen(page);
  const card = page.locator('.card').filter({ hasText: 'Where layouts are kept' });
  await expect(card).toContainText('There is one copy only');
  await expect(card).toContainText('gives pages no files of their own');
  await startLayout(page);
  await renameAndSave(page, 'One copy');
  await expect(savedSign(page)).toHaveText(/^Saved \d\d:\d\d, one copy only$/);
  await page.reload();
  await expect(nameOf(page)).toContainText('One copy');
});

test('two tabs both keep their layouts twice', async ({ page }) => {
  await startLayout(page);
  await renameAndSave(page, 'First');
  const other = await page.context().newPage();
  await other.goto('/');
  await other.getByRole('button', { name: 'New layout' }).click();
  await other.getByRole('button', { name: /Five-piece, one rack tom/ }).click();
  await renameAndSave(other, 'Second');
  await renameAndSave(page, 'First again');
  await other.close();
  await deleteDatabase(page);
  await page.goto('/');
  await expect(listed(page)).toHaveCount(2);
  await expect(listed(page).filter({ hasText: 'First again' })).toHaveCount(1);
  await expect(listed(page).filter({ hasText: 'Second' })).toHaveCount(1);
});
