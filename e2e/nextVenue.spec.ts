import type { Page } from '@playwright/test';
import { nameOf, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

/** Taps on anything, counted; what is typed is typed. */
function counting(page: Page) {
  let taps = 0;
  return {
    taps: () => taps,
    tap: async (role: 'button' | 'checkbox' | 'radio', name: string | RegExp) => {
      taps += 1;
      const target = page.getByRole(role, { name, exact: typeof name === 'string' }).first();
      await (role === 'button' ? target.click() : target.check({ force: true }));
    },
  };
}

async function type(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text);
}

test('from a signed layout to the next venue in six taps: what changed, and the kit fits @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await page.locator('[data-sign-off]').click();
  await page.getByRole('button', { name: 'All fine' }).click();
  await page.getByRole('button', { name: 'I agree' }).click();
  await page.getByRole('button', { name: 'Back to the plan' }).click();

  const { tap, taps } = counting(page);
  await tap('button', 'Pages');
  await tap('button', /^Next venue/);
  await expect(page.getByText(/They are signed off, and stay so/)).toBeVisible();
  await type(page, 'Name of the layout', 'Second night');
  await type(page, 'Name of the venue', 'Barn');
  await type(page, 'Date', '2031-05-18');
  await type(page, 'Temperature, °C', '6');
  await type(page, 'Deck width, mm', '3100');
  await type(page, 'Deck depth, mm', '2200');
  await type(page, '5 m', '1');
  await type(page, '3 m', '0');
  await tap('checkbox', "Player's left");
  await tap('radio', 'Back');
  await tap('button', 'Start there');

  await expect(page.getByRole('heading', { level: 1, name: 'What changed' })).toBeVisible();
  await expect(page.getByText(/over the edge by \d+ mm/).first()).toBeVisible();
  await expect(page.getByText(/From 34\d\.\d to 33\d\.\d m\/s/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Cables now too short: / })).toBeVisible();
  await tap('button', /^Shift the kit/);
  expect(taps()).toBeLessThanOrEqual(6);
  await expect(page.getByText('The whole kit rests on the deck.')).toBeVisible();
  await expect(page.getByText(/over the edge by/)).toHaveCount(0);

  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await expect(nameOf(page)).toContainText('Second night');
  await expect(page.locator('[data-sign-off]')).toHaveAttribute('data-sign-off', 'holds');
  await page.getByRole('button', { name: 'Layouts' }).click();
  await expect(page.locator('.layout-name').getByText('Second night')).toBeVisible();
  await expect(page.locator('.layout-name').getByText('Five-piece, one rack tom')).toBeVisible();
});

test('what can’t be used is named at its field, and nothing is lost', async ({ page }) => {
  await startLayout(page);
  await page.goto(`${page.url()}/next-venue`);
  await expect(page.getByText(/They are not signed off/)).toBeVisible();
  await type(page, 'Name of the layout', ' ');
  await type(page, 'Deck width, mm', 'wide');
  await type(page, 'Humidity, %', '140');
  await page.getByRole('button', { name: 'Start there' }).click();
  await expect(page.getByText(/“wide” can't be read/)).toBeVisible();
  await expect(page.getByText(/Allowed: 0 to 100 %/)).toBeVisible();
  await expect(page.getByText(/A name is needed/)).toBeVisible();
  await expect(page.getByLabel('Deck width, mm')).toHaveValue('wide');
  await type(page, 'Name of the layout', 'Small deck');
  await type(page, 'Deck width, mm', '1200');
  await type(page, 'Humidity, %', '50');
  await page.getByRole('button', { name: 'Start there' }).click();
  await expect(page.getByText(/No shift and no turn makes the whole kit fit/)).toBeVisible();
});

test('a length of which none was carried is there to be counted at the next venue', async ({
  page,
}) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Cables' }).click();
  const ten = page.getByRole('textbox', { name: '10 m', exact: true });
  await ten.fill('0');
  await ten.press('Enter');
  await page.goto(`${page.url()}/next-venue`);
  await expect(ten).toHaveValue('0');
  await type(page, 'Name of the layout', 'With long ones');
  await ten.fill('4');
  await page.getByRole('button', { name: 'Start there' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('What changed');
  await page.goto(page.url().replace(/\/changed$/, ''));
  await expect(nameOf(page)).toContainText('With long ones');
  await page.getByRole('tab', { name: 'Cables' }).click();
  await expect(ten).toHaveValue('4');
});

test('a layout that was not started for a next venue says so, and leads on', async ({ page }) => {
  await startLayout(page);
  await page.goto(`${page.url()}/changed`);
  await expect(page.getByText(/was not started for a next venue/)).toBeVisible();
  await page.getByRole('button', { name: 'History', exact: true }).click();
  await expect(page).toHaveURL(/\/history$/);
});

test('what was filled in is there again after Back or a look at the plan, and gone once the venue was started', async ({
  page,
}) => {
  await startLayout(page);
  const openForm = async () => {
    await page.getByRole('button', { name: 'Pages' }).click();
    await page.getByRole('button', { name: /^Next venue/ }).click();
  };
  const venue = page.getByLabel('Name of the venue', { exact: true });
  const width = page.getByLabel('Deck width, mm', { exact: true });
  await openForm();
  await type(page, 'Name of the venue', 'Barn');
  await type(page, 'Deck width, mm', '4321');
  await page.goBack();
  await expect(venue).toHaveCount(0);
  await page.goForward();
  await expect(venue).toHaveValue('Barn');
  await expect(width).toHaveValue('4321');
  await page.getByRole('button', { name: 'Start there' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'What changed' })).toBeVisible();
  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await openForm();
  await expect(venue).toHaveValue('');
});
