import type { Page } from '@playwright/test';
import { palettes } from '../src/editor/palette.ts';
import { pixelsOf } from './support/canvas.ts';
import { downloaded, importText, savedSign, startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const state = (page: Page) => page.locator('[data-sign-off]');
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();

/** Opens the page, says that all is fine and agrees: three taps. */
async function signAllFine(page: Page): Promise<void> {
  await state(page).click();
  await press(page, 'All fine');
  await press(page, 'I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeVisible();
}

async function nudgeMic(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText(name, { exact: true }).click();
  const field = page.getByLabel('Round the rim', { exact: true });
  await field.fill(String(Number(await field.inputValue()) + 30));
  await field.press('Enter');
}

test('all fine takes three taps, survives a reload, and says what it proves and what not @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await expect(state(page)).toHaveText('Not signed off');
  await signAllFine(page);
  await expect(page.getByText(/What it does not/)).toBeVisible();
  await expect(page.getByText(/no signature in law/)).toBeVisible();
  await press(page, 'Back to the plan');
  await expect(state(page)).toHaveText('Signed off');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await expect(state(page)).toHaveText('Signed off');
});

test('what can’t be saved is not signed: it is said, nothing is lost, and with room again one tap signs it @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await page.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...given) {
      if ('hasRoom' in window) return add.apply(this, given);
      throw new DOMException('No room left.', 'QuotaExceededError');
    };
  });
  await nudgeMic(page, 'Rack tom');
  await expect(savedSign(page)).toHaveText('Not saved: the storage is full');
  await state(page).click();
  await press(page, 'All fine');
  await press(page, 'I agree');
  await expect(page.getByText('Signing failed: the layout could not be saved.')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'I agree' })).toBeEnabled();

  await page.evaluate(() => Object.assign(window, { hasRoom: true }));
  await press(page, 'I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeVisible();
  await press(page, 'Back to the plan');
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await expect(state(page)).toHaveText('Signed off');
});

test('after a change it is stale, lists what moved, and only the changed mic is asked about', async ({
  page,
}) => {
  await startLayout(page);
  await signAllFine(page);
  await press(page, 'Back to the plan');

  // Names, units and the box change nothing of what was signed.
  await page.getByRole('tab', { name: 'Cables' }).click();
  await expect(state(page)).toHaveText('Signed off');

  await nudgeMic(page, 'Rack tom');
  await expect(state(page)).toHaveText('Sign-off is stale');
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByText('The sign-off is stale').click();
  await expect(page.locator('.stale-list')).toContainText(/Rack.*: moved \d+ mm, turned [\d.]+°/);

  await state(page).click();
  await expect(page.getByText(/Look at 1 mic one by one/)).toBeVisible();
  await press(page, 'One by one');
  await expect(page.getByText('Mic 1 of 1')).toBeVisible();
  await press(page, 'Fine');
  await expect(page.getByRole('heading', { name: 'The stands' })).toBeFocused();
  await press(page, 'Fine');
  await press(page, 'Fine');
  await press(page, 'I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeVisible();
});

test('a wish becomes a finding, and one tap takes it; undo brings it back @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await state(page).click();
  await press(page, 'One by one');
  const title = page.locator('.sign-side h2');
  while (!/Overhead/.test((await title.textContent()) ?? '')) {
    await press(page, 'Fine');
  }
  const name = await title.textContent();
  await press(page, 'Move it');
  const surface = page.locator('.wish-surface');
  const box = await surface.boundingBox();
  if (!box) throw new Error('the plan is shown');
  await page.touchscreen.tap(box.x + box.width * 0.5, box.y + box.height * 0.45);
  await expect(page.getByText(/mm from where it is/)).toBeVisible();
  await press(page, 'Away by 20 mm');
  await page.getByLabel('What should change?').fill('Out of my sight, please');
  await press(page, 'Next');
  while (!(await page.getByRole('button', { name: 'Not yet' }).isVisible())) {
    await press(page, 'Fine');
  }
  await expect(page.getByText(/to the spot on the plan, \d+ mm from where it is/)).toBeVisible();
  await press(page, 'Not yet');
  await expect(state(page)).toHaveText('Changes asked for');

  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByText(`The drummer wishes ${name} elsewhere`).click();
  await expect(page.getByText(/“Out of my sight, please”/)).toBeVisible();
  await page.getByRole('button', { name: /^Move it (there|as near)/ }).click();
  await expect(page.getByText(`The drummer wishes ${name} elsewhere`)).toHaveCount(0);
  // Only what was agreed to is a sign-off, and only a sign-off can be stale.
  await expect(state(page)).toHaveText('Changed since: ask again');
  await expect(
    page.getByText(/Changes asked for by .*, kit changed since: ask again/),
  ).toBeVisible();
  await expect(page.getByText(/stale/i)).toHaveCount(0);
  await state(page).click();
  await expect(page.locator('.sign-side')).toContainText(/Overhead.*: moved as you asked/);
  await page.goBack();
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByText(`The drummer wishes ${name} elsewhere`)).toBeVisible();

  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^History/ }).click();
  await expect(page.getByText(/^Not agreed to by /).first()).toBeVisible();
  await expect(page.getByText(/^Signed off by /)).toHaveCount(0);
});

