import type { Page } from '@playwright/test';
import { createAnalyst } from '../src/report/analyse.ts';
import type { ClearanceRow } from '../src/report/report.ts';
import { openPlan } from './support/plan.ts';
import { expect, test } from './support/test.ts';

type Kind = NonNullable<ClearanceRow['nearest']>['movement']['kind'];

/** Selects a mic to which one of such movements comes nearest. */
async function selectMic(page: Page, ...kinds: readonly Kind[]) {
  const plan = await openPlan(page);
  const { clearances, rig } = createAnalyst()(plan.layout);
  const row = clearances.find(({ nearest }) => nearest && kinds.includes(nearest.movement.kind));
  const placed = rig.mics.find(({ mic }) => mic.id === row?.mic);
  if (!row || !placed) throw new Error(`expected a mic that a ${kinds.join(' or ')} is nearest to`);
  await page.getByRole('tab', { name: /Mics/ }).click();
  await page.getByRole('button', { name: placed.mic.name }).first().click();
  await expect(plan.spoken).toContainText(placed.mic.name);
  return { plan, row };
}

/** Selects a mic that a hand's move comes nearest to, and opens that move. */
async function openMove(page: Page) {
  const { plan, row } = await selectMic(page, 'stroke', 'travel');
  await page.getByRole('button', { name: 'Show the move' }).click();
  const slider = page.getByRole('slider', { name: 'Moment of the move' });
  const said = page.locator('.plan-moment');
  const nearest = `Nearest: ${Math.floor(row.clearance)} mm, ${row.verdict}`;
  const mm = async () => Number(/\d+/.exec((await said.textContent()) ?? '')?.[0]);
  return { plan, row, slider, said, nearest, mm };
}

/** Plays for so many frames, and stops. */
const playFor = (page: Page, frames: number): Promise<void> =>
  page.evaluate(async (count) => {
    const press = (name: string): void =>
      document.querySelector<HTMLButtonElement>(`.plan-move [aria-label="${name}"]`)?.click();
    press('Play');
    for (let i = 0; i < count; i += 1) await new Promise((go) => requestAnimationFrame(go));
    press('Pause');
  }, frames);

test('a move rests at its nearest moment, is drawn to and fro by finger and keys, and played @portrait', async ({
  page,
}) => {
  const { row, slider, said, nearest, mm } = await openMove(page);
  await expect(said).toHaveText(nearest);
  await slider.focus();
  for (let press = 0; press < 30; press += 1) await page.keyboard.press('ArrowRight');
  await expect(said).not.toHaveText(nearest);
  expect(await mm()).toBeGreaterThanOrEqual(Math.floor(row.clearance));
  await expect(slider).toHaveAttribute('aria-valuetext', (await said.textContent()) ?? '');
  await page.getByRole('button', { name: 'Nearest' }).click();
  await expect(said).toHaveText(nearest);
  const box = await slider.boundingBox();
  if (!box) throw new Error('expected the slider on the page');
  expect(box.height).toBeGreaterThanOrEqual(44);
  await page.touchscreen.tap(box.x + box.width * 0.95, box.y + 6);
  expect(Number(await slider.inputValue())).toBeGreaterThan(170);
  const before = await slider.inputValue();
  await playFor(page, 3);
  const paused = await slider.inputValue();
  expect(paused).not.toBe(before);
  await page.waitForTimeout(300);
  await expect(slider).toHaveValue(paused);
  await page.getByRole('button', { name: 'Close the move' }).click();
  await expect(slider).toBeHidden();
});

test('a move that is played stops by itself at its nearest moment, and goes round once more when it is played again @portrait', async ({
  page,
}) => {
  const { slider, said, nearest } = await openMove(page);
  const rest = await slider.inputValue();
  for (const from of ['Home', 'nearest']) {
    if (from === 'Home') await slider.press('Home');
    await page.getByRole('button', { name: 'Play' }).click();
    await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
    await expect(said).not.toHaveText(nearest);
    await expect(said).toHaveText(nearest);
    await expect(slider).toHaveValue(rest);
    await expect(page.getByRole('button', { name: 'Play' })).toBeVisible();
    await page.waitForTimeout(400);
    await expect(slider).toHaveValue(rest);
  }
});

test('who wants less motion draws the move by hand or steps through it: nothing plays', async ({
  page,
}) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  const { slider, said, nearest } = await openMove(page);
  await expect(said).toHaveText(nearest);
  await expect(page.getByRole('button', { name: 'Play' })).toHaveCount(0);
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(slider).toHaveValue('0');
  const step = page.getByRole('button', { name: 'Step through the move' });
  await step.click();
  await expect(slider).not.toHaveValue('0');
  const stepped = await slider.inputValue();
  await page.waitForTimeout(300);
  await expect(slider).toHaveValue(stepped);
  for (let steps = 0; (await said.textContent()) !== nearest; steps += 1) {
    expect(steps).toBeLessThan(12);
    await step.click();
  }
});

test('a cymbal that comes nearest is swung over the plan and beside it', async ({ page }) => {
  const { row } = await selectMic(page, 'swing');
  const nearest = `Nearest: ${Math.floor(row.clearance)} mm, ${row.verdict}`;
  const said = page.locator('.plan-moment');
  await page.getByRole('button', { name: 'Show the swing' }).click();
  await expect(said).toHaveText(nearest);
  const slider = page.getByRole('slider', { name: 'Moment of the swing' });
  await slider.focus();
  await page.keyboard.press('Home');
  await expect(said).not.toHaveText(nearest);
  expect(Number(/\d+/.exec((await said.textContent()) ?? '')?.[0])).toBeGreaterThan(row.clearance);
  await page.getByRole('radio', { name: 'Front', exact: true }).check();
  await page.getByRole('button', { name: 'Nearest' }).click();
  await expect(said).toHaveText(nearest);
});

test('where a leg at rest comes nearest, it says why there is no move to show', async ({
  page,
}) => {
  await selectMic(page, 'leg');
  await expect(page.getByText('A leg at rest comes nearest: no move to show.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Show the (move|swing)/ })).toHaveCount(0);
});

test('the move does not come back unasked when its mic is chosen again later', async ({ page }) => {
  const { slider, plan } = await openMove(page);
  await expect(slider).toBeVisible();
  await page.getByRole('application', { name: 'Plan of the deck' }).press('Tab');
  await expect(slider).toBeHidden();
  await page.getByRole('application', { name: 'Plan of the deck' }).press('Shift+Tab');
  await expect(plan.spoken).toContainText('mic:');
  await expect(page.getByRole('button', { name: 'Show the move' })).toBeVisible();
  await expect(slider).toBeHidden();
});
