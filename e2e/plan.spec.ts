import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import { hitsAt } from '../src/editor/pick/pick.ts';
import { pickablesOf } from '../src/editor/pick/pickables.ts';
import { handlesOf } from '../src/editor/tools/handles.ts';
import { kitToScreen } from '../src/editor/view/kitView.ts';
import { zoomed } from '../src/editor/view/view.ts';
import type { Layout } from '../src/layout/layout.ts';
import type { StandMount } from '../src/layout/mics/mount.ts';
import { createAnalyst } from '../src/report/analyse.ts';
import { buildRig } from '../src/rig/buildRig.ts';
import { placeMic } from '../src/rig/placeMic.ts';
import { Fingers, type OpenPlan, openPlan, spotOn } from './support/plan.ts';
import { expect, test } from './support/test.ts';

const undo = { name: /^Undo/ };

const pieceIn = (layout: Layout, id: string) => {
  const piece = layout.pieces.find((one) => one.id === id);
  if (!piece || !('x' in piece)) throw new Error(`expected the piece ${id}`);
  return piece;
};

function standIn(layout: Layout, name: string): StandMount {
  const mount = layout.mics.find((mic) => mic.name === name)?.mount;
  if (mount?.kind !== 'stand') throw new Error(`expected ${name} on a stand`);
  return mount;
}

const xy = ({ x, y }: { readonly x: number; readonly y: number }): [number, number] => [x, y];

/** A handle of a selected piece on the page, with the direction away from the piece. */
function handleOf(plan: OpenPlan, id: string, kind: string) {
  const selection = { kind: 'piece', id } as const;
  const handles = handlesOf(plan.layout, buildRig(plan.layout), selection, plan.view);
  const handle = handles.find((one) => one.kind === kind);
  if (!handle) throw new Error(`expected a handle to ${kind} ${id}`);
  const middle = plan.kit(pieceIn(plan.layout, id));
  const at = plan.page(handle.at);
  const away = Math.hypot(at.x - middle.x, at.y - middle.y);
  return { ...at, outX: (at.x - middle.x) / away, outY: (at.y - middle.y) / away };
}

test('a tap selects, a tap on the same spot selects what lies below, a tap on nothing lets go', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const tap = async (spot: { x: number; y: number }) => page.touchscreen.tap(spot.x, spot.y);
  const { x, y } = plan.kit(spotOn(plan, 'ride'));
  await tap({ x, y });
  await expect(plan.spoken).toContainText('Ride');
  await tap({ x: x + 2, y });
  await expect(plan.spoken).not.toContainText('Ride');
  await expect(plan.spoken).not.toContainText('Nothing');
  const { width, depth } = plan.layout.deck;
  await tap(plan.deck({ x: width / 2 - 250, y: depth / 2 - 250 }));
  await expect(plan.spoken).toHaveText('Nothing selected');
});

test('a finger drags a piece, its clip follows, and one undo takes it back @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const before = pieceIn(plan.layout, 'floor-2');
  const from = plan.kit(spotOn(plan, before.id));
  await fingers.drag(from, { x: from.x - 30, y: from.y - 40 });
  const moved = await plan.now();
  const after = pieceIn(moved, 'floor-2');
  // For the house the screen's left is the player's right, and up the screen is away from the audience.
  expect(after.x - before.x).toBeCloseTo(30 / plan.scale, 0);
  expect(after.y - before.y).toBeCloseTo(-40 / plan.scale, 0);
  expect(moved.mics).toEqual(plan.layout.mics);
  await expect(plan.spoken).toContainText(before.name);
  await page.getByRole('button', undo).click();
  expect(pieceIn(await plan.now(), 'floor-2')).toEqual(before);
  await expect(page.getByRole('button', undo)).toBeDisabled();
});

