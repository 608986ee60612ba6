/** No picture is larger: what the smallest common tablets' canvases hold (16.7 million pixels, 4096 on a side; from memory). */
const MOST_PIXELS = 12_000_000;
const LONGEST_SIDE = 4096;
const DOTS_PER_INCH = 300;

/** How many pixels a sheet of paper (mm) becomes: 300 per inch, or as many as a canvas holds. */
export function pixelsOf(
  width: number,
  height: number,
): { readonly width: number; readonly height: number } {
  const wanted = DOTS_PER_INCH / 25.4;
  const scale = Math.min(
    wanted,
    LONGEST_SIDE / Math.max(width, height),
    Math.sqrt(MOST_PIXELS / (width * height)),
  );
  return { width: Math.floor(width * scale), height: Math.floor(height * scale) };
}

/** The address of an SVG as a picture. */
export const svgAddress = (svg: string): string =>
  `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;

/**
 * An SVG of a page (mm) as PNG.
 *
 * @throws {Error} When the browser can't draw it.
 */
export async function pngOf(
  svg: string,
  paper: { readonly width: number; readonly height: number },
): Promise<Uint8Array<ArrayBuffer>> {
  const { width, height } = pixelsOf(paper.width, paper.height);
  const picture = new Image(width, height);
  picture.src = svgAddress(svg);
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) throw new Error('this browser gives no canvas of that size.');
  context.drawImage(picture, 0, 0, width, height);
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
  if (!blob) throw new Error('this browser can’t write the picture.');
  return new Uint8Array(await blob.arrayBuffer());
}
