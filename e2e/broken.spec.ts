import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { downloaded, listed, rename, renameAndSave, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const assets = fileURLToPath(new URL('../dist/assets', import.meta.url));

test('an error while drawing leaves no blank page: export and a way back are offered', async ({
  context,
}) => {
  const page = await context.newPage();
  await startLayout(page);
  await renameAndSave(page, 'Rescued');
  // From now on the sign that says when it was saved can't be drawn.
  await page.evaluate(() => {
    Date.prototype.getMinutes = () => {
      throw new Error('broken on purpose');
    };
  });
  await page.getByRole('button', { name: /, rename$/ }).click();
  const alarm = page.getByRole('alert').filter({ hasText: "This page can't be shown" });
  await expect(alarm).toContainText('broken on purpose');
  const file = await downloaded(page, alarm.getByRole('button', { name: 'Export this layout' }));
  expect(JSON.parse(file.text).name).toBe('Rescued');
  await alarm.getByRole('button', { name: 'Go to the list of layouts' }).click();
  await expect(listed(page)).toHaveText(['Rescued']);
  await page.close();
});

test('a part of the app that can’t be loaded does not take the rest with it', async ({
  context,
  startSite,
}) => {
  const plan = readdirSync(assets).find((name) => /^Plan-.*\.js$/.test(name));
  expect(plan).toBeDefined();
  const site = await startSite({ [`assets/${plan}`]: 'throw new Error("broken on purpose");' });
  const page = await context.newPage();
  await startLayout(page, site.address);
  await expect(page.getByRole('alert')).toContainText("The plan can't be shown");
  await rename(page, 'Rescued');
  const file = await downloaded(
    page,
    page.getByRole('alert').getByRole('button', { name: 'Export this layout' }),
  );
  expect(JSON.parse(file.text).name).toBe('Rescued');
  await page.close();
});

test('an error that nothing else dealt with is said, with the export, and can be dismissed', async ({
  context,
}) => {
  const page = await context.newPage();
  await startLayout(page);
  await renameAndSave(page, 'Rescued');
  await page.evaluate(() => {
    setTimeout(() => {
      throw new Error('broken on purpose');
    });
  });
  const notice = page.getByRole('alert').filter({ hasText: 'Something in the app failed' });
  await expect(notice).toContainText('Broken on purpose');
  const file = await downloaded(page, notice.getByRole('button', { name: 'Export this layout' }));
  expect(JSON.parse(file.text).name).toBe('Rescued');
  await notice.getByRole('button', { name: 'Dismiss' }).click();
  await expect(notice).toHaveCount(0);
  await page.evaluate(() => void Promise.reject(new Error('and once more')));
  await expect(notice).toContainText('And once more');
  await page.close();
});
