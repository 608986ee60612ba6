import type { Page } from '@playwright/test';
import { downloaded, importText, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

interface MicJson {
  name: string;
  micClass: string;
  mount: { kind: string } & Record<string, unknown>;
}

/** The starting kit with a mic sunk into its drum and one that is far over its stand, both off everything that moves. */
async function openWrong(page: Page): Promise<void> {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout: { mics: MicJson[] } = JSON.parse(file.text);
  const held = (kind: string) => layout.mics.find(({ mount }) => mount.kind === kind);
  const [sunk, high] = [held('clip'), held('stand')];
  if (!sunk || !high) throw new Error('expected a mic on a clip and one on a stand');
  Object.assign(sunk, {
    name: 'Sunk mic',
    mount: { ...sunk.mount, height: 5, pitch: 20, reach: 40 },
  });
  Object.assign(high, {
    name: 'High mic',
    micClass: 'kick-dynamic',
    mount: {
      ...high.mount,
      stand: 'tripodLow',
      mast: null,
      tip: { x: 1000, y: 250, z: 1600 },
      base: { x: 1000, y: -300 },
    },
  });
  await page.getByRole('button', { name: 'Layouts' }).click();
  await importText(page, 'wrong.json', JSON.stringify({ ...layout, name: 'Two wrong' }));
  await page.locator('.layout-name').getByText('Two wrong').click();
}

const line = (page: Page, name: string) =>
  page
    .locator('.panel-view .line')
    .filter({ has: page.locator('.line-name').getByText(name, { exact: true }) });

test('a mic that cannot stay is one red line at the top that says why and what to do, and its room is no figure @portrait', async ({
  page,
}) => {
  await openWrong(page);
  await page.getByRole('tab', { name: /Findings/ }).click();
  const names = page.locator('.panel-view .line-name');
  await expect(names.nth(0)).toHaveText('Sunk mic');
  await expect(names.nth(1)).toHaveText('High mic');
  await expect(names.getByText(/goes into|out of its stand's reach|tips over/)).toHaveCount(0);
  const [sunk, high] = [line(page, 'Sunk mic'), line(page, 'High mic')];
  await expect(sunk).toContainText(/In the way · in .+, \d+ mm deep/);
  await expect(high).toContainText(/Won't hold · out of reach by \d+ mm/);
  for (const row of [sunk, high]) {
    await expect(row.locator('.line-number')).toHaveCount(0);
    await expect(row.locator('.verdict-mark.struck')).toHaveCount(1);
  }
  await expect(page.locator('.tally-cell').filter({ hasText: "Won't hold" })).toContainText('1');
  await high.getByRole('button').first().click();
  await expect(high.getByText("High mic is out of its stand's reach", { exact: true })).toHaveCount(
    1,
  );
  await expect(high.locator('.next').first()).toBeVisible();
});

test('its card, its line among the mics and the news say so too, and none calls it clear', async ({
  page,
}) => {
  await openWrong(page);
  await page.getByRole('tab', { name: 'Mics' }).click();
  for (const [name, word, why] of [
    ['Sunk mic', 'In the way', /in .+, \d+ mm deep/],
    ['High mic', "Won't hold", /out of reach by \d+ mm/],
  ] as const) {
    await expect(line(page, name)).toContainText(word);
    await expect(line(page, name).locator('.verdict-mark.clear')).toHaveCount(0);
    await line(page, name).getByRole('button').click();
    const card = page.getByRole('region', { name: 'Clearance' });
    await expect(card.locator('.verdict-line')).toContainText(word);
    await expect(card.locator('.verdict-line')).toContainText(why);
    await expect(card.locator('.verdict-number')).toHaveCount(0);
    await expect(card).toContainText(/From what moves: \d+ mm clear \(/);
    await expect(page.locator('.verdict-kept')).toContainText(word);
    await expect(page.getByText(/goes into|out of its stand's reach/)).toHaveCount(1);
    await page.getByRole('button', { name: 'Back to the list' }).click();
  }
});

test('what would clear it stays inside its frame however long it is said, and the stand of a mic points down by as much as its clip would', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout: { mics: MicJson[] } = JSON.parse(file.text);
  const mic = layout.mics.find(({ name }) => name.startsWith('Overhead'));
  if (!mic) throw new Error('expected an overhead');
  mic.mount = { ...mic.mount, tip: { x: 0, y: 0, z: 1250 }, base: { x: -500, y: -400 } };
  await page.getByRole('button', { name: 'Layouts' }).click();
  await importText(page, 'head.json', JSON.stringify({ ...layout, name: 'In the head' }));
  await page.locator('.layout-name').getByText('In the head').click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await page.getByRole('button', { name: /^Clear all mics/ }).click();
  const offer = page.getByRole('region', { name: 'Clear all mics' });
  await expect(offer).toContainText(/in the player's head, \d+ mm deep/, { timeout: 80_000 });
  expect(await offer.evaluate((box) => box.scrollWidth - box.clientWidth)).toBeLessThanOrEqual(0);
  await offer.getByRole('button', { name: 'Leave it' }).click();
  await page.getByRole('tab', { name: 'Mics' }).click();
  await line(page, mic.name).getByRole('button').click();
  const down = page.getByLabel('Points down by', { exact: true });
  await expect(down).toHaveValue('90');
  await down.fill('60');
  await down.press('Enter');
  const after = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const kept: { mics: MicJson[] } = JSON.parse(after.text);
  expect(kept.mics.find(({ name }) => name === mic.name)?.mount).toMatchObject({ pitch: -60 });
});
