import type { Page } from '@playwright/test';
import { startLayout } from './support/layouts.ts';
import { expect, test } from './support/test.ts';

const section = (page: Page, name: string) => page.getByRole('tab', { name }).click();

/** Opens the details of a piece or mic from its list. */
async function openDetails(page: Page, list: 'Kit' | 'Mics', name: string): Promise<void> {
  await section(page, list);
  await page.locator('.line-name').getByText(name, { exact: true }).click();
  await expect(page.getByRole('heading', { level: 2, name, exact: true })).toBeVisible();
}

const field = (page: Page, label: string) => page.getByLabel(label, { exact: true });

async function type(page: Page, label: string, text: string): Promise<void> {
  await field(page, label).fill(text);
  await field(page, label).press('Enter');
}

const undo = (page: Page) => page.getByRole('button', { name: /^Undo/ });
const redo = (page: Page) => page.getByRole('button', { name: /^Redo/ });

test('a number is typed in mm or inches; what cannot be read keeps the old value', async ({
  page,
}) => {
  await startLayout(page);
  await openDetails(page, 'Kit', 'Snare');
  await type(page, 'Height of the head', '26 in');
  await expect(field(page, 'Height of the head')).toHaveValue('660.4');
  await type(page, 'Height of the head', '70 cm');
  await expect(field(page, 'Height of the head')).toHaveValue('700');
  await type(page, 'Height of the head', 'high');
  await expect(page.getByRole('alert')).toHaveText(
    "“high” can't be read. Type a length such as 120, 12.5 cm, 1.2 m, 14 in or 5 ft 11 in. Kept 700.",
  );
  await expect(field(page, 'Height of the head')).toHaveValue('700');
  await type(page, 'Height of the head', '9 m');
  await expect(page.getByRole('alert')).toHaveText('Allowed: 0 to 4000 mm. Kept 700.');
  await type(page, 'Height of the head', '690');
  await expect(page.locator('.field-problem')).toHaveCount(0);
});

test('a decimal comma and feet with inches are read as typed; what could mean two things is asked back', async ({
  page,
}) => {
  await startLayout(page);
  await section(page, 'Player');
  const stature = field(page, 'Stature, standing');
  await type(page, 'Stature, standing', '5\'11"');
  await expect(stature).toHaveValue('1803.4');
  await type(page, 'Stature, standing', '5 ft 10 in');
  await expect(stature).toHaveValue('1778');
  await type(page, 'Stature, standing', '175,5 cm');
  await expect(stature).toHaveValue('1755');
  await type(page, 'Stature, standing', '1,755');
  await expect(page.getByRole('alert')).toHaveText(
    '“1,755” could mean 1.755 or 1755. Type one of them. Kept 1755.',
  );
  await section(page, 'Stage');
  await type(page, 'Wanted clearance', '42,5');
  await expect(field(page, 'Wanted clearance')).toHaveValue('42.5');
  const behind = field(page, 'In front of the middle').first();
  await behind.fill('-1234,5');
  await behind.press('Enter');
  await expect(behind).toHaveValue('-1234.5');
  // Nothing of it is cut off.
  expect(await behind.evaluate((input) => input.scrollWidth - input.clientWidth)).toBe(0);
});

test('a field is as high as a thumb, and what is wrong with it comes into view @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await section(page, 'Cables');
  const heights = await page
    .locator('.number-input')
    .evaluateAll((inputs) => inputs.map((input) => input.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(5);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
  const length = field(page, 'New length, m');
  // The lowest place at which the field itself is still in view.
  await length.evaluate((input) => input.scrollIntoView({ block: 'end' }));
  await length.fill('long');
  await length.evaluate((input) => input.scrollIntoView({ block: 'end' }));
  await length.press('Enter');
  await expect(page.getByRole('alert')).toBeInViewport({ ratio: 1 });
});

test('holding a step button is one step back', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Kit', 'Snare');
  const height = field(page, 'Height of the head');
  const before = Number(await height.inputValue());
  const more = page.getByRole('button', { name: 'Height of the head, more' });
  const box = await more.boundingBox();
  if (!box) throw new Error('the step button is on the screen');
  await page.mouse.move(box.x + 20, box.y + 20);
  await page.mouse.down();
  await expect(async () => {
    expect(Number(await height.inputValue())).toBeGreaterThan(before + 30);
  }).toPass();
  await page.mouse.up();
  const after = Number(await height.inputValue());
  expect((after - before) % 10).toBe(0);
  await undo(page).click();
  await expect(height).toHaveValue(String(before));
  await redo(page).click();
  await expect(height).toHaveValue(String(after));
});

