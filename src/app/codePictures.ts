import { encodeQR } from 'qr';
import type { Layout } from '../layout/layout.ts';
import type { CodePicture } from '../session/handOver.ts';
import { codesOf } from '../storage/handOver/codes.ts';

/** Modules of light around a code (ISO/IEC 18004). */
const QUIET_ZONE = 4;

/** A layout as QR codes, in order. */
export const codePictures = (layout: Layout): readonly CodePicture[] =>
  codesOf(layout).map(codePicture);

/** A code's text as a drawing, at error correction M. */
function codePicture(text: string): CodePicture {
  const rows = encodeQR(text, 'raw', { ecc: 'medium', border: QUIET_ZONE });
  return { size: rows.length, path: rows.map(rowPath).join('') };
}

/** One bar for each stretch of dark modules. */
function rowPath(row: readonly boolean[], y: number): string {
  let path = '';
  for (let x = 0; x < row.length; x++) {
    if (!row[x]) continue;
    const from = x;
    while (row[x + 1]) x++;
    const width = x + 1 - from;
    path += `M${from} ${y}h${width}v1h-${width}z`;
  }
  return path;
}
