import type { Page } from '@playwright/test';
import jsQR from 'jsqr';
import { PNG } from 'pngjs';

/** Whole screens of a tablet that shows the codes of its open layout, one for each code, in order, as PNG files. */
export async function screensOfCodes(page: Page): Promise<readonly Buffer[]> {
  await page.getByRole('button', { name: 'Pages', exact: true }).click();
  await page.getByRole('button', { name: /^Hand over/ }).click();
  await page.getByRole('button', { name: 'Pause' }).click();
  const shown = page.locator('.code-picture');
  const label = (await shown.getAttribute('aria-label')) ?? '';
  const count = Number(/of (\d+) of/.exec(label)?.[1]);
  const screens = new Map<string, Buffer>();
  for (let i = 0; i < count; i++) {
    const at = (await page.locator('.code-count').textContent()) ?? '';
    screens.set(at, await page.screenshot());
    await page.getByRole('button', { name: 'Next' }).click();
  }
  return Array.from({ length: count }, (_, i) => {
    const screen = screens.get(`Code ${i + 1} of ${count}`);
    if (!screen) throw new Error(`code ${i + 1} was not shown`);
    return screen;
  });
}

/** What another program reads off a screen; null when it finds no code. */
export function readElsewhere(screen: Buffer): string | null {
  const { data, width, height } = PNG.sync.read(screen);
  return jsQR(new Uint8ClampedArray(data), width, height)?.data ?? null;
}

/**
 * A film of screens for Chromium's stand-in for a camera: YUV4MPEG2 in grey, two pictures a second. All screens are of one size, with
 * even sides.
 */
export function filmOf(screens: readonly Buffer[]): Buffer {
  const pictures = screens.map((screen) => PNG.sync.read(screen));
  const [{ width, height } = { width: 0, height: 0 }] = pictures;
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F2:1 Ip A1:1 C420jpeg\n`);
  const grey = Buffer.alloc((width * height) / 2, 128);
  const frames = pictures.flatMap(({ data }) => {
    const light = Buffer.alloc(width * height);
    for (let i = 0; i < light.length; i++) light[i] = data[4 * i] ?? 0;
    return [Buffer.from('FRAME\n'), light, grey];
  });
  return Buffer.concat([head, ...frames]);
}
