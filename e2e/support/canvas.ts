import type { Page } from '@playwright/test';
import { PNG } from 'pngjs';

/**
 * The colours of a canvas, four values to a pixel, once something is drawn there and nothing about it changes any more: drawings are painted beside the
 * page, a little after it asked for them.
 *
 * @param which The number of the canvas among those that are found; -1 is the last.
 */
export async function pixelsOf(page: Page, selector: string, which = 0): Promise<Uint8Array> {
  await page.locator(selector).nth(which).waitFor({ state: 'attached' });
  const picture = await page.evaluate(
    async ([wanted, number]) => {
      const look = (): string => {
        const canvas = [...document.querySelectorAll<HTMLCanvasElement>(wanted)].at(number);
        const pen = document.createElement('canvas').getContext('2d');
        if (!canvas || !pen) throw new Error(`expected canvas ${number} of ${wanted}`);
        Object.assign(pen.canvas, { width: canvas.width, height: canvas.height });
        const empty = pen.canvas.toDataURL();
        // Not from its own context: a canvas that is painted beside the page has none here.
        pen.drawImage(canvas, 0, 0);
        const picture = pen.canvas.toDataURL();
        return picture === empty ? '' : picture;
      };
      let [last, same] = [look(), 0];
      while (same < 3 || last === '') {
        for (let i = 0; i < 3; i += 1) await new Promise((go) => requestAnimationFrame(go));
        const now = look();
        same = now === last ? same + 1 : 0;
        last = now;
      }
      return last;
    },
    [selector, which] as const,
  );
  return PNG.sync.read(Buffer.from(picture.split(',')[1] ?? '', 'base64')).data;
}

/** How many colour values differ by more than rounding; all, where the sizes do. */
export function differing(before: Uint8Array, now: Uint8Array): number {
  if (before.length !== now.length) return now.length;
  let count = 0;
  for (const [i, value] of now.entries()) {
    if (Math.abs(value - (before[i] ?? 0)) > 8) count += 1;
  }
  return count;
}

export const isDrawn = (pixels: Uint8Array): boolean => pixels.some((value) => value > 0);