test('a tap on a step button is one step; keys step too', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Mics', 'Rack tom');
  const angle = field(page, 'Round the rim');
  const before = Number(await angle.inputValue());
  // The same on the clock that the player sees: 12 toward the audience.
  await expect(page.getByText("About 12 o'clock")).toBeVisible();
  await expect(angle).toHaveAccessibleDescription("degrees About 12 o'clock");
  await page.getByRole('button', { name: 'Round the rim, more' }).tap();
  await expect(angle).toHaveValue(String(before + 5));
  await angle.press('ArrowDown');
  await angle.press('ArrowDown');
  await expect(angle).toHaveValue(String(before - 5));
  await page.getByRole('button', { name: 'Round the rim, less' }).press('Enter');
  await expect(angle).toHaveValue(String(before - 10));
  await angle.press('Control+z');
  await expect(angle).toHaveValue(String(before - 5));
  await type(page, 'Round the rim', '-10');
  await expect(angle).toHaveValue('350');
  await page.getByRole('button', { name: 'Round the rim, more' }).click({ clickCount: 3 });
  await expect(angle).toHaveValue('5');
});

test('undo and redo say what they do', async ({ page }) => {
  await startLayout(page);
  await expect(undo(page)).toBeDisabled();
  await openDetails(page, 'Kit', 'Snare');
  await type(page, 'Lean from level', '9');
  await expect(undo(page)).toHaveAccessibleName('Undo: Lean of Snare');
  await undo(page).click();
  await expect(redo(page)).toHaveAccessibleName('Redo: Lean of Snare');
  await expect(field(page, 'Lean from level')).not.toHaveValue('9');
  await redo(page).click();
  await expect(field(page, 'Lean from level')).toHaveValue('9');
});

test('units change what is shown everywhere, and nothing else', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Kit', 'Snare');
  await type(page, 'Height of the head', '26 in');
  await page.getByRole('radio', { name: 'in', exact: true }).check();
  await expect(field(page, 'Height of the head')).toHaveValue('26');
  await section(page, 'Findings');
  await expect(page.locator('.line-number').first()).toHaveText(/ in$/);
  await section(page, 'Cables');
  await expect(page.locator('.line-number').first()).toHaveText(/ ft$/);
  await page.getByRole('radio', { name: 'mm' }).check();
  await expect(page.locator('.line-number').first()).toHaveText(/ m$/);
});

test('a clip turned to the player is struck or tight and says which move; undo clears it', async ({
  page,
}) => {
  await startLayout(page);
  await openDetails(page, 'Mics', 'Rack tom');
  const card = page.getByRole('region', { name: 'Clearance' });
  await expect(card).toContainText('Clear');
  await type(page, 'Round the rim', '270');
  await type(page, 'Inside the rim', '60');
  await expect(card).toContainText('Struck');
  await expect(card).toContainText(/mm too close: (right|left) (stick|hand|forearm)/);
  await expect(card).toContainText(/turn the clip round the rim/i);
  await expect(page.getByTestId('verdict-news')).toHaveText(/Rack tom mic: Struck/);
  await section(page, 'Findings');
  const first = page.locator('.line').first();
  await expect(first).toContainText('Rack tom mic');
  await expect(first).toContainText('−');
  await first.getByRole('button').first().click();
  await expect(first).toContainText('The mic itself');
  await first.getByRole('button', { name: 'Adjust Rack tom mic' }).click();
  await undo(page).click();
  await undo(page).click();
  await expect(card).toContainText('Clear');
});

