import type { Page } from '@playwright/test';
import {
  closeLayout,
  listed,
  nameOf,
  rename,
  renameAndSave,
  savedSign,
  startLayout,
} from './support/layouts.ts';
import { expect, test } from './support/test.ts';

/** A second tab on the same layout that does not hear what other tabs say, as one that was put away. */
async function deafTab(page: Page): Promise<Page> {
  const tab = await page.context().newPage();
  await tab.addInitScript(() => Reflect.deleteProperty(window, 'BroadcastChannel'));
  await tab.goto(page.url());
  await expect(savedSign(tab)).toHaveText(/^Saved \d/);
  return tab;
}

test('another tab with nothing unsaved follows', async ({ page, context }) => {
  await startLayout(page);
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(savedSign(other)).toHaveText(/^Saved \d/);
  await renameAndSave(page, 'From the first tab');
  await expect(nameOf(other)).toContainText('From the first tab');
  await renameAndSave(other, 'From the second tab');
  await expect(nameOf(page)).toContainText('From the second tab');
});

test('another tab’s change is one step: what was done here before it is not lost', async ({
  page,
  context,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Mine, first');
  const other = await context.newPage();
  await other.goto(page.url());
  await expect(savedSign(other)).toHaveText(/^Saved \d/);
  await renameAndSave(other, 'Theirs');
  await expect(nameOf(page)).toContainText('Theirs');
  const undo = page.getByRole('button', { name: /^Undo/ });
  await expect(undo).toHaveAccessibleName(/Change in another tab/);
  await undo.click();
  await expect(nameOf(page)).toContainText('Mine, first');
  await expect(nameOf(other)).toContainText('Mine, first');
  await undo.click();
  await expect(nameOf(page)).not.toContainText('Mine');
});

test('the browser’s storage is cleared while a layout is open: one true message, and it is stored again', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Kept');
  await page.evaluate(() => indexedDB.deleteDatabase('strokespace'));
  await expect(page.getByRole('alert')).toContainText('storage was cleared');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await expect(page.getByRole('alert')).toHaveCount(1);
  await expect(page.getByText(/newer version|changed in another tab/)).toHaveCount(0);
  await renameAndSave(page, 'Kept, and on');
  await page.reload();
  await expect(nameOf(page)).toContainText('Kept, and on');
});

test('two tabs change the same layout: this one is kept as a copy, and nothing is lost', async ({
  page,
}) => {
  await startLayout(page);
  const other = await deafTab(page);
  await renameAndSave(page, 'Theirs');
  await rename(other, 'Mine');
  await expect(savedSign(other)).toHaveText('Not saved: changed in another tab');
  await closeLayout(other);
  await expect(nameOf(other)).toContainText('Mine');
  await other.getByRole('button', { name: 'Keep mine as a copy' }).click();
  await expect(savedSign(other)).toHaveText(/^Saved \d/);
  await expect(nameOf(other)).toContainText('Mine (copy)');
  await closeLayout(other);
  await expect(listed(other)).toHaveText(['Mine (copy)', 'Theirs']);
});

test('or the other tab’s is taken, and work goes on from there', async ({ page }) => {
  await startLayout(page);
  const other = await deafTab(page);
  await renameAndSave(page, 'Theirs');
  await rename(other, 'Mine');
  await other.getByRole('button', { name: 'Take the other tab' }).click();
  await expect(nameOf(other)).toContainText('Theirs');
  await renameAndSave(other, 'Theirs, and more');
  await other.reload();
  await expect(nameOf(other)).toContainText('Theirs, and more');
});

test('a tab of a newer version takes the storage over: this one says so and saves no more', async ({
  page,
  context,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Old version');
  const newer = await context.newPage();
  await newer.goto('/icons/mark.svg');
  await newer.evaluate(
    () =>
      new Promise<void>((done, fail) => {
        const open = indexedDB.open('strokespace', 1000);
        open.onsuccess = () => done();
        open.onerror = () => fail(open.error);
        open.onblocked = () => fail(new Error('the old tab did not let go'));
      }),
  );
  await expect(page.getByRole('alert')).toContainText('Another tab runs a newer version');
  await rename(page, 'Not any more');
  await expect(savedSign(page)).toHaveText(/^Not saved/);
});
