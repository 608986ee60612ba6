import type { Page } from '@playwright/test';
import {
  closeLayout,
  downloaded,
  importText,
  listed,
  nameOf,
  rename,
  renameAndSave,
  savedSign,
  startLayout,
} from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

const exportButton = (page: Page) => page.getByRole('button', { name: 'Export', exact: true });

test('without storage it is said, work goes on, and is exported', async ({ page }) => {
  await page.addInitScript(() => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('Storage is switched off.', 'SecurityError');
    };
  });
  await page.goto('/');
  await appIsOpen(page);
  await expect(page.getByRole('alert')).toContainText('Storage is switched off.');
  await page
    .getByRole('button', { name: /Five-piece, one rack tom/ })
    .first()
    .click();
  await expect(savedSign(page)).toHaveText(/^Not saved/);
  await rename(page, 'Private window');
  await expect(savedSign(page)).toHaveText(/^Not saved/);
  const file = await downloaded(page, exportButton(page));
  expect(file.name).toBe('Private window.json');
  await closeLayout(page);
  await expect(listed(page)).toHaveText(['Private window']);
  await importText(page, file.name, file.text);
  await expect(listed(page)).toHaveText(['Private window (copy)', 'Private window']);
  await listed(page).last().click();
  await expect(nameOf(page)).toContainText('Private window');
  await expect(savedSign(page)).toHaveText(/^Not saved/);
});

test('a full storage is said, keeps what it has, and takes the work when there is room', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Stored');
  await page.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...given) {
      if ('hasRoom' in window) return add.apply(this, given);
      throw new DOMException('No room left.', 'QuotaExceededError');
    };
  });
  await rename(page, 'Not stored');
  await expect(savedSign(page)).toHaveText('Not saved: the storage is full');
  await expect(page.getByRole('alert')).toContainText('No room left.');
  const file = await downloaded(page, page.getByRole('button', { name: 'Export this layout' }));
  expect(JSON.parse(file.text).name).toBe('Not stored');
  const other = await page.context().newPage();
  await other.goto('/');
  await expect(listed(other)).toHaveText(['Stored']);
  // The list does not pass for safe what it only holds.
  await closeLayout(page);
  const row = page.locator('.layout-row').filter({ hasText: 'Not stored' });
  await expect(row).toContainText('Not saved: export it before you close this page');
  await expect(page.getByText('Not everything is kept')).toBeVisible();
  await expect(page.getByText('Everything is kept twice')).toHaveCount(0);
  await listed(page).click();
  await page.evaluate(() => Object.assign(window, { hasRoom: true }));
  await renameAndSave(page, 'Stored again');
  await closeLayout(page);
  await expect(listed(page)).toHaveText(['Stored again']);
  await expect(page.getByText(/^Not saved|Not everything is kept/)).toHaveCount(0);
  await page.reload();
  await listed(page).click();
  await expect(nameOf(page)).toContainText('Stored again');
});

test('a stored layout that is damaged is named, kept and exported to the letter', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Festival');
  await closeLayout(page);
  await page.evaluate(
    () =>
      new Promise<void>((done, fail) => {
        const open = indexedDB.open('strokespace');
        open.onerror = () => fail(open.error);
        open.onsuccess = () => {
          const transaction = open.result.transaction('documents', 'readwrite');
          const documents = transaction.objectStore('documents');
          const all = documents.getAll();
          all.onsuccess = () => documents.put({ ...all.result.at(-1), text: '{"half of a' });
          transaction.oncomplete = () => {
            open.result.close();
            done();
          };
        };
      }),
  );
  await listed(page).click();
  await expect(page.getByRole('alert')).toContainText("“Festival” can't be read");
  await expect(listed(page)).toHaveText(['Festival']);
  await page.getByRole('button', { name: 'More for Festival' }).click();
  const file = await downloaded(page, exportButton(page));
  expect(file).toEqual({ name: 'Festival.json', text: '{"half of a' });
});

test('a storage that the browser has emptied by itself is not passed over', async ({ page }) => {
  await startLayout(page);
  await closeLayout(page);
  await expect(listed(page)).toHaveCount(1);
  await page.goto('/icons/mark.svg');
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        indexedDB.deleteDatabase('strokespace').onsuccess = () => done();
      }),
  );
  // The second copy is gone as well; e2e/secondCopy.spec.ts has what happens when it is not.
  await page.evaluate(async () => {
    const root = await navigator.storage.getDirectory();
    await root.removeEntry('strokespace-journal', { recursive: true });
  });
  await page.goto('/');
  await expect(page.getByRole('alert')).toContainText('The layouts that were kept here are gone');
});

test('where the browser can’t be relied on nothing is called saved', async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'isSecureContext', { value: false });
  });
  await page.goto('/');
  await page
    .getByRole('button', { name: /Five-piece, one rack tom/ })
    .first()
    .click();
  await expect(savedSign(page)).toHaveText(/^Not saved/);
  await rename(page, 'Over plain http');
  await expect(page.getByText(/neither https nor localhost/)).toHaveCount(1);
  await expect(page.getByText(/stored on this device, but/)).toBeVisible();
  await expect(savedSign(page)).toHaveText(/^Not saved/);
  await page.reload();
  await expect(nameOf(page)).toContainText('Over plain http');
});