test('pieces of every kind are added, sized by list, copied, mirrored and deleted', async ({
  page,
}) => {
  await startLayout(page);
  const kinds = ['Snare', 'Rack tom', 'Floor tom', 'Kick drum', 'Hi-hat', 'Crash', 'Ride'];
  for (const kind of [...kinds, 'Splash', 'China', 'Cowbell, block', 'Pedal']) {
    await section(page, 'Kit');
    await page
      .getByRole('region', { name: 'Add a piece' })
      .getByRole('button', { name: kind, exact: true })
      .click();
    await expect(page.locator('.details-title').first()).toContainText(kind);
  }
  await openDetails(page, 'Kit', 'Splash');
  await page.getByLabel('Splash sizes').selectOption({ label: '12 in (305 mm)' });
  await expect(field(page, 'Diameter')).toHaveValue('304.8');
  await type(page, 'Diameter', '290');
  await expect(page.getByLabel('Splash sizes')).toHaveValue('other');
  const x = Number(await field(page, 'Right of the throne').inputValue());
  await page.getByRole('button', { name: /^Mirror Splash/ }).click();
  await expect(field(page, 'Right of the throne')).toHaveValue(String(-x + 0));
  await page.getByRole('button', { name: 'Duplicate Splash' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Splash 2' })).toBeVisible();
  await page.getByRole('button', { name: 'Delete Splash 2' }).click();
  await section(page, 'Kit');
  await expect(page.locator('.line-name').getByText('Splash 2')).toHaveCount(0);
  await undo(page).click();
  await expect(page.locator('.line-name').getByText('Splash 2')).toHaveCount(1);
});

test('a kick has a port or none; a pedal has a foot; a throne a height', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Kit', 'Kick');
  const port = page.getByLabel('The front head has a port');
  if (!(await port.isChecked())) await port.check();
  await expect(field(page, 'Port diameter')).toBeVisible();
  await port.uncheck();
  await expect(field(page, 'Port diameter')).toHaveCount(0);
  await openDetails(page, 'Kit', 'Kick pedal');
  await page.getByRole('radio', { name: 'Left' }).check();
  await expect(undo(page)).toHaveAccessibleName('Undo: Foot on Kick pedal');
  await openDetails(page, 'Kit', 'Throne');
  await type(page, 'Seat height', '530');
  await section(page, 'Player');
  await expect(field(page, 'Seat height')).toHaveValue('530');
});

test('every mic is taken away and offered again, one tap for all', async ({ page }) => {
  await startLayout(page);
  await section(page, 'Mics');
  const mics = page.locator('.lines').first().locator('.line');
  const count = await mics.count();
  expect(count).toBeGreaterThan(5);
  for (let left = count; left > 0; left -= 1) {
    await section(page, 'Mics');
    await page.locator('.lines .line-button').first().click();
    await page.getByRole('button', { name: /^Delete/ }).click();
  }
  await section(page, 'Findings');
  await expect(page.getByRole('heading', { name: 'No mics yet' })).toBeVisible();
  await page.getByRole('button', { name: 'Mic up the kit' }).click();
  await page.getByRole('button', { name: /^All \d+$/ }).click();
  await expect(page.getByText('None. Every drum and cymbal group has its mic.')).toBeVisible();
  await section(page, 'Findings');
  await expect(page.locator('.tally-cell').filter({ hasText: 'Struck' })).toContainText('0');
  await expect(page.locator('.tally-cell').filter({ hasText: 'Tight' })).toContainText('0');
  await undo(page).click();
  await expect(page.getByRole('heading', { name: 'No mics yet' })).toBeVisible();
});

test('a mic changes its class, its mount, its stand and its input', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Mics', 'Rack tom');
  await page.getByRole('radio', { name: 'Metal' }).check();
  await expect(page.getByText('A metal clip may mark the rim', { exact: false })).toBeVisible();
  await page.getByLabel('Held by').selectOption({ label: 'Medium tripod boom' });
  await expect(page.getByRole('heading', { name: 'Tip of the mic' })).toBeVisible();
  await page.getByLabel('Class of stand').selectOption({ label: 'Tall tripod boom' });
  await page.getByLabel('Class of mic').selectOption({ label: 'Pencil condenser' });
  await expect(page.locator('.details-title')).toContainText('Mic · Pencil condenser');
  const baseX = page
    .locator('.group')
    .filter({ has: page.getByRole('heading', { name: 'Stand', exact: true }) })
    .getByLabel('Right of the throne', { exact: true });
  const tipX = page
    .locator('.group')
    .filter({ has: page.getByRole('heading', { name: 'Tip of the mic' }) })
    .getByLabel('Right of the throne', { exact: true });
  const stays = await baseX.inputValue();
  await tipX.fill('40');
  await tipX.press('Enter');
  await expect(baseX).toHaveValue(stays);
  await page.getByLabel('Input of the box').selectOption({ label: 'Not plugged' });
  await expect(page.getByText('is not plugged in', { exact: false })).toBeVisible();
});

