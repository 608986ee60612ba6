import { writeFileSync } from 'node:fs';
import { appIsOpen, keptVersions, readyOffline, versionOf } from './support/offline.ts';
import { expect, test } from './support/test.ts';

test('after one visit the app starts again without a network', async ({ page, startSite }) => {
  const site = await startSite();
  await page.goto(site.address);
  await readyOffline(page);
  site.switchOff();
  await page.reload();
  await appIsOpen(page);
});

test('without a network a new tab opens, and so does the address of any screen (O4)', async ({
  page,
  context,
  startSite,
}) => {
  const site = await startSite();
  await page.goto(site.address);
  await readyOffline(page);
  site.switchOff();
  const second = await context.newPage();
  await second.goto(site.address);
  await appIsOpen(second);
  await second.goto(new URL('layouts/some-id?view=side', site.address).href);
  await appIsOpen(second);
});

test('the second start of the browser on the same profile needs no network', async ({
  startBrowser,
  startSite,
}) => {
  const site = await startSite();
  const firstStart = await startBrowser();
  const page = await firstStart.newPage();
  await page.goto(site.address);
  await readyOffline(page);
  await firstStart.close();
  site.switchOff();
  const secondStart = await startBrowser();
  const again = await secondStart.newPage();
  await again.goto(site.address);
  await appIsOpen(again);
});

test('every file of the build is kept, those of public/ included', async ({ page, startSite }) => {
  const site = await startSite();
  await page.goto(site.address);
  await readyOffline(page);
  site.switchOff();
  const types = await page.evaluate(async () => {
    const answers = await Promise.all(
      ['/manifest.webmanifest', '/icons/mark-512.png'].map((address) => fetch(address)),
    );
    return answers.map((answer) => answer.headers.get('content-type'));
  });
  expect(types).toEqual(['application/manifest+json; charset=utf-8', 'image/png']);
});

test('an install that breaks off keeps nothing, leaves the app working and is made up for (O1)', async ({
  page,
  startSite,
}) => {
  const site = await startSite();
  writeFileSync(site.file('icons/mark-192.png'), 'not what was built');
  await page.goto(site.address);
  await appIsOpen(page);
  await expect.poll(() => keptVersions(page)).toEqual([]);
  await expect
    .poll(() =>
      page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length),
    )
    .toBe(0);
  const version = site.deploy();
  await page.reload();
  await readyOffline(page);
  expect(await keptVersions(page)).toEqual([version]);
});

test('a broken newer version leaves the old one in use, also without a network (O1)', async ({
  page,
  startSite,
}) => {
  const site = await startSite();
  await page.goto(site.address);
  await readyOffline(page);
  const old = await versionOf(page);
  site.deploy({ 'assets/late.js': 'export const late = 2;' });
  writeFileSync(site.file('assets/late.js'), 'export const late = 3;');
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    const { installing } = await registration.update();
    await new Promise((done) => installing?.addEventListener('statechange', done, { once: true }));
  });
  site.switchOff();
  await page.reload();
  await appIsOpen(page);
  expect(await versionOf(page)).toBe(old);
  expect(await keptVersions(page)).toEqual([old]);
});