/** A spot where a cymbal hides a base or a cable on the floor, and which cymbal. */
function hiddenFloor({ layout, scale }: OpenPlan) {
  const pickables = pickablesOf(layout, createAnalyst()(layout), true);
  const floor = pickables.filter(({ isOnFloor }) => isOnFloor);
  for (const { outline } of floor) {
    if (outline.kind !== 'line') continue;
    for (const share of [0, 0.25, 0.5, 0.75, 1]) {
      const spot = {
        x: outline.a.x + share * (outline.b.x - outline.a.x),
        y: outline.a.y + share * (outline.b.y - outline.a.y),
      };
      const [first, second] = hitsAt(pickables, spot, scale);
      if (first?.pickable.selection.kind === 'piece' && second?.pickable.isOnFloor) {
        return { spot, id: first.pickable.selection.id };
      }
    }
  }
  throw new Error('expected something on the floor below a cymbal or drum');
}

test('a finger on a cymbal takes the cymbal, not the base or cable that it hides; tapping again is said and goes below @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const { spot, id } = hiddenFloor(plan);
  const before = pieceIn(plan.layout, id);
  const at = plan.kit(spot);
  await fingers.drag(at, { x: at.x + 20, y: at.y + 30 });
  const after = await plan.now();
  expect(pieceIn(after, id).x - before.x).toBeCloseTo(-20 / plan.scale, 0);
  expect(pieceIn(after, id).y - before.y).toBeCloseTo(30 / plan.scale, 0);
  expect(after.mics.map(({ mount }) => (mount.kind === 'stand' ? mount.base : null))).toEqual(
    plan.layout.mics.map(({ mount }) => (mount.kind === 'stand' ? mount.base : null)),
  );
  await page.getByRole('button', undo).click();
  await page.touchscreen.tap(...xy(at));
  await expect(plan.spoken).toContainText(before.name);
  const again = page.locator('.plan-legends', { hasText: /^1 of \d here. Tap again: / });
  await expect(again).toBeVisible();
  const next = ((await again.textContent()) ?? '')
    .replace(/^.*Tap again: /, '')
    .replace(/ mic$/, '');
  await page.touchscreen.tap(...xy(at));
  await expect(plan.spoken).toContainText(next);
  await expect(page.locator('.plan-legends')).toContainText(/2 of \d here/);
});

test('a stand mic is dragged by its tip and its base stays, and the other way round', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const before = standIn(plan.layout, 'Hi-hat');
  const tip = plan.kit(before.tip);
  await fingers.drag(tip, { x: tip.x + 35, y: tip.y + 10 });
  const byTip = standIn(await plan.now(), 'Hi-hat');
  expect(byTip.base).toEqual(before.base);
  expect(byTip.tip.x - before.tip.x).toBeCloseTo(-35 / plan.scale, 0);
  expect(byTip.tip.y - before.tip.y).toBeCloseTo(10 / plan.scale, 0);
  const base = plan.kit(before.base);
  await fingers.drag(base, { x: base.x + 25, y: base.y - 25 });
  const byBase = standIn(await plan.now(), 'Hi-hat');
  expect(byBase.tip).toEqual(byTip.tip);
  expect(byBase.base.x - before.base.x).toBeCloseTo(-25 / plan.scale, 0);
  await page.getByRole('button', undo).click();
  await page.getByRole('button', undo).click();
  expect((await plan.now()).mics).toEqual(plan.layout.mics);
});

/** Drags the hi-hat's mic, and holds it there until the panel says what it is there. */
async function holdMic(page: Page) {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const tip = plan.kit(standIn(plan.layout, 'Hi-hat').tip);
  await page.touchscreen.tap(...xy(tip));
  const amount = page.locator('.verdict-number');
  const before = await amount.textContent();
  await fingers.slide(tip, { x: tip.x + 35, y: tip.y + 10 });
  await expect(amount).not.toHaveText(before ?? '');
  let held: string | null = null;
  await expect
    .poll(async () => {
      const last = held;
      held = await amount.textContent();
      return held === last;
    })
    .toBe(true);
  return { fingers, amount, held: held ?? '' };
}

test('while a finger holds what it dragged, it is answered as when it lets go', async ({
  page,
}) => {
  const { fingers, amount, held } = await holdMic(page);
  await fingers.up();
  await expect(page.getByRole('button', undo)).toBeEnabled();
  await expect(amount).toHaveText(held);
});