test('a file whose digest does not match its text opens, says so, and asks about everything', async ({
  page,
}) => {
  await startLayout(page);
  await signAllFine(page);
  await press(page, 'Back to the plan');
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  layout.signOffs[0].signed = layout.signOffs[0].signed.replace('"stature":1750', '"stature":1751');
  await press(page, 'Layouts');
  await importText(page, 'changed.json', JSON.stringify({ ...layout, name: 'Changed by hand' }));
  await page.locator('.layout-name').getByText('Changed by hand').click();
  await expect(state(page)).toHaveText('Sign-off is damaged');
  await expect(page.getByText('The sign-off is damaged and proves nothing')).toBeVisible();
  await state(page).click();
  await expect(page.getByText(/its digest does not match its text/)).toBeVisible();
  await press(page, 'All fine');
  await press(page, 'I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeVisible();
});

test('a mic that would be struck is named before anyone agrees, and looking at it leads @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  const snare = layout.pieces.find((piece: { id: string }) => piece.id === 'snare');
  const mic = layout.mics.find((one: { mount: { kind: string } }) => one.mount.kind === 'stand');
  mic.name = 'Low mic';
  mic.mount.tip = { x: snare.x, y: snare.y, z: snare.z + 60 };
  await press(page, 'Layouts');
  await importText(page, 'struck.json', JSON.stringify({ ...layout, name: 'With a strike' }));
  await page.locator('.layout-name').getByText('With a strike').click();
  const warning = page
    .locator('.sign-side')
    .getByText('1 mic would be struck: Low mic. Look at it first');
  await state(page).click();
  await expect(warning).toBeVisible();
  await expect(page.locator('.sign-answers .primary')).toHaveText('One by one');
  await page.getByRole('button', { name: 'One by one' }).click();
  await expect(page.locator('.sign-side h2')).toContainText('Low mic');
  await press(page, 'Back');
  await press(page, 'All fine');
  await expect(page.getByRole('button', { name: 'I agree' })).toBeVisible();
  // The warning stands until the end.
  await expect(warning).toBeVisible();
});

