import AxeBuilder from '@axe-core/playwright';
import { placeMic } from '../src/rig/placeMic.ts';
import { openElevation } from './support/elevation.ts';
import { Fingers, openPlan } from './support/plan.ts';
import { expect, test } from './support/test.ts';

const undo = { name: /^Undo/ };

test('in an elevation a finger raises a mic by its tip and its mast by the clutch, and undo takes both back @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  const fingers = await Fingers.on(page);
  const mic = plan.layout.mics.find(({ name }) => name === 'Hi-hat');
  if (mic?.mount.kind !== 'stand') throw new Error('expected a stand');
  const { mount } = mic;
  const front = await openElevation(page, plan, 'front');
  const tip = front.at(mount.tip);
  await page.touchscreen.tap(tip.x, tip.y);
  await expect(plan.spoken).toContainText('Hi-hat');
  await fingers.drag(tip, { x: tip.x + 40, y: tip.y - 30 });
  const raised = (await plan.now()).mics.find(({ id }) => id === mic.id)?.mount;
  if (raised?.kind !== 'stand') throw new Error('expected a stand');
  expect(raised.tip.z - mount.tip.z).toBeCloseTo(30 / front.scale, 0);
  expect(raised).toMatchObject({ base: mount.base, tip: { x: mount.tip.x, y: mount.tip.y } });
  const moved = await plan.now();
  const clutch = placeMic({ ...mic, mount: raised }, moved).stand?.clutch;
  if (!clutch) throw new Error('expected a clutch');
  const at = front.at(clutch);
  await fingers.drag(at, { x: at.x, y: at.y + 25 });
  const lowered = (await plan.now()).mics.find(({ id }) => id === mic.id)?.mount;
  expect(lowered).toMatchObject({ tip: raised.tip });
  expect(lowered).not.toMatchObject({ mast: raised.mast });
  await page.getByRole('button', undo).click();
  await page.getByRole('button', undo).click();
  expect((await plan.now()).mics).toEqual(plan.layout.mics);
});

test('beside the plan an elevation shows the same selection, and keys raise what is selected', async ({
  page,
}) => {
  const plan = await openPlan(page);
  await page.getByRole('radio', { name: 'Plan + side' }).check();
  const both = page.getByRole('application');
  await expect(both).toHaveCount(2);
  const side = page.getByRole('application', { name: 'Side elevation' });
  await side.focus();
  const snare = plan.layout.pieces.find(({ kind }) => kind === 'snare');
  if (snare?.kind !== 'snare') throw new Error('expected a snare');
  for (let press = 0; press < 40; press += 1) {
    const said = (await plan.spoken.textContent()) ?? '';
    if (said.startsWith(`${snare.name}, at`)) break;
    await page.keyboard.press('Tab');
    // What is selected is said once it has stood still.
    await expect(plan.spoken).not.toHaveText(said);
  }
  await expect(plan.spoken).toContainText(`${snare.name}, at`);
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('ArrowRight');
  const after = (await plan.now()).pieces.find(({ id }) => id === snare.id);
  // From the player's right the screen's right is forward.
  expect(after).toMatchObject({ x: snare.x, y: snare.y + 10, z: snare.z + 11 });
  const found = await new AxeBuilder({ page }).include('.plan').analyze();
  expect(found.violations).toEqual([]);
  await page.reload();
  await expect(page.getByRole('application')).toHaveCount(2);
});

test('whose back is seen is said; what only the plan draws is not offered beside an elevation alone', async ({
  page,
}) => {
  await openPlan(page);
  const zone = page.getByRole('checkbox', { name: 'Struck zone' });
  const floor = page.getByRole('checkbox', { name: 'Stick floor' });
  await page.getByRole('radio', { name: 'Player', exact: true }).check();
  await page.getByRole('radio', { name: 'Plan + back' }).check();
  await expect(page.getByRole('application', { name: 'Rear elevation' })).toBeVisible();
  await expect(zone).toBeEnabled();
  await page.getByRole('radio', { name: 'Back', exact: true }).check();
  await expect(zone).toBeDisabled();
  await expect(floor).toBeDisabled();
  await page.getByRole('radio', { name: 'Audience' }).check();
  await expect(page.getByRole('application', { name: 'Front elevation' })).toBeVisible();
  await page.getByRole('radio', { name: 'Plan', exact: true }).check();
  await expect(floor).toBeEnabled();
});
