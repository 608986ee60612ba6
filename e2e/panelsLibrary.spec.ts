import { closeLayout, downloaded, listed, nameOf, startLayout } from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

test('the first run says what the app is for and offers kits to start from @portrait', async ({
  page,
}) => {
  await page.goto('/');
  await appIsOpen(page);
  await expect(page.getByRole('heading', { name: /No layouts yet/ })).toBeVisible();
  expect(await page.locator('.start-card').count()).toBeGreaterThanOrEqual(6);
  await expect(page.getByText('Local rules and qualified people decide')).toBeVisible();
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(page.viewportSize()?.width ?? 0);
});

test('every starting kit opens with no mic struck', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  const names = await page.locator('.start-card strong').allTextContents();
  for (const [index, name] of names.entries()) {
    if (index > 0) await page.getByRole('button', { name: 'New layout' }).click();
    await page
      .locator('.start-card')
      .filter({ has: page.getByText(name, { exact: true }) })
      .click();
    await expect(nameOf(page)).toContainText(name);
    const struck = page.locator('.tally-cell').filter({ hasText: 'Struck' });
    if ((await struck.count()) > 0) await expect(struck).toContainText('0');
    await closeLayout(page);
  }
  await expect(listed(page)).toHaveCount(names.length);
});

test('a layout is renamed in the list; an empty name is refused', async ({ page }) => {
  await startLayout(page);
  await closeLayout(page);
  await page.getByRole('button', { name: /^More for/ }).click();
  await page.getByRole('button', { name: 'Rename' }).click();
  const dialog = page.getByRole('dialog');
  // The name stands selected: what is typed takes its place.
  await expect(dialog.getByLabel('Name')).toBeFocused();
  await page.keyboard.type('Hall');
  await expect(dialog.getByLabel('Name')).toHaveValue('Hall');
  await dialog.getByLabel('Name').fill('  ');
  await dialog.getByRole('button', { name: 'Rename' }).click();
  await expect(dialog.getByRole('alert')).toContainText('A name is needed');
  await dialog.getByLabel('Name').fill('Open air');
  await dialog.getByRole('button', { name: 'Rename' }).click();
  await expect(listed(page)).toHaveText(['Open air']);
});

test('deleting the last layout still offers to bring it back', async ({ page }) => {
  await startLayout(page);
  await closeLayout(page);
  await page.getByRole('button', { name: /^More for/ }).click();
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(page.getByRole('heading', { name: /No layouts yet/ })).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(listed(page)).toHaveCount(1);
});

test('a file dropped on the list is taken in', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  const data = await page.evaluateHandle(() => {
    const transfer = new DataTransfer();
    transfer.items.add(new File(['not a layout'], 'notes.json', { type: 'application/json' }));
    return transfer;
  });
  await page.dispatchEvent('.library', 'dragover', { dataTransfer: data });
  await expect(page.locator('.library')).toHaveClass(/dropping/);
  await page.dispatchEvent('.library', 'drop', { dataTransfer: data });
  await expect(page.getByRole('dialog')).toContainText('notes.json');
  await expect(page.getByRole('dialog')).toContainText('Nothing was changed');
});

test('files that are chosen or dropped together are all taken in, and each that is not is named @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const { text } = await downloaded(
    page,
    page.getByRole('button', { name: 'Export', exact: true }),
  );
  await closeLayout(page);
  const named = (name: string): string => JSON.stringify({ ...JSON.parse(text), name });
  const all = [
    ['club.json', named('Club')],
    ['notes.json', 'not a layout'],
    ['hall.json', named('Hall')],
  ] as const;
  await page.getByLabel('Layout file').setInputFiles(
    all.map(([name, content]) => ({
      name,
      mimeType: 'application/json',
      buffer: Buffer.from(content),
    })),
  );
  const dialog = page.getByRole('dialog', { name: 'This file was not imported' });
  await expect(dialog).toContainText('notes.json');
  await expect(dialog).toContainText('2 layouts that came along were imported.');
  await dialog.locator('.dialog-foot').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByText('“Club” and “Hall” are in the list')).toBeVisible();
  await expect(listed(page)).toHaveCount(3);
  const data = await page.evaluateHandle(
    (files) => {
      const transfer = new DataTransfer();
      for (const [name, content] of files) transfer.items.add(new File([content], name));
      return transfer;
    },
    [all[0], all[2]],
  );
  await page.dispatchEvent('.library', 'drop', { dataTransfer: data });
  await expect(listed(page)).toHaveText([/^Hall/, /^Club/, /^Hall/, /^Club/, /Five-piece/]);
  // Over an open layout the first is shown, and where the other is is said.
  await listed(page).last().click();
  await page.dispatchEvent('.workspace', 'drop', { dataTransfer: data });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Club');
  await expect(page.getByText(/^Taken in: “Club.*”, open now, .* “Hall.*”$/)).toBeVisible();
  await closeLayout(page);
  await expect(listed(page)).toHaveCount(7);
});