test('a mic that stands in its drum is not called clear, and is named before anyone agrees', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  const mic = layout.mics.find((one: { mount: { kind: string } }) => one.mount.kind === 'clip');
  mic.name = 'Sunk mic';
  mic.mount = { ...mic.mount, height: 5, pitch: 20, reach: 40 };
  await press(page, 'Layouts');
  await importText(page, 'sunk.json', JSON.stringify({ ...layout, name: 'With a sunk mic' }));
  await page.locator('.layout-name').getByText('With a sunk mic').click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(page.locator('.tally-cell').filter({ hasText: 'In the way' })).toContainText('1');
  await page.getByRole('tab', { name: /Mics/ }).click();
  await page
    .getByRole('button', { name: /^Sunk mic/ })
    .first()
    .click();
  await expect(page.getByLabel('Clearance', { exact: true })).toContainText('In the way');
  const warning = page.locator('.sign-side').getByText(/^Sunk mic goes into /);
  await state(page).click();
  await expect(warning).toBeVisible();
  await press(page, 'One by one');
  await expect(page.locator('.sign-side h2')).toContainText('Sunk mic');
  await expect(warning).toBeVisible();
  await expect(page.locator('.sign-verdict .struck')).toBeVisible();
  await press(page, 'Back');
  await press(page, 'All fine');
  await expect(page.getByRole('button', { name: 'I agree' })).toBeVisible();
  await expect(warning).toBeVisible();
});

/** Cables across a deck are hundreds of pixels. */
const DRAWN = 200;

/** How many pixels of the drummer's plan are in the colour of cables, in which nothing else is drawn. */
async function cablePixels(page: Page): Promise<number> {
  const wanted = [1, 3, 5].map((i) => Number.parseInt(palettes.dark.cable.slice(i, i + 2), 16));
  // Cables lie on the deck, below all else.
  const colours = await pixelsOf(page, '.sign-plan canvas');
  let count = 0;
  for (let i = 0; i < colours.length; i += 4) {
    if (wanted.every((value, part) => colours[i + part] === value)) count += 1;
  }
  return count;
}

test('an overhead in the player’s head is in the way and never green, and a drum that no hand plays is named before anyone agrees', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  const mic = layout.mics.find((one: { name: string }) => one.name.startsWith('Overhead'));
  mic.name = 'Head mic';
  mic.mount = { ...mic.mount, tip: { x: 0, y: 0, z: 1250 }, base: { x: -500, y: -400 } };
  for (const piece of layout.pieces) if (piece.kind === 'snare') piece.hands = 'none';
  await press(page, 'Layouts');
  await importText(page, 'head.json', JSON.stringify({ ...layout, name: 'With a head mic' }));
  await page.locator('.layout-name').getByText('With a head mic').click();
  await page.getByRole('tab', { name: /Findings/ }).click();
  await expect(page.getByText('No hand plays Snare: nothing is computed for it')).toBeVisible();
  await page.getByRole('tab', { name: /Mics/ }).click();
  await page
    .getByRole('button', { name: /^Head mic/ })
    .first()
    .click();
  const clearance = page.getByLabel('Clearance', { exact: true });
  await expect(clearance).toContainText('In the way');
  await expect(clearance).not.toHaveClass(/clear-card/);
  await state(page).click();
  const side = page.locator('.sign-side');
  await expect(side.getByText("Head mic goes into the player's head")).toBeVisible();
  await expect(side.getByText('No hand plays Snare: nothing is computed for it')).toBeVisible();
});