test('where answers can’t be worked out beside the page, it says so and works them out itself', async ({
  page,
}) => {
  await page.addInitScript(() => {
    const Started = Worker;
    window.Worker = class extends Started {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        if (options?.name !== 'answers') return;
        this.terminate();
        setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'it is gone' })));
      }
    };
  });
  const { fingers, amount, held } = await holdMic(page);
  await expect(page.getByText('Answers can’t be worked out beside the page')).toBeVisible();
  await fingers.up();
  await expect(amount).toHaveText(held);
});

test('a clip goes round its rim, and a handle leans a cymbal', async ({ page }) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const clipOf = (layout: Layout) => {
    const mic = layout.mics.find(({ name }) => name === 'Floor tom 2');
    if (mic?.mount.kind !== 'clip') throw new Error('expected a clip on floor tom 2');
    return { mic, mount: mic.mount };
  };
  const { mic, mount } = clipOf(plan.layout);
  const tip = plan.kit(placeMic(mic, plan.layout).tip);
  await fingers.drag(tip, { x: tip.x + 14, y: tip.y + 22 });
  const moved = clipOf(await plan.now()).mount;
  expect(moved.drum).toBe(mount.drum);
  expect(moved.height).toBeCloseTo(mount.height, 3);
  expect(Math.abs(moved.angle - mount.angle)).toBeGreaterThan(5);
  const crash = pieceIn(plan.layout, 'crash-2');
  if (crash.kind !== 'crash') throw new Error('expected a crash');
  await page.touchscreen.tap(...xy(plan.kit(spotOn(plan, crash.id))));
  await expect(plan.spoken).toContainText('Crash 2');
  const lean = handleOf(plan, crash.id, 'lean');
  await fingers.drag(lean, { x: lean.x + lean.outX * 45, y: lean.y + lean.outY * 45 });
  const leaned = pieceIn(await plan.now(), 'crash-2');
  expect('tilt' in leaned ? leaned.tilt : 0).toBeGreaterThan(crash.tilt + 20);
  expect(leaned).toMatchObject({ x: crash.x, y: crash.y });
  await page.getByRole('button', undo).click();
  expect(pieceIn(await plan.now(), 'crash-2')).toEqual(crash);
});

test('the box is dragged, and its cables with it', async ({ page }) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const box = plan.deck(plan.layout.box);
  await fingers.drag(box, { x: box.x - 20, y: box.y + 50 });
  const after = (await plan.now()).box;
  expect(after.x - plan.layout.box.x).toBeCloseTo(20 / plan.scale, 0);
  expect(after.y - plan.layout.box.y).toBeCloseTo(50 / plan.scale, 0);
  await page.getByRole('button', undo).click();
  expect((await plan.now()).box).toEqual(plan.layout.box);
});

test('the verdict changes while the mic is dragged, and a second finger takes the drag back', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const before = standIn(plan.layout, 'Snare');
  const tip = plan.kit(before.tip);
  await page.touchscreen.tap(tip.x, tip.y);
  await expect(plan.spoken).toContainText(/^Snare, mic: clear/);
  // Over the player's edge of the snare, where the sticks are.
  const snare = plan.kit({ x: pieceIn(plan.layout, 'snare').x, y: 330 });
  await fingers.slide(tip, snare, 10);
  await expect(plan.spoken).toContainText(/^Snare, mic: struck, −\d+ mm/);
  await fingers.down(snare, { x: snare.x + 120, y: snare.y });
  await fingers.up();
  await expect(plan.spoken).toContainText(/^Snare, mic: clear/);
  expect((await plan.now()).mics).toEqual(plan.layout.mics);
  await expect(page.getByRole('button', undo)).toBeDisabled();
});

