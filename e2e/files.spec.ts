import {
  closeLayout,
  downloaded,
  importText,
  listed,
  nameOf,
  renameAndSave,
  startLayout,
} from './support/layouts.ts';
import { expect, test } from './support/test.ts';

test('a layout is exported to a file and imported back as a layout of its own', async ({
  page,
}) => {
  await startLayout(page);
  await renameAndSave(page, 'Summer/tour: day 1');
  const file = await downloaded(page, page.getByRole('button', { name: 'Export', exact: true }));
  expect(file.name).toBe('Summer-tour - day 1.json');
  await closeLayout(page);
  await importText(page, file.name, file.text);
  await expect(listed(page)).toHaveText(['Summer/tour: day 1 (copy)', 'Summer/tour: day 1']);
  await listed(page).first().click();
  await expect(nameOf(page)).toContainText('Summer/tour: day 1');
  const again = await downloaded(page, page.getByRole('button', { name: 'Export', exact: true }));
  const { id: before, ...exported } = JSON.parse(file.text);
  const { id: after, ...imported } = JSON.parse(again.text);
  expect(imported).toEqual({ ...exported, name: 'Summer/tour: day 1 (copy)' });
  expect(after).not.toBe(before);
});

test('names with markup stay text', async ({ page }) => {
  await startLayout(page);
  const name = '<img src=x onerror=alert(1)><b>Hall</b>';
  await renameAndSave(page, name);
  await closeLayout(page);
  await expect(listed(page)).toHaveText([name]);
  expect(await page.locator('img, .layout-name b').count()).toBe(0);
});

test('a bad file is refused with the path and what was expected, and changes nothing', async ({
  page,
}) => {
  await startLayout(page);
  const { text } = await downloaded(
    page,
    page.getByRole('button', { name: 'Export', exact: true }),
  );
  await closeLayout(page);
  const good = JSON.parse(text);
  const [first, ...rest] = good.pieces;
  const clip = good.mics.find((mic: { mount: { kind: string } }) => mic.mount.kind === 'clip');
  const bad: readonly (readonly [what: string, text: string, said: RegExp])[] = [
    ['not JSON', 'once upon a time', /expected JSON/],
    ['newer', JSON.stringify({ ...good, schema: 99 }), /schema.*newer version/],
    ['missing', JSON.stringify({ ...good, deck: undefined }), /deck.*found nothing/],
    ['extra', JSON.stringify({ ...good, colour: 'red' }), /colour/],
    ['wrong type', JSON.stringify({ ...good, margin: 'wide' }), /margin.*found "wide"/],
    ['not finite', text.replace(/"margin": \d+/, '"margin": 1e999'), /margin.*finite/],
    [
      'drum of 0',
      JSON.stringify({ ...good, pieces: [{ ...first, diameter: 0 }, ...rest] }),
      /pieces\[0\].diameter/,
    ],
    [
      'drum of 20 m',
      JSON.stringify({ ...good, pieces: [{ ...first, diameter: 20_000 }, ...rest] }),
      /pieces\[0\].diameter/,
    ],
    [
      '10,000 pieces',
      JSON.stringify({ ...good, pieces: Array(10_000).fill(first) }),
      /pieces.*at most 80/,
    ],
    [
      'an id twice',
      JSON.stringify({ ...good, pieces: [...good.pieces, first] }),
      /pieces\[\d+\].id/,
    ],
    [
      'a clip on nothing',
      JSON.stringify({ ...good, mics: [{ ...clip, mount: { ...clip.mount, drum: 'gone' } }] }),
      /mics\[0\].mount.drum/,
    ],
    ['a name of 1 MB', JSON.stringify({ ...good, name: 'x'.repeat(1_000_000) }), /name.*80/],
    ['hostile keys', text.replace('{', '{"__proto__": {"polluted": 1},'), /__proto__/],
    ['too large', `${text}${' '.repeat(8_000_000)}`, /at most 8000000 bytes/],
  ];
  for (const [what, content, said] of bad) {
    await test.step(what, async () => {
      await importText(page, `${what}.json`, content);
      const dialog = page.getByRole('dialog');
      await expect(dialog).toContainText('Nothing was changed');
      await expect(dialog).toContainText(said);
      await dialog.locator('.dialog-foot').getByRole('button', { name: 'Close' }).click();
      await expect(dialog).toHaveCount(0);
      await expect(listed(page)).toHaveCount(1);
    });
  }
  expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
});
