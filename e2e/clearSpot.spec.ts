import type { Page } from '@playwright/test';
import { cutting, overHead } from '../tests/report/cantStaySamples.ts';
import { downloaded, importText, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

/** Where a clip is, as its fields show it: whichever of them a clear spot changes. */
const place = async (page: Page): Promise<string> => {
  const fields = ['Round the rim', 'Points down by', 'Above the head', 'Inside the rim'];
  const values = fields.map((name) => page.getByLabel(name, { exact: true }).inputValue());
  return (await Promise.all(values)).join(' ');
};
const card = (page: Page) => page.getByRole('region', { name: 'Clearance' });
const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const tally = (page: Page) => page.getByLabel('Mics by verdict');
const find = (page: Page) => page.getByRole('button', { name: 'Find a clear spot' });
const take = (page: Page) => page.getByRole('button', { name: 'Take it' });

async function startWithMargin(page: Page, margin: string): Promise<void> {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Player' }).click();
  await page.getByLabel('Wanted clearance', { exact: true }).fill(margin);
  await page.getByLabel('Wanted clearance', { exact: true }).press('Enter');
}

async function openMic(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText(name, { exact: true }).click();
}

/** A floor tom's clip that is a few mm nearer than the margin, with its details open. */
async function openTightMic(page: Page): Promise<void> {
  await startWithMargin(page, '66');
  await openMic(page, 'Floor tom 1');
  await expect(card(page)).toContainText('Tight');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
}

test('a clear spot is shown before it is taken, left without a trace, and taken as one step', async ({
  page,
}) => {
  await openTightMic(page);
  const before = await place(page);
  await find(page).click();
  const offer = page.getByRole('region', { name: /^Clear spot of Floor tom 1/ });
  await expect(offer).toContainText('There is a clear spot', { timeout: 60_000 });
  await expect(offer).toContainText(/Just clear: \d mm to spare/);
  await expect(offer).toContainText(
    /Floor tom 1: (\d+\.\d\sdB (quieter|louder)|as loud as now), isolation .*\(direct sound, an estimate\)/,
  );
  // First what a hand does, then the numbers.
  await expect(offer).toContainText(/To do: (Turn|Set|Push|Draw) it .*\./);
  await expect(offer.locator('tbody tr').first()).toContainText('mm');
  await expect(card(page)).toContainText('Clear');
  await expect(card(page)).toContainText('If you take it');
  await expect(card(page)).toContainText(/Where it is nearest: .* \d+ mm above the deck/);
  await expect(page.locator('.plan-legends')).toContainText(/with its tip here, \d+ mm high/, {
    timeout: 30_000,
  });
  // Scrolled away it says in short that it is not so yet.
  const kept = page.locator('.verdict-kept');
  await expect(kept).toContainText(/If taken:.*Clear/);
  await expect.poll(() => place(page)).not.toBe(before);
  await expect(undo(page)).toHaveAccessibleName('Undo: Margin');
  await offer.getByRole('button', { name: 'Leave it' }).click();
  await expect(offer).toHaveCount(0);
  await expect(page.getByText('If you take it')).toHaveCount(0);
  await expect(kept).not.toContainText('If taken');
  await expect.poll(() => place(page)).toBe(before);
  await find(page).click();
  await take(page).click({ timeout: 60_000 });
  await expect(card(page)).toContainText('Clear');
  await expect(find(page)).toHaveCount(0);
  await expect(undo(page)).toHaveAccessibleName(/^Undo: Clear spot of Floor tom 1/);
  await undo(page).click();
  await expect.poll(() => place(page)).toBe(before);
  await expect(card(page)).toContainText('Tight');
});

test('an offer that is walked away from is left, and never stored', async ({ page }) => {
  await openTightMic(page);
  const before = await place(page);
  await find(page).click();
  await expect(take(page)).toBeVisible({ timeout: 60_000 });
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await openMic(page, 'Floor tom 1');
  await expect.poll(() => place(page)).toBe(before);
  await find(page).click();
  await expect(take(page)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(tally(page)).toContainText('Tight1');
});

test('everything in the way is cleared in one step, with what moved and what is left @portrait', async ({
  page,
}) => {
  await startWithMargin(page, '72');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await page.getByRole('button', { name: 'Clear all mics: 2 tight' }).click();
  const offer = page.getByRole('region', { name: 'Clear all mics' });
  await expect(offer).toContainText('2 mics would move', { timeout: 80_000 });
  await expect(offer.getByRole('listitem').first()).toContainText(
    /Floor tom 1.*→ Clear, 72 mm, \d mm to spare\. (Turn|Set|Push|Draw) it/,
  );
  // What a hand does stands there; its numbers are a tap away.
  await expect(offer.getByText(/direct sound, an estimate/)).toHaveCount(0);
  await offer.locator('summary').filter({ hasText: 'of Floor tom 1 mic' }).click();
  await expect(offer.getByText(/direct sound, an estimate/)).toHaveCount(1);
  await expect(page.getByText('If you take them all', { exact: true })).toBeVisible();
  await expect(page.getByText('If you take it', { exact: true })).toHaveCount(0);
  await offer.getByRole('button', { name: 'Take them all' }).click();
  await expect(tally(page)).toContainText('Clear8');
  await expect(undo(page)).toHaveAccessibleName('Undo: Clear all mics');
  await undo(page).click();
  await expect(tally(page)).toContainText('Tight2');
});

test('the plan says itself that an offer is only shown, and has its buttons while the panel has none in view @portrait', async ({
  page,
}) => {
  await startWithMargin(page, '72');
  const sign = page.locator('.plan-offer');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(sign).toHaveCount(0);
  await page.getByRole('button', { name: 'Clear all mics: 2 tight' }).click();
  await expect(sign).toContainText('Only shown: nothing is changed yet', { timeout: 80_000 });
  await expect(sign).toContainText('Broken line: where it is now');
  await expect(sign.getByRole('button')).toHaveCount(0);
  const { width, height } = page.viewportSize() ?? { width: 0, height: 0 };
  await page.setViewportSize({ width, height: 0.75 * height });
  await page.locator('.lines > li').last().scrollIntoViewIfNeeded();
  await expect(sign.getByRole('button', { name: 'Take them all' })).toBeVisible();
  await sign.getByRole('button', { name: 'Leave it' }).click();
  await expect(sign).toHaveCount(0);
  await expect(tally(page)).toContainText('Tight2');
});

test('an offered spot has solved nothing yet: the badge counts the layout as it is', async ({
  page,
}) => {
  await startLayout(page);
  await openMic(page, 'Rack tom');
  await page.getByLabel('Round the rim', { exact: true }).fill('270');
  await page.getByLabel('Round the rim', { exact: true }).press('Enter');
  await page.getByLabel('Inside the rim', { exact: true }).fill('60');
  await page.getByLabel('Inside the rim', { exact: true }).press('Enter');
  const toSolve = page.getByRole('tab', { name: 'Findings 1 to solve' });
  await toSolve.click();
  await expect(tally(page)).toContainText('Struck1');
  await page.getByRole('button', { name: 'Clear all mics: 1 struck' }).click();
  const takeAll = page.getByRole('button', { name: /^Take (it|them all)/ });
  await expect(takeAll).toBeVisible({ timeout: 80_000 });
  await expect(page.getByText('If you take it')).toBeVisible();
  await expect(tally(page)).toContainText('Struck0');
  await expect(toSolve).toBeVisible();
  await takeAll.click();
  await expect(page.getByText('If you take it')).toHaveCount(0);
  await expect(page.getByRole('tab', { name: 'Findings', exact: true })).toBeVisible();
});

test('where nothing is within reach it is said, with what to try', async ({ page }) => {
  await startWithMargin(page, '300');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await page.getByRole('button', { name: /^Floor tom 1 mic/ }).click();
  await find(page).click();
  const none = page.getByRole('region', { name: /^Clear spot of Floor tom 1/ });
  await expect(none).toContainText(/None (within reach|found)/, { timeout: 80_000 });
  await expect(none).toContainText('Another mount');
  await expect(none).toContainText('smaller margin');
});

test('a search that takes long shows how far it is and can be stopped', async ({ page }) => {
  // One mic is told in about a second; all of a kit take as many as there are.
  await startWithMargin(page, '300');
  await page.getByRole('tab', { name: /Findings/ }).click();
  const findAll = page.getByRole('button', { name: /^Clear all mics: \d+ tight/ });
  await findAll.click();
  await expect(page.getByRole('progressbar', { name: 'Search for clear spots' })).toBeVisible();
  await expect(page.getByText(/Looking for clear spots: \d+ of \d+ mics/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  await expect(findAll).toBeVisible();
});

test('all are looked for while one is on offer: the one is left, and nothing stays shown that cannot be taken', async ({
  page,
}) => {
  await openTightMic(page);
  await find(page).click();
  await expect(take(page)).toBeVisible({ timeout: 60_000 });
  await page.getByRole('tab', { name: /^Findings/ }).click();
  await page.locator('.lines').getByText('Floor tom 1 mic').click();
  await find(page).click();
  await expect(take(page)).toBeVisible({ timeout: 60_000 });
  // The figures are those of the offer; what would be cleared is counted without it, and says so.
  await page.getByRole('button', { name: 'Clear all mics: 1 tight as it is now' }).click();
  const all = page.getByRole('region', { name: 'Clear all mics' });
  await expect(all).toContainText('1 mic would move', { timeout: 60_000 });
  await expect(take(page)).toHaveCount(1);
  await all.getByRole('button', { name: 'Leave it' }).click();
  await expect(page.getByText('If you take it')).toHaveCount(0);
});

test('a mic that stands in its drum is led out of it, from its finding and from its own panel @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: /Export/ }).first());
  const layout = JSON.parse(file.text);
  const mic = layout.mics.find((one: { mount: { kind: string } }) => one.mount.kind === 'clip');
  mic.name = 'Sunk mic';
  mic.mount = { ...mic.mount, height: 5, pitch: 20, reach: 40 };
  await page.getByRole('button', { name: 'Layouts' }).click();
  await importText(page, 'sunk.json', JSON.stringify({ ...layout, name: 'With a sunk mic' }));
  await page.locator('.layout-name').getByText('With a sunk mic').click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  const finding = page.getByRole('button', { name: /^Sunk mic / });
  await expect(finding).toContainText(/In the way · in .*, \d+ mm deep/);
  await finding.click();
  await find(page).click();
  await expect(take(page)).toBeVisible({ timeout: 60_000 });
  // What is only offered does not send its own line away.
  await expect(finding).toHaveAttribute('aria-expanded', 'true');
  await expect(page.getByRole('region', { name: /^Clear spot of Sunk mic/ })).toContainText(
    /Now In the way, .*; there Clear, /,
  );
  await page.getByRole('button', { name: 'Leave it' }).click();
  await openMic(page, 'Sunk mic');
  await expect(card(page)).toContainText('In the way');
  await find(page).click();
  await take(page).click({ timeout: 60_000 });
  await expect(card(page)).not.toContainText('In the way');
  await expect(card(page)).toContainText('Clear');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(finding).toContainText('Clear');
});

/** The five-piece with its first overhead hung straight over the player's head, off all that moves, its tip so high over the deck, mm. */
async function openOverHead(page: Page, z: number): Promise<void> {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: /Export/ }).first());
  const [hung, id] = overHead(JSON.parse(file.text), z);
  const mics = hung.mics.map((mic) => (mic.id === id ? { ...mic, name: 'Hung mic' } : mic));
  await page.getByRole('button', { name: 'Layouts' }).click();
  const text = JSON.stringify({ ...hung, mics, name: 'Over the head' });
  await importText(page, 'head.json', text);
  await page.locator('.layout-name').getByText('Over the head').click();
}