test('a kick mic goes into the port by mm', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Mics', 'Kick in');
  await type(page, 'Behind the front head', '120');
  await expect(field(page, 'Behind the front head')).toHaveValue('120');
  await expect(undo(page)).toHaveAccessibleName('Undo: Insertion of Kick in');
});

test("a mic class of the user's own is made, used and removed", async ({ page }) => {
  await startLayout(page);
  await section(page, 'Mics');
  await page.locator('summary').filter({ hasText: 'Own mic classes' }).click();
  await page.getByRole('button', { name: 'Add a class' }).click();
  await type(page, 'Name of the class', 'Lollipop');
  await type(page, 'Body length', '90');
  await openDetails(page, 'Mics', 'Rack tom');
  await page.getByLabel('Class of mic').selectOption({ label: 'Lollipop' });
  await expect(page.locator('.details-title')).toContainText('Mic · Lollipop');
  await section(page, 'Mics');
  await page.locator('summary').filter({ hasText: 'Own mic classes' }).click();
  await page.getByRole('button', { name: 'Remove Lollipop' }).click();
  await expect(page.locator('.line').filter({ hasText: 'Rack tom' })).not.toContainText('Lollipop');
});

test('cables show their parts, their total and the stock', async ({ page }) => {
  await startLayout(page);
  await section(page, 'Cables');
  const first = page.locator('.line').first();
  await first.getByRole('button').first().click();
  const rows = first.locator('tbody tr td');
  const parts = (await rows.allTextContents()).map((text) => Number(text.replace(' mm', '')));
  const total = Number((await first.locator('tfoot td').first().textContent())?.replace(' mm', ''));
  expect(parts.length).toBeGreaterThan(3);
  const sum = parts.reduce((a, b) => a + b, 0);
  expect(Math.abs(sum - total)).toBeLessThanOrEqual(parts.length);
  await type(page, 'Loop at the box', '900');
  await expect(first.locator('tbody')).toContainText('900 mm');
  await page.getByLabel('New length, m').fill('4');
  await page.getByRole('button', { name: 'Add length' }).click();
  await expect(field(page, '4 m')).toHaveValue('1');
  await page.getByRole('button', { name: '4 m, less' }).click();
  await expect(field(page, '4 m')).toHaveCount(0);
  await page.getByLabel('New length, m').fill('long');
  await page.getByRole('button', { name: 'Add length' }).click();
  await expect(page.getByRole('alert')).toContainText('Type a length such as 5, 2.5 m or 16 ft.');
});

