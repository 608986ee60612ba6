import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { closeLayout, startLayout } from './support/layouts.ts';
import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** Both themes, by every rule of axe for WCAG 2.2 AA and good practice. `part` is where to look; the whole page otherwise. */
async function expectClean(page: Page, screen: string, part?: string): Promise<void> {
  for (const theme of ['dark', 'light'] as const) {
    const shown = await page.locator('html').getAttribute('data-theme');
    if (shown !== theme) {
      await page.evaluate((wanted) => {
        document.documentElement.dataset.theme = wanted;
      }, theme);
    }
    const axe = new AxeBuilder({ page }).withTags(levels);
    const { violations } = await (part === undefined ? axe : axe.include(part)).analyze();
    const found = violations.map(({ id, nodes }) => ({
      id,
      where: nodes.map(({ html }) => html.slice(0, 160)),
    }));
    expect(found, `${screen}, ${theme}`).toEqual([]);
  }
}

/** Every visible button, field and tab whose target is under 44 px either way; a field inside a taller frame counts by its frame. */
const smallTargets = (page: Page) =>
  page.evaluate(() => {
    const targets = document.querySelectorAll<HTMLElement>(
      'button, select, textarea, summary, input:not([type="file"]):not([hidden])',
    );
    return Array.from(targets)
      .map((target) => {
        const frame = target.closest<HTMLElement>('.check, .choice-option, .stepper') ?? target;
        const { width, height } = frame.getBoundingClientRect();
        return { name: target.textContent || target.outerHTML.slice(0, 80), width, height };
      })
      .filter(({ width, height }) => width > 0 && (width < 43.5 || height < 43.5));
  });

/** Text smaller than 14 px that is shown. */
const smallText = (page: Page) =>
  page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    const small: string[] = [];
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || !node.textContent?.trim()) continue;
      const { width } = parent.getBoundingClientRect();
      if (width > 1 && Number.parseFloat(getComputedStyle(parent).fontSize) < 14) {
        small.push(node.textContent);
      }
    }
    return small;
  });

async function expectUsable(page: Page, screen: string, part?: string): Promise<void> {
  await expectClean(page, screen, part);
  expect(await smallTargets(page), `targets: ${screen}`).toEqual([]);
  expect(await smallText(page), `text: ${screen}`).toEqual([]);
}

test('the list of layouts is accessible, empty, filled and asking @portrait', async ({ page }) => {
  await page.goto('/');
  await appIsOpen(page);
  await expectUsable(page, 'first run');
  await startLayout(page);
  await closeLayout(page);
  await page.getByRole('button', { name: /^More for/ }).click();
  await expectUsable(page, 'list');
  await page.getByRole('button', { name: 'New layout' }).click();
  await expectUsable(page, 'new layout');
});

test('every section of the panel is accessible', async ({ page }) => {
  await startLayout(page);
  for (const tab of ['Findings', 'Kit', 'Mics', 'Cables', 'Stage', 'Player']) {
    await page.getByRole('tab', { name: tab }).click();
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectUsable(page, tab, tab === 'Findings' ? undefined : '.panel');
  }
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByRole('button', { name: /Rack tom mic/ }).click();
  await expectUsable(page, 'a finding shown', '.panel');
});

test('every part of the Sound section is accessible', async ({ page }) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Sound' }).click();
  await page.locator('.sound-part-body .line-button').first().click();
  await expectUsable(page, 'a close mic', '.panel');
  for (const part of ['Kick', 'Overheads', 'Timing', '3:1', 'High-pass', 'Levels']) {
    await page.locator('.sound-part h3').getByRole('button', { name: part }).click();
    await expectUsable(page, part, '.sound-part:has(.sound-part-body)');
  }
});

test('the details of pieces are accessible', async ({ page }) => {
  await startLayout(page);
  for (const piece of ['Snare', 'Kick', 'Hi-hat', 'Throne', 'Kick pedal']) {
    await page.getByRole('tab', { name: 'Kit' }).click();
    await page.locator('.line-name').getByText(piece, { exact: true }).click();
    for (const summary of await page.locator('summary').all()) await summary.click();
    await expectUsable(page, piece, '.panel');
  }
});