test('a mic near the player is led away from there, alone and with all that are in the way @portrait', async ({
  page,
}) => {
  await openOverHead(page, 1440);
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(tally(page)).toContainText('Near the player1');
  const finding = page.getByRole('button', { name: /^Hung mic (Near|Clear)/ });
  await expect(finding).toContainText(/Near the player · .* from the player's head/);
  await finding.click();
  await find(page).click();
  const offer = page.getByRole('region', { name: /^Clear spot of Hung mic/ });
  await expect(offer).toContainText(/Now Near the player, .* head; there Clear, /, {
    timeout: 60_000,
  });
  await expect(offer).toContainText(
    /At least 50 mm from the player; from what moves \d+ mm to spare/,
  );
  await page.getByRole('button', { name: 'Leave it' }).click();
  await page.getByRole('button', { name: 'Clear all mics: 1 near the player' }).click();
  const all = page.getByRole('region', { name: 'Clear all mics' });
  await expect(all).toContainText(
    /Hung mic: Near the player.*→ Clear, .* at least 50 mm from the player/,
    {
      timeout: 60_000,
    },
  );
  await take(page).click();
  await expect(tally(page)).not.toContainText('Near the player');
  await expect(finding).toContainText('Clear');
  await openMic(page, 'Hung mic');
  await expect(card(page)).not.toContainText('Near the player');
  await expect(find(page)).toHaveCount(0);
});

test('what was found is shown when a long search is ended early, and each mic that stays says what is next', async ({
  page,
}) => {
  await startWithMargin(page, '200');
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(page.getByText(/^Of all findings: \d+ to look at$/)).toBeVisible();
  await page.getByRole('button', { name: /^Clear all mics: \d+ tight/ }).click();
  await expect(page.getByText(/\d of \d mics done, .* with a spot\. Now .*mic…/)).toBeVisible({
    timeout: 60_000,
  });
  const enough = page.getByRole('button', { name: /^Stop here and show/ });
  const offer = page.getByRole('region', { name: 'Clear all mics' });
  await enough.or(offer).first().click({ timeout: 90_000 });
  await expect(offer).toContainText('would move', { timeout: 60_000 });
  const left = offer.getByRole('list', { name: 'Not cleared' }).getByRole('listitem');
  await expect(
    left.filter({ hasText: 'The most room seen within its reach is' }).first(),
  ).toContainText(
    /Tight, \d+\smm: none (found yet|within reach)\. .*wanted clearance of \d+\smm or less.*Hold it by a stand/,
  );
  await expect(left.filter({ hasText: 'not looked for' }).first()).toContainText('Look again');
});

test('two mics that meet are both counted as in the way, and one of them makes room for the other', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: /Export/ }).first());
  const { layout } = cutting(JSON.parse(file.text));
  await page.getByRole('button', { name: 'Layouts' }).click();
  await importText(page, 'meet.json', JSON.stringify({ ...layout, name: 'Two that meet' }));
  await page.locator('.layout-name').getByText('Two that meet').click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(tally(page)).toContainText('In the way2');
  await page.getByRole('button', { name: 'Clear all mics: 2 in the way' }).click();
  const offer = page.getByRole('region', { name: 'Clear all mics' });
  await expect(offer).toContainText('1 mic would move', { timeout: 80_000 });
  await expect(offer).toContainText(/In the way, against .*→ Clear/);
  await expect(offer.getByRole('list', { name: 'Not cleared' })).toHaveCount(0);
  await expect(tally(page)).not.toContainText('In the way');
  await take(page).click();
  await expect(tally(page)).not.toContainText('In the way');
  await expect(page.getByRole('button', { name: /^Clear all mics/ })).toHaveCount(0);
});
