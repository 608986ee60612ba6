import type { Page } from '@playwright/test';
import type { StandMount } from '../src/layout/mics/mount.ts';
import { closeLayout, savedSign, startLayout } from './support/layouts.ts';
import { Fingers, type OpenPlan, openPlan, spotOn } from './support/plan.ts';
import { expect, test } from './support/test.ts';

/** The hi-hat's mic on its stand, and where its tip is on the page. */
function hiHatMic(plan: OpenPlan) {
  const mount = plan.layout.mics.find(({ name }) => name === 'Hi-hat')?.mount;
  if (mount?.kind !== 'stand') throw new Error('expected the hi-hat mic on a stand');
  return { mount, tip: plan.kit(mount.tip) };
}

/** Drags the hi-hat's mic and stays on the glass. */
async function startDrag(page: Page) {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const { mount, tip } = hiHatMic(plan);
  await fingers.slide(tip, { x: tip.x + 60, y: tip.y + 20 });
  await expect(savedSign(page)).not.toHaveText(/^Saved/);
  return { plan, fingers, mount, tip };
}

async function expectUnmoved(page: Page, plan: OpenPlan, mount: StandMount): Promise<void> {
  const mic = (await plan.now()).mics.find(({ name }) => name === 'Hi-hat');
  expect(mic?.mount).toEqual(mount);
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
}

test('Back in the middle of a drag takes the drag back, and it is not stored', async ({ page }) => {
  const { plan, fingers, mount } = await startDrag(page);
  await page.goBack();
  await expect(plan.surface).toHaveCount(0);
  await fingers.up();
  await page.goForward();
  await expect(plan.surface).toBeVisible();
  await expectUnmoved(page, plan, mount);
});

test('the list, another page or a hidden tab in the middle of a drag takes it back', async ({
  page,
}) => {
  const { plan, fingers, mount, tip } = await startDrag(page);
  await page
    .getByRole('button', { name: /Pages/ })
    .evaluate((button: HTMLElement) => button.click());
  await page
    .getByRole('button', { name: /^Set up/ })
    .first()
    .evaluate((button: HTMLElement) => button.click());
  await expect(plan.surface).toHaveCount(0);
  await fingers.up();
  await page.goBack();
  await expectUnmoved(page, plan, mount);
  await fingers.slide(tip, { x: tip.x + 60, y: tip.y + 20 });
  await page.evaluate(() => {
    Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
    Reflect.deleteProperty(document, 'visibilityState');
  });
  await fingers.up();
  await expectUnmoved(page, plan, mount);
  await fingers.slide(tip, { x: tip.x + 60, y: tip.y + 20 });
  await page
    .getByRole('radio', { name: 'Front', exact: true })
    .evaluate((radio: HTMLElement) => radio.click());
  await fingers.up();
  await expectUnmoved(page, plan, mount);
  await closeLayout(page);
});

test('a second finger takes a drag back, and that is said for a moment', async ({ page }) => {
  const { plan, fingers, mount, tip } = await startDrag(page);
  const at = { x: tip.x + 60, y: tip.y + 20 };
  const note = page.locator('.plan-legends', { hasText: 'a second finger came down' });
  await expect(note).toHaveCount(0);
  await fingers.down(at, { x: at.x + 120, y: at.y + 60 });
  await expect(note).toBeVisible();
  await expect(plan.spoken).toHaveText('Move taken back: a second finger came down');
  await fingers.up();
  await expectUnmoved(page, plan, mount);
  await expect(note).toHaveCount(0);
  await expect(plan.spoken).toContainText('Hi-hat, mic');
});

test('a tablet that is turned in the middle of a drag takes it back, and that is said', async ({
  page,
}) => {
  const { plan, fingers, mount, tip } = await startDrag(page);
  await page.setViewportSize({ width: 820, height: 1180 });
  // A browser without a tablet's sensor changes its size and says nothing of being turned.
  await page.evaluate(() => screen.orientation.dispatchEvent(new Event('change')));
  await expect(plan.spoken).toHaveText('Move taken back: the tablet was turned');
  await fingers.move({ x: tip.x + 90, y: tip.y + 40 });
  await fingers.up();
  await expectUnmoved(page, plan, mount);
});