test('the details of mics are accessible, struck ones too', async ({ page }) => {
  await startLayout(page);
  for (const mic of ['Kick in', 'Rack tom']) {
    await page.getByRole('tab', { name: 'Mics' }).click();
    await page.locator('.line-name').getByText(mic, { exact: true }).click();
    await expectUsable(page, `${mic} mic`, '.panel');
  }
  const angle = page.getByLabel('Round the rim', { exact: true });
  await angle.fill('270');
  await angle.press('Enter');
  await angle.fill('round');
  await angle.press('Enter');
  await expect(page.locator('.field-problem')).toBeVisible();
  await expectUsable(page, 'a mic near the player and a bad number', '.panel');
});

test('a clear spot on offer and a remedy are accessible', async ({ page }) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Player' }).click();
  await page.getByLabel('Wanted clearance', { exact: true }).fill('66');
  await page.getByLabel('Wanted clearance', { exact: true }).press('Enter');
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Floor tom 1', { exact: true }).click();
  await page.getByRole('button', { name: 'Find a clear spot' }).click();
  await expect(page.getByRole('button', { name: 'Take it' })).toBeVisible({ timeout: 60_000 });
  await expectUsable(page, 'a clear spot', '.panel');
  await page.getByRole('tab', { name: 'Findings' }).click();
  await page.getByRole('button', { name: /^Clear all mics/ }).click();
  await expect(page.getByRole('button', { name: 'Take it' })).toBeVisible({ timeout: 60_000 });
  await expectUsable(page, 'everything cleared', '.panel');
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Overhead, hi-hat side', { exact: true }).click();
  await page.getByLabel('Class of stand').selectOption('tripodLow');
  await expect(page.getByRole('button', { name: /^Take another stand/ })).toBeVisible();
  await expectUsable(page, 'a remedy', '.panel');
});

test('the sign-off, the next venue and what it changes are usable by every rule @portrait', async ({
  page,
}) => {
  await startLayout(page);
  await page.locator('[data-sign-off]').click();
  await expect(page.getByRole('button', { name: 'All fine' })).toBeVisible();
  await expectUsable(page, 'sign-off');
  await page.getByRole('button', { name: 'One by one' }).click();
  await page.getByRole('button', { name: 'Move it' }).click();
  await expectUsable(page, 'a wish');
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await page.locator('[data-sign-off]').click();
  await page.getByRole('button', { name: 'Back' }).click();
  await page.getByRole('button', { name: 'All fine' }).click();
  await expectUsable(page, 'consent');
  await page.getByRole('button', { name: 'I agree' }).click();
  await expectUsable(page, 'signed');
  await page.getByRole('button', { name: 'Back to the plan' }).click();
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Next venue/ }).click();
  await page.getByLabel('Deck width, mm').fill('2700');
  await expectUsable(page, 'next venue');
  await page.getByRole('button', { name: 'Start there' }).click();
  await expect(page.getByRole('heading', { name: 'On the deck' })).toBeVisible();
  await expectUsable(page, 'what changed');
});

test('every page over a layout, the bin and the reader of codes are usable by every rule @portrait', async ({
  page,
}) => {
  await startLayout(page);
  const plan = page.url();
  for (const [name, shown] of [
    ['history', 'As it is now'],
    ['hand-over', 'By camera'],
    ['set-up', 'Check the deck'],
    ['sheets', 'Paper'],
  ] as const) {
    await page.goto(`${plan}/${name}`);
    await expect(page.getByText(shown, { exact: false }).first()).toBeVisible();
    const pause = page.getByRole('button', { name: 'Pause' });
    if (name === 'hand-over') await pause.click();
    await expectClean(page, name);
    expect(await smallTargets(page), `targets: ${name}`).toEqual([]);
  }
  await page.getByRole('button', { name: 'Plan', exact: true }).click();
  await closeLayout(page);
  await page.getByRole('button', { name: 'Bin', exact: true }).click();
  await expectUsable(page, 'the bin', 'dialog');
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Read codes' }).click();
  await expect(page.getByRole('alert')).toContainText('camera');
  await expectUsable(page, 'reading codes', 'dialog');
});
