import { moveMic } from '../src/layout/edit/mics.ts';
import { closeLayout, importText } from './support/layouts.ts';
import { openPlan } from './support/plan.ts';
import { expect, test } from './support/test.ts';

test('a mic that a mistyped number put 15 m away is pointed to at the edge of the plan, and one tap shows it @portrait', async ({
  page,
}) => {
  const plan = await openPlan(page);
  await expect(page.getByRole('button', { name: /off the view$/ })).toHaveCount(0);
  const mic = plan.layout.mics.find(
    ({ mount, hears }) => mount.kind === 'stand' && hears.length === 1,
  );
  if (!mic) throw new Error('expected a mic on a stand');
  const away = { ...moveMic(plan.layout, mic.id, { x: 15_000, y: 0 }), name: 'Mistyped' };
  await closeLayout(page);
  await importText(page, 'mistyped.json', JSON.stringify(away));
  await page
    .getByRole('button', { name: /^Mistyped/ })
    .first()
    .click();
  const pointer = page.getByRole('button', { name: /mic is off the view$/ });
  await expect(pointer).toBeVisible();
  await expect(page.getByText(/is far from what it hears/).first()).toBeVisible();
  await pointer.click();
  await expect(pointer).toHaveCount(0);
  // It is in view now: selected by its finding nothing needs to be moved, and still nothing is off the view.
  await page
    .getByText(/is far from what it hears/)
    .first()
    .click();
  await expect(plan.spoken).toContainText(`${mic.name}, mic`);
  await expect(page.getByRole('button', { name: /off the view$/ })).toHaveCount(0);
});
