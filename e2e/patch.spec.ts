import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import {
  closeLayout,
  downloaded,
  importText,
  listed,
  savedSign,
  startLayout,
} from './support/layouts.ts';
import { Fingers } from './support/plan.ts';
import { expect, test } from './support/test.ts';

const leg = { connection: 'direct', lifted: false, impedance: 2000 };

/** The layout that is open, exported, changed in its text and opened again. */
async function reopened(page: Page, change: (layout: Exported) => void): Promise<void> {
  const file = await downloaded(page, page.getByRole('button', { name: 'Export', exact: true }));
  const layout: Exported = JSON.parse(file.text);
  change(layout);
  await closeLayout(page);
  await importText(page, 'changed.json', JSON.stringify({ ...layout, name: 'Changed' }));
  await listed(page).filter({ hasText: 'Changed' }).click();
  await page.getByRole('tab', { name: 'Patch' }).click();
}

/** As much of an exported layout as is changed here. */
interface Exported {
  readonly mics: { readonly id: string }[];
  readonly patch: { channels: unknown[]; splits: unknown[] };
}

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

test('a handle keeps the focus while its row goes on and on', async ({ page }) => {
  await openPatch(page);
  const [first = ''] = await names(page).allTextContents();
  await page.getByRole('button', { name: /^Move channel 1,/ }).focus();
  for (let place = 1; place <= 3; place += 1) {
    await page.keyboard.press('ArrowDown');
    await expect(names(page).nth(place)).toHaveText(first);
  }
  await page.keyboard.press('Home');
  await expect(names(page).nth(0)).toHaveText(first);
  await page.keyboard.press('End');
  await expect(names(page).last()).toHaveText(first);
});

