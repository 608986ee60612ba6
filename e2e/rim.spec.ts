import { clearEnds } from '../src/editor/rim/arcs.ts';
import { besideRim, RING_OUT } from '../src/editor/rim/rimLine.ts';
import { along } from '../src/geometry/vector.ts';
import type { Layout } from '../src/layout/layout.ts';
import { plannedRing, withPlanned } from '../src/report/plannedRing.ts';
import { clipIn, placeOnRing, ringOf } from '../src/report/ring.ts';
import { placeMic } from '../src/rig/placeMic.ts';
import { rimDirection } from '../src/rig/rimDirection.ts';
import { surfaceOf } from '../src/rig/surface.ts';
import { turnBetween } from '../src/units/angle.ts';
import { Fingers, type OpenPlan, openPlan, spotOn } from './support/plan.ts';
import { expect, test } from './support/test.ts';

const NAME = 'Floor tom 1';

function clipNamed(layout: Layout, name: string) {
  const id = layout.mics.find((mic) => mic.name === name)?.id ?? '';
  const clip = clipIn(layout, id);
  if (!clip) throw new Error(`expected the clip ${name}`);
  return clip;
}

/** Selects the clip and waits until its ring is there. */
async function withRing(page: Parameters<typeof openPlan>[0]) {
  const plan = await openPlan(page);
  const clip = clipNamed(plan.layout, NAME);
  const tip = plan.kit(placeMic(clip.mic, plan.layout).tip);
  await page.touchscreen.tap(tip.x, tip.y);
  await expect(plan.spoken).toContainText(NAME);
  await expect(page.locator('.plan-spoken').first()).toContainText(/Round the rim.*clear from/);
  return { plan, clip, tip };
}

/** Where the clip's tip would be on the page at another angle of its rim. */
function tipAt(plan: OpenPlan, angle: number) {
  const { drum, mount } = clipNamed(plan.layout, NAME);
  const surface = surfaceOf(drum);
  const inward = along(surface.centre, rimDirection(surface, angle), surface.radius - mount.reach);
  return plan.kit(along(inward, surface.normal, mount.height));
}

test('a tap on the ring tells the clearance there, and the mic can be moved there @portrait', async ({
  page,
}) => {
  const { plan, clip } = await withRing(page);
  const angle = clip.mount.angle + 120;
  const there = placeOnRing(plan.layout, clip.mic.id, angle);
  if (!there) throw new Error('expected a place on the ring');
  const at = plan.kit(besideRim(clip.drum, angle, RING_OUT / plan.scale));
  await page.touchscreen.tap(at.x, at.y);
  const said = page.locator('.plan-card').getByRole('status');
  await expect(said).toContainText(new RegExp(`${NAME} mic at \\d+°, about .*(o'clock|half past)`));
  await expect(said).toContainText(there.verdict);
  await page.getByRole('button', { name: 'Move it there' }).click();
  const moved = clipNamed(await plan.now(), NAME).mount;
  expect(Math.abs(moved.angle - (angle % 360))).toBeLessThan(4);
  expect({ ...moved, angle: clip.mount.angle }).toEqual(clip.mount);
  await expect(said).toBeHidden();
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect(clipNamed(await plan.now(), NAME).mount).toEqual(clip.mount);
});

test('dragged round its rim a clip keeps its reach and rests where it is clear last', async ({
  page,
}) => {
  const { plan, clip, tip } = await withRing(page);
  const fingers = await Fingers.on(page);
  const [end] = clearEnds(ringOf(plan.layout, clip.mic.id)?.arcs ?? []);
  if (end === undefined) throw new Error('expected a clear arc');
  const beside = tipAt(plan, end + 1.5);
  await fingers.slide(tip, beside, 8);
  // The finger cut across the drum: the ring of the reach it ends at comes a moment later, from beside the page.
  await page.waitForTimeout(1500);
  await fingers.move({ x: beside.x + 1, y: beside.y });
  await fingers.up();
  const moved = clipNamed(await plan.now(), NAME).mount;
  expect(moved.angle).toBeCloseTo(end, 3);
  expect(moved.reach).toBe(clip.mount.reach);
  await expect(plan.spoken).toContainText(`${NAME}, mic: clear`);
});

