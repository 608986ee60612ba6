import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { STARTING_KITS } from '../src/layout/catalogue/kits/startingKits.ts';
import type { Layout } from '../src/layout/layout.ts';
import { downloaded, importText } from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const total = (page: Page, name: string) =>
  page.locator('.total > div', { has: page.getByText(name, { exact: true }) }).locator('dd');
const spots = (page: Page) => page.getByRole('list', { name: 'Best spots for the box' });
const runLines = (page: Page) => page.locator('.panel .lines > .line > .line-button');

/** Opens a starting kit, changed, in its Cables section. */
async function openCables(
  page: Page,
  key: string,
  change: (kit: Layout) => Layout = (kit) => kit,
): Promise<void> {
  const kit = STARTING_KITS.find((each) => each.key === key)?.make('cables');
  if (!kit) throw new Error(`no starting kit ${key}`);
  await page.goto('/');
  await appIsOpen(page);
  await importText(page, 'cables.json', JSON.stringify(change(kit)));
  await page.getByRole('button', { name: 'Open it' }).click();
  await page.getByRole('tab', { name: 'Cables' }).click();
  await expect(total(page, 'Runs')).toBeVisible();
}

const metres = async (page: Page, name: string): Promise<number> =>
  Number.parseFloat((await total(page, name).textContent()) ?? '');

test('cables gather as far as one likes, in steps that can be undone @portrait', async ({
  page,
}) => {
  await openCables(page, 'large-kit');
  const lines = await metres(page, 'Lines on the floor');
  expect(await metres(page, 'By the loom')).toBeGreaterThan(0);
  const gathered = page.getByRole('textbox', { name: 'Gathered' });
  await expect(gathered).toHaveValue('50');
  await gathered.fill('0');
  await gathered.press('Enter');
  await expect(total(page, 'By the loom')).toHaveText('0.0 m');
  expect(await metres(page, 'Lines on the floor')).toBeGreaterThan(lines);
  await page.getByRole('button', { name: 'Gathered, more' }).click();
  await expect(gathered).toHaveValue('10');
  await undo(page).click();
  await undo(page).click();
  await expect(gathered).toHaveValue('50');
  await expect(total(page, 'Lines on the floor')).toHaveText(`${lines.toFixed(1)} m`);
});

test('what is missing from the stock is said in counts and lengths, and in the findings', async ({
  page,
}) => {
  await openCables(page, 'four-piece-jazz', (kit) => ({
    ...kit,
    cabling: { ...kit.cabling, stock: [{ length: 5000, count: 1 }] },
  }));
  await expect(total(page, 'Missing')).toHaveText(/\d more of 5 m/);
  await expect(
    runLines(page)
      .getByText(/missing: bring 5 m/)
      .first(),
  ).toBeVisible();
  await expect(page.getByRole('tab', { name: 'Findings 2 to solve' })).toBeVisible();
  await page.getByRole('tab', { name: 'Findings' }).click();
  await expect(page.locator('.panel .line').getByText('Must be solved')).toHaveCount(2);
  const missing = page.getByRole('button', { name: /^5 m cables: \d more needed/ });
  await missing.click();
  const buttons = page.locator('.line-more .buttons button');
  await expect(buttons).toHaveText(['Cables you carry', 'Best spots for the box']);
  await buttons.first().click();
  const carried = page.getByRole('heading', { name: 'Cables carried' });
  await expect(carried).toBeFocused();
  await expect(carried).toBeInViewport();
  // A usual length of which none is carried stands there at 0, and is counted up from there.
  const ten = page.getByRole('textbox', { name: '10 m', exact: true });
  await expect(ten).toHaveValue('0');
  await ten.fill('20');
  await ten.press('Enter');
  await expect(total(page, 'Missing')).toHaveCount(0);
  await expect(runLines(page).first()).toContainText(/m cable, \d+\.\d m spare/);
  await ten.fill('0');
  await ten.press('Enter');
  await expect(ten).toHaveValue('0');
  await page.getByRole('tab', { name: /Findings/ }).click();
  // It is still the one that is shown.
  await buttons.last().click();
  await expect(page.getByRole('heading', { name: 'Where the box stands best' })).toBeFocused();
  await page.getByRole('tab', { name: 'Cables' }).click();
  const count = page.getByRole('textbox', { name: '5 m', exact: true });
  await count.fill('20');
  await count.press('Enter');
  await expect(total(page, 'Joins')).not.toHaveText('0');
  await expect(runLines(page).getByText('5 m + 5 m, joined').first()).toBeVisible();
  await expect(total(page, 'Missing')).toHaveCount(0);
});

