import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';
import { MOST_CHARACTERS } from '../../layout/read.ts';

/** A layout's text as few bytes: UTF-8, deflated (RFC 1951). */
export const packed = (text: string): Uint8Array => deflateSync(strToU8(text), { level: 9 });

/** Small steps, so that a few bytes that would become a gigabyte are noticed early. */
const STEP = 4096;

/** The text again. Null for what is damaged, cut off, or longer than any layout may be. */
export function unpacked(bytes: Uint8Array): string | null {
  const pieces: Uint8Array[] = [];
  let length = 0;
  let isWhole = false;
  const inflate = new Inflate((piece, isLast) => {
    pieces.push(piece);
    length += piece.length;
    isWhole = isLast;
    if (length > MOST_CHARACTERS) throw new Error('too long');
  });
  try {
    for (let at = 0; at < bytes.length; at += STEP) {
      inflate.push(bytes.subarray(at, at + STEP), at + STEP >= bytes.length);
    }
  } catch {
    return null;
  }
  return isWhole ? textOf(pieces, length) : null;
}

function textOf(pieces: readonly Uint8Array[], length: number): string {
  const all = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return strFromU8(all);
}