test('what is open besides the mics is named before anyone agrees, and the way out shows its cables @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const file = await downloaded(page, page.getByRole('button', { name: 'Export' }));
  const layout = JSON.parse(file.text);
  layout.deck.depth -= 300;
  layout.box = { ...layout.box, x: 1500, y: -700 };
  await press(page, 'Layouts');
  await importText(page, 'edge.json', JSON.stringify({ ...layout, name: 'Over the edge' }));
  await page.locator('.layout-name').getByText('Over the edge').click();
  const side = page.locator('.sign-side');
  const edge = side.getByText("The stand of Kick in is over the deck's edge");
  const lane = side.getByText(/cables cross the way to the stairs$/);
  await state(page).click();
  await expect(edge).toBeVisible();
  await expect(lane).toBeVisible();
  await expect.poll(() => cablePixels(page)).toBeGreaterThan(DRAWN);
  await expect(page.locator('.sign-answers .primary')).toHaveText('One by one');
  await press(page, 'One by one');
  // The mic on that stand is asked about first, and told so.
  await expect(page.getByText(/^Mic 1 of/)).toBeVisible();
  await expect(page.locator('.sign-side h2')).toHaveText('Kick in');
  await expect(edge).toBeVisible();
  // Asked about a mic, the drummer is shown no cables.
  await expect.poll(() => cablePixels(page)).toBe(0);
  while (await page.getByText(/^Mic \d+ of/).isVisible()) {
    const at = await page.locator('.sign-count').textContent();
    await press(page, 'Fine');
    await expect(page.locator('.sign-count')).not.toHaveText(at ?? '');
  }
  await expect(side.getByRole('heading', { name: 'The stands' })).toBeVisible();
  await expect(edge).toBeVisible();
  await press(page, 'Fine');
  await expect(side.getByRole('heading', { name: 'The way out' })).toBeVisible();
  await expect(lane).toBeVisible();
  await expect.poll(() => cablePixels(page)).toBeGreaterThan(DRAWN);
  await press(page, 'Fine');
  await expect(edge).toBeVisible();
  await expect(lane).toBeVisible();
  await press(page, 'I agree');
  await expect(page.getByRole('heading', { name: 'Signed off', level: 2 })).toBeVisible();
  // Deck and box are no part of what is signed: what is open about them is still said.
  await expect(edge).toBeVisible();
  await expect(lane).toBeVisible();
});

test('a kit that hangs over its deck is not shown as signed and well, and the tab counts all of it @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await signAllFine(page);
  await press(page, 'Back to the plan');
  await expect(state(page)).toHaveText('Signed off');
  await page.getByRole('tab', { name: 'Stage' }).click();
  for (const [label, length] of [
    ['Width, side to side', '1500'],
    ['Depth, back to front', '1000'],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(length);
    await page.getByLabel(label, { exact: true }).press('Enter');
  }
  await expect(state(page)).toHaveText(/^Signed off, \d\d to solve$/);
  const tab = page.getByRole('tab', { name: /^Findings/ });
  const [room, count] = [await tab.boundingBox(), await tab.locator('.tab-count').boundingBox()];
  if (!room || !count) throw new Error('the count is on its tab');
  expect(count.x + count.width).toBeLessThanOrEqual(room.x + room.width);
  await state(page).click();
  await expect(page.locator('.sign-side')).toContainText(/Throne is over the deck's edge/);
});

test('the list of layouts says how a sign-off stands now, not that there was one @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await signAllFine(page);
  await press(page, 'Back to the plan');
  await press(page, 'Layouts');
  const row = page.locator('.layout-row');
  await expect(row.getByText('Signed off', { exact: true })).toBeVisible();
  await page.locator('.layout-name').click();
  await nudgeMic(page, 'Rack tom');
  await expect(state(page)).toHaveText('Sign-off is stale');
  await press(page, 'Layouts');
  await expect(row.getByText('Sign-off is stale', { exact: true })).toBeVisible();
  await expect(row.getByText('Signed off', { exact: true })).toHaveCount(0);
});

test('an asking that was begun goes on after a reload, with what was said', async ({ page }) => {
  await startLayout(page);
  await state(page).click();
  await press(page, 'One by one');
  await press(page, 'Fine');
  await expect(page.getByText(/^Mic 2 of/)).toBeVisible();
  await page.reload();
  await expect(page.getByText(/^Mic 2 of/)).toBeVisible();
});

test('who says no without saying why is asked about everything again, and nobody says that changes were asked for @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await state(page).click();
  await press(page, 'All fine');
  await press(page, 'Not yet');
  await expect(state(page)).toHaveText('Not agreed');
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByText('Not agreed to by Drummer').click();
  await expect(page.getByText(/Nothing was asked to be moved/)).toBeVisible();
  await expect(page.getByText(/Changes asked for|Asked for changes/)).toHaveCount(0);
  await state(page).click();
  await expect(page.getByText(/Look at 8 mics one by one/)).toBeVisible();
  await page.goBack();
  await press(page, 'Layouts');
  await expect(page.locator('.layout-row').getByText('Not agreed', { exact: true })).toBeVisible();
});