test('a channel gets another number, and its mic a second channel @portrait', async ({ page }) => {
  await openPatch(page);
  const row = (name: RegExp) => inputs(page).getByRole('button', { name });
  await row(/^Channel 2/).click();
  const number = page.getByLabel('Channel number', { exact: true });
  await number.fill('20');
  await number.press('Enter');
  await expect(row(/^Channel 20\s*Snare/)).toBeVisible();
  await expect(row(/^Channel 21\s*Hi-hat/)).toBeVisible();
  await number.fill('1000');
  await number.press('Enter');
  await expect(page.getByText(/Allowed: 1 to 999\. Kept 20\./)).toBeVisible();

  await page.getByRole('button', { name: 'Add a channel of this mic' }).click();
  await row(/^Channel 21\s*Snare \(2\)/).click();
  await page.getByLabel('Notes', { exact: true }).fill('Parallel compression');
  await page.getByLabel('Notes', { exact: true }).press('Enter');
  await expect(row(/Snare \(2\).*Parallel compression/)).toBeVisible();
  const { text } = await downloaded(page, page.getByRole('button', { name: 'Input list as CSV' }));
  expect(text).toMatch(/\r\n21,2,red,Snare \(2\),.*Parallel compression\r\n/);
  await page.getByRole('tab', { name: 'Findings' }).click();
  await expect(page.getByText('Box input 2 feeds 2 channels')).toBeVisible();
  await page.getByRole('tab', { name: 'Patch' }).click();
  await row(/^Channel 21/).click();
  await page.getByRole('button', { name: 'Remove this channel' }).click();
  await expect(row(/Snare \(2\)/)).toHaveCount(0);
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

test('a finger drags a row past the end of what is seen: the list scrolls on', async ({ page }) => {
  await openPatch(page);
  const [first = ''] = await names(page).allTextContents();
  const handle = page.getByRole('button', { name: /^Move channel 1,/ });
  const from = await handle.boundingBox();
  const panel = await page.locator('.panel-view').boundingBox();
  if (!from || !panel) throw new Error('the handle is on the screen');
  const fingers = await Fingers.on(page);
  const x = from.x + from.width / 2;
  await fingers.slide({ x, y: from.y + from.height / 2 }, { x, y: panel.y + panel.height - 20 });
  await expect(inputs(page).getByRole('listitem').last()).toHaveClass(/drop-below/);
  await fingers.up();
  await expect(names(page).last()).toHaveText(first);
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
  await expect(page.getByText('Leg 2: Seat shaker')).toBeVisible();
  await expect(page.getByText('Nothing is wrong with it.')).toBeVisible();
  await page.getByLabel('Kind').selectOption('y');
  await expect(page.getByText(/is split with a plain Y/)).toBeVisible();
  await page.getByText('Source impedance', { exact: true }).click();
  const source = page.getByLabel('Source impedance of the mics', { exact: true });
  await source.fill('600');
  await source.press('Enter');
  await expect(page.getByText(/Less than five times its 600 Ω/)).toBeVisible();
  await showPart(page, 'Pull');
  await expect(page.getByText(/1 to 2|for legs of splits/).first()).toBeVisible();
  await showPart(page, 'Splits');
  await page.getByRole('button', { name: 'Remove split' }).click();
  await expect(page.getByText('No signal is split.')).toBeVisible();
});

test('undo brings the line check back to the line whose result it took away', async ({ page }) => {
  await openPatch(page, 'Check');
  const at = (channel: number) =>
    page.getByRole('heading', { name: new RegExp(`^Channel ${channel}:`) });
  await expect(page.getByText(/^48 V: (on|off) in this plan/)).toBeVisible();
  await expect(page.getByText(/^In this plan: polarity normal/)).toBeVisible();
  for (const [channel, button] of [
    [1, 'Pass'],
    [2, 'Pass'],
    [3, 'Fail'],
  ] as const) {
    await expect(at(channel)).toBeVisible();
    await page.waitForTimeout(500);
    await page.locator('.check-big').getByText(button).click();
  }
  await expect(at(4)).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(at(3)).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect(at(2)).toBeVisible();
  await expect(page.getByText(/1 passed, 0 failed/)).toBeVisible();
});

test('the line check is walked through, and a result is kept @portrait', async ({ page }) => {
  await openPatch(page, 'Check');
  await expect(page.getByRole('heading', { name: /^Channel 1:/ })).toBeVisible();
  await page.getByRole('button', { name: 'Pass' }).click();
  await expect(page.getByRole('heading', { name: /^Channel 2:/ })).toBeVisible();
  await page.getByLabel('Note').fill('Buzz');
  await page.waitForTimeout(500);
  await page.getByRole('button', { name: 'Fail' }).click();
  await expect(page.getByRole('heading', { name: /^Channel 3:/ })).toBeVisible();
  await page.waitForTimeout(500);
  await page.getByRole('button', { name: 'Skip' }).click();
  await expect(page.getByText(/1 passed, 1 failed, 1 skipped/)).toBeVisible();
  await expect(page.getByText('✗ failed: Buzz')).toBeVisible();
  await expect(page.getByText(/^Line check by channel: ✓/)).toBeVisible();
  const { text } = await downloaded(page, page.getByRole('button', { name: 'Line check as CSV' }));
  expect(text).toMatch(/,fail,Buzz\r\n/);
});

test('why a line failed is said after it failed, stays with that line, and the end names what did not pass @portrait', async ({
  page,
}) => {
  await openPatch(page, 'Check');
  const lines = page.getByRole('list', { name: 'Lines' }).getByRole('button');
  const count = await lines.count();
  for (let at = 1; at <= count; at += 1) {
    await expect(page.getByRole('heading', { name: new RegExp(`^Channel ${at}:`) })).toBeVisible();
    await page.waitForTimeout(500);
    const answer = ['', 'Skip', 'Fail'][at] ?? 'Pass';
    await page.locator('.check-buttons').getByRole('button', { name: answer }).click();
    if (answer !== 'Fail') continue;
    await page.getByRole('button', { name: /^Say why ?: channel 2$/ }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByLabel('Note').fill('Crackles');
    await dialog.getByRole('button', { name: 'Keep the note' }).click();
    await expect(page.getByRole('heading', { name: /^Channel 3:/ })).toBeVisible();
  }
  await expect(lines.nth(1)).toContainText('✗ failed: Crackles');
  await expect(lines.nth(2)).not.toContainText('Crackles');
  await expect(page.getByText('Every line has been checked.')).toHaveCount(0);
  const again = page.getByRole('button', { name: /^Channel \d+: .*, (skipped|✗ failed)$/ });
  await expect(again).toHaveText([/^Channel 2: .*✗ failed$/, /^Channel 1: .*skipped$/]);
  await again.first().click();
  await expect(page.getByRole('heading', { name: /^Channel 2:/ })).toBeVisible();
  await expect(page.getByLabel('Note')).toHaveValue('Crackles');
});

test('from line to line the buttons of the line check stay where they are, whatever is said above them @portrait', async ({
  page,
}) => {
  await openPatch(page, 'Check');
  const card = page.locator('.check-card');
  const pass = card.getByRole('button', { name: 'Pass' });
  const lines = page.getByRole('list', { name: 'Lines' }).getByRole('button');
  const shown = new Set<string>();
  const below = new Set<number>();
  for (const state of ['open', 'fail']) {
    for (let at = 0; at < 8; at += 1) {
      await lines.nth(at).click();
      await expect(card.getByRole('heading')).toContainText(`Channel ${at + 1}:`);
      if (state === 'fail') await expect(card).toContainText('Now: ✗ failed.');
      shown.add((await card.locator('p').nth(1).textContent()) ?? '');
      const [box, button] = [await card.boundingBox(), await pass.boundingBox()];
      below.add(Math.round((button?.y ?? 0) - (box?.y ?? 0)));
      if (state === 'fail') continue;
      await page.waitForTimeout(450);
      await card.getByRole('button', { name: 'Fail' }).click();
    }
  }
  expect(shown.size).toBeGreaterThan(2);
  expect([...below]).toHaveLength(1);
});

test('a double tap on Pass passes one line, and that can be taken back', async ({ page }) => {
  await openPatch(page, 'Check');
  await page.getByRole('button', { name: '✓ Pass', exact: true }).dblclick();
  await expect(page.getByText('Channel 1 ✓ passed', { exact: true })).toBeVisible();
  await expect(page.getByText(/1 passed, 0 failed, 0 skipped/)).toBeVisible();
  await expect(page.getByRole('heading', { name: /^Channel 2:/ })).toBeVisible();
  // The button keeps the focus: a key goes on from line to line.
  await expect(page.getByRole('button', { name: '✓ Pass', exact: true })).toBeFocused();
  await page.waitForTimeout(500);
  await page.keyboard.press('Enter');
  await expect(page.getByText('Channel 2 ✓ passed', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: /^Undo ?: channel 2$/ }).click();
  await expect(page.getByRole('heading', { name: /^Channel 2:/ })).toBeVisible();
  await expect(page.getByText(/1 passed, 0 failed, 0 skipped/)).toBeVisible();
  await expect(page.getByText('Channel 2 ✓ passed', { exact: true })).toHaveCount(0);
});

test('what went out is out, then still out, and missing once the strike is over', async ({
  page,
}) => {
  await openPatch(page, 'Pull');
  await expect(page.getByText('Nothing has gone out yet.')).toBeVisible();
  await page.getByRole('button', { name: 'All out' }).click();
  await expect(page.getByText(/^Out: \d+ things/)).toBeVisible();
  await expect(page.getByText(/missing/)).toHaveCount(0);
  const ins = page.getByRole('button', { name: /^All in/ });
  await ins.first().click();
  await expect(page.getByText(/^Still out: \d+ things/)).toBeVisible();
  await expect(page.getByText(/\d missing/)).toHaveCount(0);
  await page.getByRole('button', { name: 'Strike is over' }).click();
  await expect(page.getByText(/^Missing: \d+ things/)).toBeVisible();
  // Said once, it stays said: on another page, and after a new start.
  await page.getByRole('tab', { name: 'Kit' }).click();
  await expect(savedSign(page)).toHaveText(/^Saved \d/);
  await page.reload();
  await openPatch(page, 'Pull');
  await expect(page.getByText(/^Missing: \d+ things/)).toBeVisible();
  await page.getByRole('button', { name: 'Strike is over' }).click();
  const count = await ins.count();
  for (let left = count; left > 0; left -= 1) await ins.first().click();
  await expect(page.getByText('Everything that went out is back.')).toBeVisible();
});

test('spares have a rule for all, and another for one kind', async ({ page }) => {
  await openPatch(page, 'Pull');
  const lines = page.getByRole('list', { name: 'Pull list' });
  const clips = lines.getByRole('listitem').filter({ hasText: 'Rim clip' });
  await expect(clips).toContainText('1 spare');
  await page.getByText('Spares', { exact: true }).first().click();
  await page.getByLabel('Another rule for').selectOption({ label: 'Rim clip' });
  await page.getByRole('button', { name: 'Add rule' }).click();
  const least = page.getByLabel('At least, rim clip', { exact: true });
  await least.fill('4');
  await least.press('Enter');
  await expect(clips).toContainText('4 spare');
  await page.getByRole('button', { name: /^As all others.*Rim clip/ }).click();
  await expect(clips).toContainText('1 spare');
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

test('a split of a split, of nothing and without legs is said, and nothing is lost', async ({
  page,
}) => {
  await startLayout(page);
  await reopened(page, ({ mics, patch }) => {
    const legs = [
      { to: 'channel', ...leg },
      { to: 'other', name: 'Recorder', phantom: true, ...leg },
    ];
    patch.splits.push(
      { id: 'first', of: mics[0]?.id, kind: 'y', legs },
      { id: 'second', of: 'first', kind: 'transformer', legs },
      { id: 'third', of: 'nobody', kind: 'y', legs: [] },
    );
  });
  await showPart(page, 'Splits');
  await expect(page.getByText('A split takes its signal from another split')).toBeVisible();
  await expect(page.getByText('A split takes its signal from nothing')).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Split of another split' })).toBeVisible();
  const last = page.getByRole('region', { name: 'Split of nothing' });
  await last.getByRole('button', { name: 'Remove split' }).click();
  await expect(page.getByRole('heading', { name: /^Split of/ })).toHaveCount(2);
  await showPart(page, 'Inputs');
  await expect(names(page).first()).toBeVisible();
});

test('a sheet with thirty channels and long notes is one page too', async ({ page }) => {
  await startLayout(page);
  await reopened(page, ({ mics, patch }) => {
    for (let copy = 0; copy < 22; copy += 1) {
      patch.channels.push({
        id: `more-${copy}`,
        mic: mics[copy % mics.length]?.id,
        number: null,
        phantom: null,
        polarity: null,
        highPass: null,
        pad: null,
        insert: null,
        notes: 'Parallel compression for the second mix, returned beside the first',
      });
    }
  });
  await page.evaluate(() => {
    window.print = () => undefined;
  });
  await expect(names(page)).toHaveCount(30);
  for (const format of ['A4', 'Letter']) {
    await page.getByRole('button', { name: 'Print the input list' }).click();
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.print-sheet')).toBeVisible();
    const pdf = await page.pdf({ format, landscape: true });
    expect(pdf.toString('latin1')).toMatch(/\/Count 1\b/);
    await page.emulateMedia({ media: 'screen' });
    await expect(page.locator('.print-sheet')).toHaveCount(0);
  }
});

test.describe('on paper', () => {
  for (const table of ['input list', 'cable schedule', 'pull list', 'line check']) {
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
