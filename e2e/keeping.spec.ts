import {
  closeLayout,
  listed,
  nameOf,
  rename,
  renameAndSave,
  savedSign,
  startLayout,
} from './support/layouts.ts';
import { readyOffline } from './support/offline.ts';
import { expect, test } from './support/test.ts';

test('what is changed is saved as one works, and is there after a reload', async ({ page }) => {
  await startLayout(page);
  await rename(page, 'Town hall');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await expect(nameOf(page)).toContainText('Town hall');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await closeLayout(page);
  await expect(listed(page)).toHaveText(['Town hall']);
});

test('a name that is too long is not cut off: the limit is said, and the field keeps what was typed', async ({
  page,
}) => {
  await startLayout(page);
  await page.getByRole('button', { name: /, rename$/ }).click();
  const dialog = page.getByRole('dialog');
  const long = 'Long '.repeat(20).trim();
  await dialog.getByLabel('Name').fill(long);
  await expect(dialog.getByRole('alert')).toHaveText('At most 80 characters; this has 99.');
  await dialog.getByRole('button', { name: 'Rename' }).click();
  await expect(dialog.getByLabel('Name')).toHaveValue(long);
  await dialog.getByLabel('Name').fill('Short');
  await expect(dialog.getByRole('alert')).toHaveCount(0);
  await dialog.getByRole('button', { name: 'Rename' }).click();
  await expect(nameOf(page)).toContainText('Short');
});

test('a change is saved also when the page is left at once', async ({ page }) => {
  await startLayout(page);
  await rename(page, 'Left at once');
  await page.reload();
  await expect(nameOf(page)).toContainText('Left at once');
});

test('what is still being typed is kept when the page is left by Back or loaded again', async ({
  page,
}) => {
  await startLayout(page);
  const notes = page.getByRole('textbox', { name: 'Notes' });
  const openNotes = () => page.getByRole('tab', { name: 'Stage' }).click();
  await openNotes();
  await notes.fill('Mains on the left');
  await page.goBack();
  await expect(listed(page)).toHaveCount(1);
  await page.goForward();
  await openNotes();
  await expect(notes).toHaveValue('Mains on the left');
  await notes.fill('Mains on the right');
  await page.reload();
  await expect(nameOf(page)).toBeVisible();
  await openNotes();
  await expect(notes).toHaveValue('Mains on the right');
  await page.getByRole('textbox', { name: 'Width, side to side' }).fill('4000');
  await page.goBack();
  await expect(listed(page)).toHaveCount(1);
  await page.goForward();
  await openNotes();
  await expect(page.getByRole('textbox', { name: 'Width, side to side' })).toHaveValue('4000');
});

test('the address leads to the layout, and Back to the list', async ({ page, context }) => {
  await startLayout(page);
  await renameAndSave(page, 'Linked');
  const address = page.url();
  expect(new URL(address).pathname).toMatch(/^\/layout\/[a-z0-9-]+$/);
  await expect(page).toHaveTitle(/^Linked/);
  await page.goBack();
  await expect(listed(page)).toHaveText(['Linked']);
  await page.goForward();
  await expect(nameOf(page)).toContainText('Linked');
  const second = await context.newPage();
  await second.goto(address);
  await expect(nameOf(second)).toContainText('Linked');
});

test('an address that leads nowhere says so and shows the list', async ({ page }) => {
  await page.goto('/layout/not-there');
  await expect(page.getByRole('alert')).toContainText('could not be opened');
  await expect(nameOf(page)).toHaveText('Strokespace');
  expect(new URL(page.url()).pathname).toBe('/');
});

test('the tablet is switched on again with the network off: everything is there', async ({
  startBrowser,
  startSite,
}) => {
  const site = await startSite();
  const first = await (await startBrowser()).newPage();
  await startLayout(first, site.address);
  await renameAndSave(first, 'Open air');
  await readyOffline(first);
  await first.getByRole('button', { name: /^Light/ }).click();
  site.switchOff();
  const second = await (await startBrowser()).newPage();
  await second.goto(site.address);
  await expect(listed(second)).toHaveText(['Open air']);
  await expect(second.locator('html')).toHaveAttribute('data-theme', 'light');
  await listed(second).click();
  await expect(nameOf(second)).toContainText('Open air');
  await renameAndSave(second, 'Open air, day two');
  const third = await (await startBrowser()).newPage();
  await third.goto(site.address);
  await expect(listed(third)).toHaveText(['Open air, day two']);
});

test('layouts are duplicated, and deleted with undo', async ({ page }) => {
  await startLayout(page);
  await renameAndSave(page, 'Club');
  await closeLayout(page);
  await page.getByRole('button', { name: 'More for Club' }).click();
  await page.getByRole('button', { name: 'Duplicate' }).click();
  await expect(listed(page)).toHaveText(['Club (copy)', 'Club']);
  await page.getByRole('button', { name: 'Delete' }).click();
  await expect(listed(page)).toHaveText(['Club (copy)']);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(listed(page)).toHaveText(['Club (copy)', 'Club']);
  await page.reload();
  await expect(listed(page)).toHaveText(['Club (copy)', 'Club']);
});

test('undo and redo by keys, but not while a text is typed', async ({ page }) => {
  await startLayout(page);
  await rename(page, 'First');
  await rename(page, 'Second');
  await page.keyboard.press('Control+z');
  await expect(nameOf(page)).toContainText('First');
  await page.keyboard.press('Control+Shift+Z');
  await expect(nameOf(page)).toContainText('Second');
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+y');
  await expect(nameOf(page)).toContainText('Second');
  await page.getByRole('button', { name: /, rename$/ }).click();
  await page.getByRole('dialog').getByLabel('Name').press('Control+z');
  await page.keyboard.press('Escape');
  await expect(nameOf(page)).toContainText('Second');
});
