import { appIsOpen } from './support/offline.ts';
import { expect, test } from './support/test.ts';

test('every response carries the content policy, the service worker included', async ({
  request,
}) => {
  for (const address of ['/', '/serviceWorker.js', '/manifest.webmanifest', '/not/there.js']) {
    const headers = (await request.get(address)).headers();
    expect(headers['content-security-policy'], address).toContain("default-src 'self'");
    expect(headers['content-security-policy'], address).toContain("frame-ancestors 'none'");
    expect(headers['content-security-policy'], address).toContain(
      "require-trusted-types-for 'script'",
    );
    expect(headers['x-content-type-options'], address).toBe('nosniff');
    expect(headers['referrer-policy'], address).toBe('no-referrer');
  }
});

test('injected code does not run and no other place is reached', async ({ browser, baseURL }) => {
  const page = await browser.newPage();
  await page.goto(baseURL ?? '/');
  await appIsOpen(page);
  const outcomes = await page.evaluate(async () => {
    const script = document.createElement('script');
    const tried: Record<string, string> = {};
    const attempt = async (name: string, action: () => unknown) => {
      try {
        await action();
        tried[name] = 'ran';
      } catch (error) {
        tried[name] = error instanceof Error ? error.name : 'stopped';
      }
    };
    await attempt('markup from text', () => {
      document.body.innerHTML = '<p>text</p>';
    });
    await attempt('no markup', () => {
      document.createElement('p').innerHTML = '';
    });
    await attempt('script from text', () => {
      script.text = 'window.injected = 1';
    });
    await attempt('worker from text', () => new Worker('/assets/any.js'));
    await attempt('another origin', () => fetch('http://127.0.0.2:9/'));
    return { ...tried, injected: 'injected' in window };
  });
  expect(outcomes).toEqual({
    'markup from text': 'TypeError',
    'no markup': 'ran',
    'script from text': 'TypeError',
    'worker from text': 'TypeError',
    'another origin': 'TypeError',
    injected: false,
  });
  await page.close();
});