test('Escape takes a drag back', async ({ page }) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const from = plan.kit(spotOn(plan, 'snare'));
  await plan.surface.focus();
  await fingers.slide(from, { x: from.x + 40, y: from.y });
  await expect(plan.spoken).toContainText('Snare');
  await page.keyboard.press('Escape');
  await fingers.up();
  expect((await plan.now()).pieces).toEqual(plan.layout.pieces);
});

test('keys do what fingers do: go to a thing, nudge, turn, lean, raise, remove', async ({
  page,
}) => {
  const plan = await openPlan(page);
  await plan.surface.focus();
  await page.keyboard.press('Tab');
  await expect(plan.spoken).toContainText(plan.layout.mics[0]?.name ?? '');
  const before = pieceIn(plan.layout, 'crash-1');
  const { x, y } = plan.kit(spotOn(plan, before.id));
  await page.touchscreen.tap(x, y);
  await expect(plan.spoken).toContainText('Crash 1');
  // The house's right is the player's left.
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowDown');
  await page.keyboard.press('Alt+ArrowLeft');
  await page.keyboard.press('PageUp');
  await page.keyboard.press(']');
  await page.keyboard.press('.');
  const after = pieceIn(await plan.now(), 'crash-1');
  const { tilt = 0, tiltToward = 0, z = 0 } = 'tilt' in before ? before : {};
  expect(after).toMatchObject({
    x: before.x - 10 + 50,
    y: before.y + 1,
    z: z + 10,
    tilt: tilt + 5,
    tiltToward: tiltToward - 5,
  });
  for (let step = 0; step < 6; step += 1) {
    await page.getByRole('button', undo).click();
  }
  expect(pieceIn(await plan.now(), 'crash-1')).toEqual(before);
  await plan.surface.focus();
  await page.keyboard.press('Delete');
  expect((await plan.now()).pieces.some(({ id }) => id === 'crash-1')).toBe(false);
  await page.getByRole('button', undo).click();
  expect((await plan.now()).pieces).toEqual(plan.layout.pieces);
});

test('a key that is held is one undo step', async ({ page }) => {
  const plan = await openPlan(page);
  const { x, y } = plan.deck(plan.layout.box);
  await page.touchscreen.tap(x, y);
  await plan.surface.focus();
  for (let repeat = 0; repeat < 5; repeat += 1) await page.keyboard.down('ArrowDown');
  await page.keyboard.up('ArrowDown');
  expect((await plan.now()).box.y).toBe(plan.layout.box.y + 50);
  await page.getByRole('button', undo).click();
  expect((await plan.now()).box).toEqual(plan.layout.box);
});

test('two fingers zoom, one pans the empty deck, and the fit brings it all back @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const ride = plan.kit(spotOn(plan, 'ride'));
  const { width, depth } = plan.layout.deck;
  const empty = plan.deck({ x: width / 2 - 250, y: depth / 2 - 250 });
  await fingers.drag(empty, { x: empty.x + 60, y: empty.y - 45 });
  await page.touchscreen.tap(ride.x + 60, ride.y - 45);
  await expect(plan.spoken).toContainText('Ride');
  await page.getByRole('button', { name: 'Show the whole deck' }).click();
  const box = await plan.surface.boundingBox();
  if (!box) throw new Error('expected the plan on the page');
  // The spot between two fingers that spread stays where it is: a ride of 20 in is twice as large.
  const middle = plan.kit(pieceIn(plan.layout, 'ride'));
  await fingers.down({ x: middle.x - 40, y: middle.y }, { x: middle.x + 40, y: middle.y });
  await fingers.move({ x: middle.x - 80, y: middle.y }, { x: middle.x + 80, y: middle.y });
  await fingers.up();
  await page.touchscreen.tap(middle.x - 254 * plan.scale * 1.8, middle.y);
  await expect(plan.spoken).toContainText('Ride');
  expect((await plan.now()).pieces).toEqual(plan.layout.pieces);
});

