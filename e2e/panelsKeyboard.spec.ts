import type { Page } from '@playwright/test';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

/** Presses Tab until a control of that accessible name has the focus. */
async function tabTo(page: Page, name: RegExp, key = 'Tab'): Promise<void> {
  for (let presses = 0; presses < 120; presses += 1) {
    const focused = page.locator(':focus');
    if ((await focused.count()) > 0) {
      const label = await focused.evaluate((element) => {
        const labels = element instanceof HTMLInputElement ? element.labels?.[0] : undefined;
        const text = element.getAttribute('aria-label') ?? labels?.textContent;
        return (text ?? element.textContent ?? '').trim();
      });
      if (name.test(label)) return;
    }
    await page.keyboard.press(key);
  }
  throw new Error(`the Tab key never came to ${name}`);
}

test('by keyboard alone: start, read, adjust, undo, leave', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  await tabTo(page, /Five-piece, one rack tom/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Five-piece');

  await tabTo(page, /^Findings/);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'Mics' })).toBeFocused();
  await expect(page.getByRole('tab', { name: 'Mics' })).toHaveAttribute('aria-selected', 'true');

  await tabTo(page, /^Rack tom/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 2, name: 'Rack tom' })).toBeFocused();
  await tabTo(page, /^Round the rim$/);
  const angle = page.getByLabel('Round the rim', { exact: true });
  const before = Number(await angle.inputValue());
  await page.keyboard.press('ArrowUp');
  await expect(angle).toHaveValue(String(before + 5));
  await page.keyboard.type('270');
  await page.keyboard.press('Enter');
  await expect(angle).toHaveValue('270');
  await page.keyboard.press('Control+z');
  await expect(angle).toHaveValue(String(before + 5));
  await page.keyboard.press('Control+Shift+Z');
  await expect(angle).toHaveValue('270');

  await tabTo(page, /^Layouts$/, 'Shift+Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Layouts', exact: true })).toBeVisible();
});

test('a dialog keeps the focus, closes with Escape and gives the focus back', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  await page.getByRole('button', { name: /Five-piece, one rack tom/ }).click();
  const rename = page.getByRole('button', { name: /, rename$/ });
  await rename.focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  for (let presses = 0; presses < 8; presses += 1) {
    await page.keyboard.press('Tab');
    const outside = await page.evaluate(() =>
      document.activeElement?.closest('dialog') === null && document.hasFocus()
        ? document.activeElement !== document.body
        : false,
    );
    expect(outside).toBe(false);
  }
  await page.keyboard.press('Escape');
  await expect(dialog).toHaveCount(0);
  await expect(rename).toBeFocused();
});

test('the focus is always seen', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  await page.getByRole('button', { name: /Five-piece, one rack tom/ }).click();
  for (let presses = 0; presses < 12; presses += 1) {
    await page.keyboard.press('Tab');
    const seen = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return true;
      const frame = element.closest('.choice-option, .stepper-value') ?? element;
      const marks = [element, frame, frame.querySelector('span')].filter((each) => each !== null);
      return marks.some((mark) => {
        const style = getComputedStyle(mark);
        return style.outlineStyle !== 'none' && Number.parseFloat(style.outlineWidth) >= 2;
      });
    });
    expect(seen).toBe(true);
  }
});

test('a screen that comes takes the focus that went with the one before', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  const heading = page.getByRole('heading', { level: 1 });
  const go = async (name: string | RegExp) => {
    await page.getByRole('button', { name }).first().focus();
    await page.keyboard.press('Enter');
  };
  await go(/Five-piece, one rack tom/);
  await expect(heading).toContainText('Five-piece');
  await expect(heading).toBeFocused();
  await go('Not signed off');
  await go('All fine');
  await go('I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeFocused();
  await go('Back to the plan');
  await expect(heading).toContainText('Five-piece');
  await expect(heading).toBeFocused();
  await go(/^Undo: Sign-off/);
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeFocused();
  await expect(page.getByRole('button', { name: 'Undo', exact: true })).toBeDisabled();
  await go('Layouts');
  await expect(heading).toHaveText('Strokespace');
  await expect(heading).toBeFocused();
});