test('a drum without a clip shows the ring of one, and a tap puts it where it is clear @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const snare = plan.layout.pieces.find(({ kind }) => kind === 'snare');
  const ring = snare ? plannedRing(plan.layout, snare.id) : null;
  if (!snare || !ring?.planned) throw new Error('expected a snare without a clip');
  const spot = plan.kit(spotOn(plan, snare.id));
  await page.touchscreen.tap(spot.x, spot.y);
  const card = page.locator('.plan-card');
  await expect(card).toContainText(`No clip mic on ${snare.name} yet`);
  await expect(card).toContainText('Proposed at');
  await expect(card).toContainText(ring.planned.place.verdict);
  const put = card.getByRole('button', { name: 'Put a clip mic here' });
  const box = await put.boundingBox();
  expect(box?.height).toBeGreaterThanOrEqual(44);
  await put.tap();
  const placed = (await plan.now()).mics.at(-1);
  expect(placed).toEqual(ring.planned.mic);
  await expect(card.getByText('No clip mic on')).toBeHidden();
  await page.getByRole('button', { name: /^Undo/ }).click();
  expect((await plan.now()).mics).toEqual(plan.layout.mics);
});

test('the ring of a mic that is not placed yet is asked by a tap, and the mic goes where it was asked', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const snare = plan.layout.pieces.find(({ kind }) => kind === 'snare');
  const ring = snare ? plannedRing(plan.layout, snare.id) : null;
  if (!snare || !ring?.planned) throw new Error('expected a snare without a clip');
  const { mic } = ring.planned;
  const drum = clipIn(withPlanned(plan.layout, ring), mic.id)?.drum;
  if (!drum) throw new Error('expected its drum');
  const spot = plan.kit(spotOn(plan, snare.id));
  await page.touchscreen.tap(spot.x, spot.y);
  const card = page.locator('.plan-card');
  await expect(card).toContainText('Proposed at');
  const angle = mic.mount.angle + 100;
  const at = plan.kit(besideRim(drum, angle, RING_OUT / plan.scale));
  await page.touchscreen.tap(at.x, at.y);
  await expect(card.getByRole('status')).toContainText('Tapped at');
  await card.getByRole('button', { name: 'Put a clip mic here' }).tap();
  const placed = (await plan.now()).mics.at(-1);
  if (placed?.mount.kind !== 'clip') throw new Error('expected a clip');
  expect(placed.mount.drum).toBe(snare.id);
  expect(Math.abs(turnBetween(placed.mount.angle, angle))).toBeLessThan(4);
});

test('the stick floor is drawn when it is asked for; one line says how far it can be trusted, a tap all of it @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  await page.getByLabel('Stick floor').check();
  const legend = page.getByRole('button', { name: 'Stick floor, up to 15 mm too low' });
  await expect(legend).toBeVisible({ timeout: 60_000 });
  expect((await legend.boundingBox())?.height).toBeLessThan(36);
  const all = page.getByText('at or below the true height, by at most 15 mm');
  await expect(all).toBeHidden();
  await legend.tap();
  await expect(all).toBeVisible();
  await legend.tap();
  await expect(all).toBeHidden();
  const snare = plan.layout.pieces.find(({ kind }) => kind === 'snare');
  if (snare?.kind !== 'snare') throw new Error('expected a snare');
  const over = plan.kit(snare);
  await page.touchscreen.tap(over.x, over.y);
  await expect(page.getByText(/^sticks, hands from \d+ mm$/)).toBeVisible();
  await page.getByLabel('Stick floor').uncheck();
  await expect(legend).toBeHidden();
  await expect(page.getByText(/^sticks, hands from/)).toBeHidden();
});
