import type { Picture } from '../../session/handOver.ts';

/** Longest side that is looked at, px: more only takes longer. */
const LONGEST = 1280;

/**
 * What a camera or a picture file shows, as pixels.
 *
 * @throws {Error} When there is nothing to look at yet.
 */
export function pictureOf(
  source: CanvasImageSource,
  { width, height }: { readonly width: number; readonly height: number },
): Picture {
  const scale = Math.min(1, LONGEST / Math.max(width, height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context || canvas.width === 0 || canvas.height === 0)
    throw new Error('there is no picture.');
  context.drawImage(source, 0, 0, canvas.width, canvas.height);
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
