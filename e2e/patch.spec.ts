import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { downloaded, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const inputs = (page: Page) => page.getByRole('list', { name: 'Input list' });
const names = (page: Page) => inputs(page).locator('.line-name');

async function openPatch(page: Page, part?: string): Promise<void> {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Patch' }).click();
  await expect(inputs(page)).toBeVisible();
  if (part !== undefined) await showPart(page, part);
}

const showPart = (page: Page, part: string) =>
  page.locator('.patch .choice-option', { hasText: part }).first().click();

test('the input list is put in order by hand, by keys and back to festival order @portrait', async ({
  page,
}) => {
  await openPatch(page);
  const festival = await names(page).allTextContents();
  expect(festival.length).toBeGreaterThan(4);
  const [first = '', second = '', third = ''] = festival;

  await inputs(page)
    .getByRole('button', { name: new RegExp(`^Channel 1\\s*${first}`) })
    .click();
  await page.getByRole('button', { name: 'Down', exact: true }).click();
  await expect(names(page).nth(1)).toHaveText(first);
  await expect(names(page).nth(0)).toHaveText(second);

  const handle = page.getByRole('button', { name: /^Move channel 1,/ });
  await handle.focus();
  await page.keyboard.press('ArrowDown');
  await expect(names(page).nth(1)).toHaveText(second);

  await page.getByRole('button', { name: 'Festival order' }).click();
  await expect(names(page)).toHaveText(festival);
  await undo(page).click();
  await expect(names(page).nth(1)).toHaveText(second);
  await undo(page).click();
  await undo(page).click();
  await expect(names(page)).toHaveText([first, second, third, ...festival.slice(3)]);
});

test('a row is dragged by its handle to another place', async ({ page }) => {
  await openPatch(page);
  const [first = ''] = await names(page).allTextContents();
  const from = await page.getByRole('button', { name: /^Move channel 1,/ }).boundingBox();
  const to = await page.getByRole('button', { name: /^Move channel 3,/ }).boundingBox();
  if (!from || !to) throw new Error('both handles are on the screen');
  await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
  await page.mouse.down();
  await page.mouse.move(to.x + to.width / 2, to.y + to.height / 2, { steps: 6 });
  await page.mouse.up();
  await expect(names(page).nth(2)).toHaveText(first);

  await expect(inputs(page).locator('.box-digits').nth(2)).toHaveText('1');
  await page.getByRole('button', { name: 'Plug the box in this order' }).click();
  await expect(inputs(page).locator('.box-digits').nth(2)).toHaveText('3');
  await expect(inputs(page).locator('.box-digits').nth(0)).toHaveText('1');
});

test('48 V where it is missing is a finding, and all goes back to as usual', async ({ page }) => {
  await openPatch(page);
  await inputs(page)
    .getByRole('button', { name: /pencil condenser.*48 V/i })
    .first()
    .click();
  await page.getByLabel('48 V', { exact: true }).uncheck();
  await page.getByRole('tab', { name: 'Findings' }).click();
  await expect(page.getByText(/has no 48 V$/)).toBeVisible();
  await undo(page).click();
  await expect(page.getByText(/has no 48 V$/)).toHaveCount(0);
});

test('a split is added, and a plain Y says what it does', async ({ page }) => {
  await openPatch(page, 'Splits');
  await page.getByLabel('Signal of').selectOption({ index: 0 });
  await page.getByRole('button', { name: 'Add split' }).click();
  await expect(page.getByText('Nothing is wrong with it.')).toBeVisible();
  await page.getByLabel('Kind').selectOption('y');
  await expect(page.getByText(/is split with a plain Y/)).toBeVisible();
  await page.getByRole('button', { name: 'Remove split' }).click();
  await expect(page.getByText('No signal is split.')).toBeVisible();
});

test('the line check is walked through, and a result is kept @portrait', async ({ page }) => {
  await openPatch(page, 'Check');
  await expect(page.getByRole('heading', { name: /^Channel 1:/ })).toBeVisible();
  await page.getByRole('button', { name: 'Pass' }).click();
  await expect(page.getByRole('heading', { name: /^Channel 2:/ })).toBeVisible();
  await page.getByLabel('Note').fill('Buzz');
  await page.getByRole('button', { name: 'Fail' }).click();
  await page.getByRole('button', { name: 'Skip' }).click();
  await expect(page.getByText(/1 passed, 1 failed, 1 skipped/)).toBeVisible();
  await expect(page.getByText('✗ failed: Buzz')).toBeVisible();
  await expect(page.getByText(/^Line check by channel: ✓/)).toBeVisible();
  const { text } = await downloaded(page, page.getByRole('button', { name: 'Line check as CSV' }));
  expect(text).toMatch(/,fail,Buzz\r\n/);
});

test('what went out and is not back is missing', async ({ page }) => {
  await openPatch(page, 'Pull');
  await expect(page.getByText('Nothing has gone out yet.')).toBeVisible();
  await page.getByRole('button', { name: 'All out' }).click();
  await expect(page.getByText(/^Not back yet:/)).toBeVisible();
  const ins = page.getByRole('button', { name: /^All in/ });
  const count = await ins.count();
  for (let left = count; left > 0; left -= 1) await ins.first().click();
  await expect(page.getByText('Everything that went out is back.')).toBeVisible();
});

test('the tables leave the app as CSV with names that say which', async ({ page }) => {
  await openPatch(page);
  for (const [button, start] of [
    ['Input list', 'Channel,Box input,'],
    ['Cable schedule', 'Channel,Box input,'],
    ['Pull list', 'What,Which,'],
  ] as const) {
    const { name, text } = await downloaded(
      page,
      page.getByRole('button', { name: `${button} as CSV` }),
    );
    expect(name).toMatch(/ - (inputs|cables|pull)\.csv$/);
    expect(text.startsWith(start)).toBe(true);
  }
});

test.describe('on paper', () => {
  for (const table of ['input list', 'cable schedule']) {
    test(`the ${table} is one page of A4 and of Letter`, async ({ page }) => {
      await openPatch(page);
      await page.evaluate(() => {
        window.print = () => undefined;
      });
      // A sheet goes when it has been printed: every paper gets one of its own.
      for (const format of ['A4', 'Letter']) {
        await page.getByRole('button', { name: `Print the ${table}` }).click();
        await page.emulateMedia({ media: 'print' });
        await expect(page.locator('.print-sheet')).toBeVisible();
        await expect(page.locator('.panel')).toBeHidden();
        const pdf = await page.pdf({ format, landscape: true });
        expect(pdf.toString('latin1')).toMatch(/\/Count 1\b/);
        await page.emulateMedia({ media: 'screen' });
        await expect(page.locator('.print-sheet')).toHaveCount(0);
      }
    });
  }
});

test('every part of the patch is accessible @portrait', async ({ page }) => {
  await openPatch(page);
  for (const part of ['Inputs', 'Splits', 'Check', 'Swap', 'Pull']) {
    await showPart(page, part);
    const { violations } = await new AxeBuilder({ page }).include('.panel').analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
  }
});