test('the stage and the player are set by numbers', async ({ page }) => {
  await startLayout(page);
  await section(page, 'Stage');
  await type(page, 'Wanted clearance', '300');
  await expect(page.getByRole('tab', { name: 'Findings' })).toBeVisible();
  await type(page, 'Width, side to side', '4 m');
  await expect(field(page, 'Width, side to side')).toHaveValue('4000');
  await page.getByRole('button', { name: 'Add stairs' }).click();
  await page.getByLabel('Stairs 2 at').selectOption({ label: "Player's left" });
  await type(page, 'Temperature', '24 °C');
  await page.getByLabel('Notes').fill('Load in by the side door');
  await section(page, 'Player');
  await type(page, 'Stature, standing', '1820');
  await page.locator('summary', { hasText: 'Measured body lengths' }).click();
  await type(page, 'Upper arm', '350');
  await expect(field(page, 'Upper arm')).toHaveValue('350 mm');
  await type(page, 'Upper arm', '');
  await expect(field(page, 'Upper arm')).toHaveValue('');
  await page.getByRole('button', { name: 'Mirror the whole kit' }).click();
  await expect(page.getByRole('radio', { name: 'Left' })).toBeChecked();
  await page.getByRole('button', { name: 'Mirror it, the left hand still leads' }).click();
  await expect(page.getByRole('radio', { name: 'Left' })).toBeChecked();
  const played = page.getByLabel('Which hand plays what');
  await expect(played).toContainText('Reaches acrossThe left hand to Ride');
  await page.getByRole('radio', { name: 'Open' }).check();
  await expect(played).toContainText('Left hand aloneHi-hat and Ride');
  await section(page, 'Stage');
  await expect(page.getByLabel('Notes')).toHaveValue('Load in by the side door');
});

test('the plan stays in view while its numbers change @portrait', async ({ page }) => {
  await startLayout(page);
  await openDetails(page, 'Kit', 'Snare');
  await page.locator('.panel-view').evaluate((view) => {
    view.scrollTop = view.scrollHeight;
  });
  const plan = await page.locator('.plan-frame').boundingBox();
  const view = page.viewportSize();
  if (!plan || !view) throw new Error('the plan is on the screen');
  expect(plan.y).toBeGreaterThanOrEqual(0);
  expect(plan.y + plan.height).toBeLessThanOrEqual(view.height);
  expect(plan.width * plan.height).toBeGreaterThan(view.width * view.height * 0.35);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(view.width);
});

test('the theme is dark by default and light by choice, and kept', async ({ page }) => {
  await startLayout(page);
  const root = page.locator('html');
  await expect(root).toHaveAttribute('data-theme', 'dark');
  await page.getByRole('button', { name: /^Light/ }).click();
  await expect(root).toHaveAttribute('data-theme', 'light');
  await page.reload();
  await expect(root).toHaveAttribute('data-theme', 'light');
});

test('at 200 % plan and panel are below each other, whole, and the page scrolls to them', async ({
  page,
}) => {
  await startLayout(page);
  for (const size of [
    { width: 590, height: 410 },
    { width: 410, height: 590 },
  ]) {
    await page.setViewportSize(size);
    const surface = page.getByRole('application', { name: 'Plan of the deck' });
    await expect.poll(async () => (await surface.boundingBox())?.width).toBe(size.width);
    const plan = await surface.boundingBox();
    expect(plan?.height).toBeGreaterThanOrEqual(250);
    const panel = await page.getByRole('tablist', { name: 'Sections' }).boundingBox();
    expect(panel?.y).toBeGreaterThan((plan?.y ?? 0) + (plan?.height ?? 0));
    await page.getByRole('tab', { name: 'Stage' }).tap();
    await page.getByRole('textbox', { name: 'Wanted clearance' }).fill('60');
    await page.getByRole('tab', { name: 'Findings' }).tap();
    await page.getByRole('radio', { name: 'Player', exact: true }).check();
    const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wider).toBeLessThanOrEqual(0);
  }
});