test('a count of cables beyond any case says what is allowed, and nothing is lost', async ({
  page,
}) => {
  await openCables(page, 'four-piece-jazz');
  const count = page.getByRole('textbox', { name: '5 m', exact: true });
  const before = await count.inputValue();
  await count.fill('10000');
  await count.press('Enter');
  await expect(page.getByRole('alert')).toContainText('Allowed: 0 to 999');
  await expect(count).toHaveValue(before);
});

test('the best spots for the box are found, drawn, and taken by one tap @portrait', async ({
  page,
}) => {
  await openCables(page, 'large-kit');
  const before = await metres(page, 'Cable laid');
  // From so near that no edge of the deck is in view: what is found comes into view.
  for (let step = 0; step < 4; step += 1) {
    await page.getByRole('button', { name: 'Zoom in' }).click();
  }
  await page.getByRole('button', { name: 'Find the best spots' }).click();
  await expect(spots(page)).toBeVisible();
  await expect(spots(page).locator('.line-note').first()).toContainText('less than now');
  const mark = page.getByRole('button', { name: /^Put the box at spot A/ });
  await mark.click();
  await expect(mark).toHaveCount(0);
  await expect(spots(page).getByText('Here')).toBeVisible();
  expect(await metres(page, 'Cable laid')).toBeLessThan(before);
  await undo(page).click();
  await expect(total(page, 'Cable laid')).toHaveText(`${before.toFixed(1)} m`);
  await page.locator('.choice-option', { hasText: 'Shortest longest run' }).click();
  const single = (await spots(page).locator('.line-note').first().textContent()) ?? '';
  const promised = Number(/Single ways ([\d.]+) m/.exec(single)?.[1]);
  await spots(page).getByRole('button', { name: 'Take spot A' }).click();
  await expect(spots(page).getByText('Here')).toBeVisible();
  const taken = page.getByRole('status').filter({ hasText: 'The box stands at spot A' });
  const [laid, extra] = [await metres(page, 'Cable laid'), await metres(page, 'By the loom')];
  await expect(taken).toContainText(
    `Cable laid: ${laid.toFixed(1)} m, ${extra.toFixed(1)} m of it by the loom`,
  );
  expect(Math.abs(laid - extra - promised)).toBeLessThan(0.16);
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Find the best spots' })).toBeVisible();
});

test('the best spots stand whole on the plan, off all its buttons, where the kit was shown large @portrait', async ({
  page,
}) => {
  await openCables(page, 'large-kit');
  await page.getByRole('button', { name: 'Find the best spots' }).click();
  await expect(spots(page)).toBeVisible();
  const plan = await page.getByRole('application', { name: 'Plan of the deck' }).boundingBox();
  const marks = page.getByRole('button', { name: /^Put the box at spot/ });
  expect(await marks.count()).toBeGreaterThan(1);
  for (const mark of await marks.all()) {
    const box = await mark.boundingBox();
    if (!plan || !box) throw new Error('expected plan and mark on the page');
    expect(box.x).toBeGreaterThanOrEqual(plan.x);
    expect(box.y).toBeGreaterThanOrEqual(plan.y);
    expect(box.x + box.width).toBeLessThanOrEqual(plan.x + plan.width);
    expect(box.y + box.height).toBeLessThanOrEqual(plan.y + plan.height);
    const isOnTop = await mark.evaluate((own) => {
      const { left, top, width, height } = own.getBoundingClientRect();
      const met = [2, width / 2, width - 2].map(
        (x) => document.elementFromPoint(left + x, top + height / 2) === own,
      );
      return met.every(Boolean);
    });
    expect(isOnTop).toBe(true);
  }
});

test('the search for box spots can be stopped, and ends with any change of the kit', async ({
  page,
}) => {
  await openCables(page, 'large-kit', (kit) => ({
    ...kit,
    deck: { ...kit.deck, width: 20_000, depth: 20_000 },
  }));
  await page.getByRole('button', { name: 'Find the best spots' }).click();
  await expect(page.getByRole('progressbar', { name: 'Search for box spots' })).toBeVisible();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('button', { name: 'Find the best spots' })).toBeVisible();
  await page.getByRole('button', { name: 'Find the best spots' }).click();
  await page.getByRole('button', { name: 'For least crossing' }).click();
  await expect(page.getByRole('button', { name: 'Find the best spots' })).toBeVisible();
});