test('a drag goes on whole while another finger holds a step button, and each is a step of its own', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const { tip } = hiHatMic(plan);
  await page.touchscreen.tap(tip.x, tip.y);
  const more = page.getByRole('button', { name: 'Height of the tip, more' });
  await more.scrollIntoViewIfNeeded();
  const box = await more.boundingBox();
  if (!box) throw new Error('expected the step button on the page');
  const button = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const from = plan.kit(spotOn(plan, 'ride'));
  await fingers.down(button);
  await expect(page.getByRole('button', { name: /^Undo/ })).toBeDisabled();
  await fingers.down(button, from);
  for (const far of [20, 40, 60]) await fingers.move(button, { x: from.x, y: from.y + far });
  await expect(plan.spoken).toContainText('Ride');
  await fingers.move(button, { x: from.x, y: from.y + 90 });
  await fingers.up();
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName(/Move Ride/);
  const [before, moved] = [plan.layout, await plan.now()].flatMap(({ pieces }) =>
    pieces.flatMap((piece) => (piece.kind === 'ride' ? [{ x: piece.x, y: piece.y }] : [])),
  );
  if (!moved || !before) throw new Error('expected the ride');
  expect(Math.hypot(moved.x - before.x, moved.y - before.y)).toBeGreaterThan(80 / plan.scale);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect(page.getByRole('button', { name: /^Undo/ })).toHaveAccessibleName(/Hi-hat/);
});

test('what another tap would mean is not said once a tap went elsewhere or the view moved', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const again = page.locator('.plan-legends', { hasText: /\d of \d here\. Tap again/ });
  const { x, y } = plan.kit(spotOn(plan, 'ride'));
  await page.touchscreen.tap(x, y);
  await expect(again).toBeVisible();
  await page.getByRole('tab', { name: 'Cables' }).tap();
  await expect(again).toHaveCount(0);
  await page.touchscreen.tap(x, y);
  await expect(again).toBeVisible();
  await page.getByRole('button', { name: 'Zoom in' }).tap();
  await expect(again).toHaveCount(0);
});

test('a double tap on a piece to add does not go on into its numbers', async ({ page }) => {
  await startLayout(page);
  await page.getByRole('tab', { name: 'Kit' }).click();
  const crash = page.getByRole('button', { name: 'Crash', exact: true });
  await crash.scrollIntoViewIfNeeded();
  const box = await crash.boundingBox();
  if (!box) throw new Error('expected the button on the page');
  // Wherever it lands in the new view, the second tap is not taken.
  await page.evaluate(
    ({ x, y }) => {
      const first = performance.now();
      // The fingers' own times, 200 ms apart, however long the page takes to draw.
      const press = (timeStamp: number) => {
        const target = document.elementFromPoint(x, y) ?? document.body;
        const options = { bubbles: true, cancelable: true, detail: 1, clientX: x, clientY: y };
        const down = new PointerEvent('pointerdown', options);
        const click = new MouseEvent('click', options);
        for (const event of [down, click]) {
          Object.defineProperty(event, 'timeStamp', { value: timeStamp });
        }
        const isTaken = target.dispatchEvent(down);
        target.dispatchEvent(click);
        return isTaken;
      };
      press(first);
      return new Promise<void>((done) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() => {
            document.body.dataset['second'] = String(press(first + 200));
            done();
          }),
        ),
      );
    },
    { x: box.x + box.width / 2, y: box.y + box.height / 2 },
  );
  await expect(page.locator('.details-title')).toContainText('Crash');
  await expect(page.locator('body')).toHaveAttribute('data-second', 'false');
  await expect(page.getByRole('button', { name: /^Undo: Add crash/ })).toBeVisible();
  await page.getByLabel('Diameter', { exact: true }).tap();
  await expect(page.getByLabel('Diameter', { exact: true })).toBeFocused();
});

test('a mic that was selected by its finding keeps a way to its numbers in every section', async ({
  page,
}) => {
  await startLayout(page);
  const line = page.getByRole('button', { name: /^Hi-hat mic/ });
  await line.click();
  await expect(line).toHaveAttribute('aria-expanded', 'true');
  const bar = page.locator('.selected-bar');
  await expect(bar).toHaveCount(0);
  await page.getByRole('tab', { name: 'Cables' }).click();
  await expect(bar).toContainText('Hi-hat');
  await page.getByRole('tab', { name: /^Findings/ }).click();
  await expect(line).toHaveAttribute('aria-expanded', 'true');
  await expect(line).toBeInViewport();
});
