import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { downloaded, importText, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

async function openSetUp(page: Page): Promise<void> {
  await startLayout(page);
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Set up/ }).click();
  await expect(title(page)).toBeVisible();
}

const card = (page: Page) => page.locator('.step-card');
const title = (page: Page) => card(page).getByRole('heading', { level: 2 });
const lines = (page: Page) => card(page).locator('.step-lines li');
const done = (page: Page) => card(page).getByRole('button', { name: 'Done', exact: true });
const progress = (page: Page) => page.locator('.set-up-progress p');

test('the kit is placed step by step, and a reload goes on where it was @portrait', async ({
  page,
}) => {
  await openSetUp(page);
  await expect(title(page)).toHaveText(/deck/i);
  await done(page).dblclick();
  await expect(title(page)).toHaveText(/Throne/);
  await expect(progress(page)).toHaveText(/^1 of \d+ done$/);
  await expect(lines(page).first()).toHaveText(
    /^Mark its middle: \d+ mm from the left edge, \d+ mm/,
  );
  await page.waitForTimeout(500);
  await done(page).click();
  await expect(title(page)).toHaveText(/Kick/);
  await expect(lines(page)).toContainText([
    /^Front head: \d+ mm from the left edge/,
    /from the throne mark/,
  ]);
  await expect(progress(page)).toHaveText(/^2 of \d+ done$/);

  await card(page).getByRole('button', { name: 'Skip' }).click();
  await expect(title(page)).toHaveText(/pedal/i);
  await card(page).getByRole('button', { name: 'Back' }).click();
  await expect(title(page)).toHaveText(/Kick/);

  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await expect(title(page)).toHaveText(/Kick/);
  await expect(progress(page)).toHaveText(/^2 of \d+ done$/);

  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id }) => id)).toEqual([]);
});

test('steps are ticked in the list too, and all ticks come off when asked twice', async ({
  page,
}) => {
  await openSetUp(page);
  const list = page.getByRole('list', { name: 'All steps' });
  await list
    .getByRole('button', { name: /Snare$/ })
    .first()
    .click();
  await expect(title(page)).toHaveText(/Snare/);
  await list.getByLabel(/^Done: Snare$/).check();
  await expect(progress(page)).toHaveText(/^1 of/);
  await expect(card(page).getByRole('button', { name: 'Not done' })).toBeVisible();

  await page.getByRole('button', { name: 'Start again' }).click();
  await page.getByRole('button', { name: 'Keep them' }).click();
  await expect(progress(page)).toHaveText(/^1 of/);
  await page.getByRole('button', { name: 'Start again' }).click();
  await page.getByRole('button', { name: 'Take all ticks off' }).click();
  await expect(progress(page)).toHaveText(/^0 of/);
  await expect(title(page)).toHaveText(/deck/i);
});

test('a step says what is open about its thing, and the head leads to what must be solved @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  layout.deck.depth -= 500;
  await page.getByRole('button', { name: 'Layouts' }).click();
  await importText(page, 'edge.json', JSON.stringify({ ...layout, name: 'Over the edge' }));
  await page.locator('.layout-name').getByText('Over the edge').click();
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Set up/ }).click();
  const toSolve = page.getByRole('button', { name: '2 findings must be solved' });
  await expect(toSolve).toBeVisible();
  const open = card(page).getByText("Throne is over the deck's edge");
  await expect(open).toHaveCount(0);
  await card(page).getByRole('button', { name: 'Skip' }).click();
  await expect(title(page)).toHaveText(/Throne/);
  await expect(open).toBeVisible();
  await expect(
    page
      .getByRole('list', { name: 'All steps' })
      .getByRole('button', { name: /Throne.*must be solved/ }),
  ).toBeVisible();
  await toSolve.click();
  await expect(page.getByRole('tab', { name: /Findings/ })).toHaveAttribute(
    'aria-selected',
    'true',
  );
  await expect(page.getByText("Throne is over the deck's edge").first()).toBeVisible();
});

test('what is moved after it was ticked is to be set down again, until the move is undone', async ({
  page,
}) => {
  await openSetUp(page);
  const list = page.getByRole('list', { name: 'All steps' });
  const snare = list.getByLabel(/^Done: Snare$/);
  await snare.check();
  await list.getByLabel(/^Done: Throne$/).check();
  await expect(progress(page)).toHaveText(/^2 of/);
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.locator('.line-name').getByText('Snare', { exact: true }).click();
  const height = page.getByLabel('Height of the head', { exact: true });
  await height.fill('733');
  await height.press('Enter');
  // Said where the step was made, before anybody opens the list again.
  const news = page.locator('.tick-news');
  await expect(news).toContainText('1 set-up tick came off');
  await expect(news).toBeInViewport();
  const backToList = async () => {
    await page.getByRole('button', { name: 'Pages', exact: true }).click();
    await page.getByRole('button', { name: /^Set up/ }).click();
  };
  await backToList();
  await expect(snare).not.toBeChecked();
  await expect(progress(page)).toHaveText(/^1 of/);
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(news).toHaveText('');
  await backToList();
  await expect(snare).toBeChecked();
  await expect(progress(page)).toHaveText(/^2 of/);
});

test('the list is printed', async ({ page }) => {
  await page.addInitScript(() => {
    window.print = () => document.body.setAttribute('data-printing', 'yes');
  });
  await openSetUp(page);
  await page.getByRole('button', { name: 'Print the list' }).click();
  await expect(page.locator('body[data-printing]')).toHaveCount(1);
  expect(await page.locator('.printed-page').count()).toBeGreaterThan(0);
});