test('inputs are numbered for least crossing by one button, and back', async ({ page }) => {
  await openCables(page, 'large-kit');
  const names = page.locator('.panel .lines .line-name');
  const before = await names.allTextContents();
  await page.getByRole('button', { name: 'For least crossing' }).click();
  await expect(names).not.toHaveText(before);
  await undo(page).click();
  await expect(names).toHaveText(before);
});

test('the box faces any side, and takes fewer inputs than mics with a finding', async ({
  page,
}) => {
  await openCables(page, 'large-kit');
  await page.getByRole('tab', { name: 'Stage' }).click();
  const side = (text: string) => page.locator('.choice-option', { hasText: text });
  await side('Audience').last().click();
  await expect(page.getByRole('textbox', { name: 'Or exactly' })).toHaveValue('90');
  const inputs = page.getByRole('textbox', { name: 'Inputs', exact: true });
  await inputs.fill('4');
  await inputs.press('Enter');
  await inputs.fill('3');
  await inputs.press('Enter');
  await expect(page.getByRole('alert')).toContainText('Allowed: 4 to 24');
  await page.getByRole('tab', { name: 'Findings' }).click();
  await expect(page.getByText('More mics than box inputs')).toBeVisible();
});

test('a run opened far down the list comes into view whole @portrait', async ({ page }) => {
  await openCables(page, 'large-kit');
  await runLines(page).first().click();
  const last = runLines(page).last();
  await last.click();
  const whole = page.locator('.panel .lines > .line.shown');
  await expect(whole).toHaveCount(1);
  await expect(whole.getByRole('rowheader', { name: 'Of it by the loom' })).toBeInViewport();
  await expect(last).toBeInViewport();
});

test('a box inside the kick drum is said, and which runs have no way', async ({ page }) => {
  await openCables(page, 'five-piece-one-rack', (kit) => {
    const kick = kit.pieces.find(({ kind }) => kind === 'kick');
    if (kick?.kind !== 'kick') throw new Error('the kit has a kick');
    const { x, y } = kit.deck.kit;
    return { ...kit, box: { ...kit.box, x: x + kick.x, y: y + kick.y } };
  });
  await expect(page.getByRole('note')).toContainText(/runs? without a free way:/);
  await expect(
    runLines(page)
      .getByText(/^no free way/)
      .first(),
  ).toBeVisible();
  await page.getByRole('tab', { name: 'Findings' }).click();
  await expect(page.getByText('The box stands in something else')).toBeVisible();
});

test('a bundle across the way to the stairs is one thing to cover; stairs on no edge are said', async ({
  page,
}) => {
  await openCables(page, 'five-piece-one-rack', (kit) => ({
    ...kit,
    deck: {
      ...kit.deck,
      stairs: [
        { edge: 'front', offset: 0, width: 2000 },
        { edge: 'back', offset: 9000, width: 900 },
      ],
    },
  }));
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByRole('button', { name: /cables? cross(es)? the way to the stairs/ }).click();
  await expect(page.getByText('Cover it, or move the box to another edge.')).toBeVisible();
  await expect(page.getByText('Stairs stand beyond the end of their edge')).toBeVisible();
});

test('the cable schedule says every part of every length, and what the loom adds', async ({
  page,
}) => {
  await openCables(page, 'large-kit');
  await page.getByRole('tab', { name: 'Patch' }).click();
  const { text } = await downloaded(
    page,
    page.getByRole('button', { name: 'Cable schedule as CSV' }),
  );
  const [header = '', ...rows] = text.trim().split('\r\n');
  expect(header).toContain('Down (m),Over the floor (m)');
  expect(header).toContain('Run (m),By the loom (m),Stock cable (m),To bring (m),Notes');
  expect(rows).toHaveLength(17);
  expect(rows.at(-1)).toContain('Multicore to the stage box');
});

test('a cable without a way is drawn broken, and the legend and its label say so @portrait', async ({
  page,
}) => {
  await openCables(page, 'four-piece-jazz', (kit) => ({
    ...kit,
    box: { ...kit.box, x: kit.deck.kit.x, y: kit.deck.kit.y + 650 },
  }));
  await expect(page.getByText(/^No way for \d+ cables: where they would pass/)).toBeVisible();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(page.getByText(/^No free way for the cable of/).first()).toBeVisible();
});