test('a tap in the same instant as the end of a pan means what lies under it', async ({ page }) => {
  const plan = await openPlan(page);
  const { width, depth } = plan.layout.deck;
  const empty = plan.deck({ x: width / 2 - 250, y: depth / 2 - 250 });
  const by = { x: 90, y: -70 };
  const ride = plan.kit(spotOn(plan, 'ride'));
  // One task of the page holds it all, so nothing is drawn in between.
  await plan.surface.evaluate(
    (surface, { start, end, tap }) => {
      // A made-up pointer can't be captured.
      surface.setPointerCapture = () => undefined;
      const send = (type: string, at: { x: number; y: number }) =>
        surface.dispatchEvent(
          new PointerEvent(type, {
            bubbles: true,
            pointerId: 1,
            pointerType: 'touch',
            clientX: at.x,
            clientY: at.y,
          }),
        );
      send('pointerdown', start);
      send('pointermove', end);
      send('pointerup', end);
      send('pointerdown', tap);
      send('pointerup', tap);
    },
    {
      start: empty,
      end: { x: empty.x + by.x, y: empty.y + by.y },
      tap: { x: ride.x + by.x, y: ride.y + by.y },
    },
  );
  await expect(plan.spoken).toContainText('Ride');
});

test('the plan has no accessibility fault that a machine can find, in either theme @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const tip = plan.kit(standIn(plan.layout, 'Snare').tip);
  await page.touchscreen.tap(tip.x, tip.y);
  await expect(plan.spoken).toContainText('Snare');
  for (const theme of ['Light', 'Dark']) {
    const { violations } = await new AxeBuilder({ page }).include('.plan').analyze();
    expect(violations).toEqual([]);
    await page.getByRole('button', { name: theme }).click();
  }
});

test('a drum’s own panel says what its drag does to cables, while it is dragged and after @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  await page.getByRole('tab', { name: 'Kit' }).click();
  await page.locator('.line-name').getByText('Rack tom', { exact: true }).click();
  const news = page.locator('.run-news');
  await expect(news).toBeEmpty();
  const fingers = await Fingers.on(page);
  const from = spotOn(plan, 'rack');
  const { x, y } = pieceIn(plan.layout, 'rack');
  // To the player's right, beside the throne.
  await fingers.slide(plan.kit(from), plan.kit({ x: from.x - x + 300, y: from.y - y }));
  await expect(news).toHaveText(/^Cables: Rack tom mic outgrows 5 m, now/);
  await fingers.up();
  await expect(news).toHaveText('Cables: Rack tom mic outgrows 5 m, now 7.5 m cable.');
  await page.getByRole('button', undo).click();
  await expect(news).toBeEmpty();
});

test('the step of a mic is told from that of the drum with its name', async ({ page }) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const snare = plan.kit(spotOn(plan, 'snare'));
  await fingers.drag(snare, { x: snare.x + 12, y: snare.y });
  await expect(page.getByRole('button', undo)).toHaveAccessibleName('Undo: Move Snare');
  await page.getByRole('button', undo).click();
  await page.getByRole('tab', { name: 'Mics' }).click();
  await page.locator('.line-name').getByText('Snare', { exact: true }).click();
  const tip = plan.kit(standIn(plan.layout, 'Snare').tip);
  await fingers.drag(tip, { x: tip.x + 12, y: tip.y + 6 });
  await expect(page.getByRole('button', undo)).toHaveAccessibleName('Undo: Move Snare mic');
  await page.getByRole('button', { name: 'Height of the tip, more' }).click();
  await expect(page.getByRole('button', undo)).toHaveAccessibleName('Undo: Height of Snare mic');
});

test('zooming out stops where the deck takes a third of the drawing @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const out = page.getByRole('button', { name: 'Zoom out' });
  for (let step = 0; step < 12; step += 1) await out.click();
  const { size } = plan.view.view;
  const far = zoomed(plan.view.view, 1 / 3, { x: size.width / 2, y: size.height / 2 });
  const spot = { view: far, deck: plan.layout.deck };
  const { x, y } = plan.page(kitToScreen(spot, pieceIn(plan.layout, 'floor-2')));
  await page.touchscreen.tap(x, y);
  await expect(plan.spoken).toContainText('Floor tom 2');
});
