import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Layout } from '../../layout/layout.ts';
import { writeLayout } from '../../layout/read.ts';
import { fromBase45, toBase45 } from './base45.ts';
import { packed } from './pack.ts';

/**
 * A layout as a row of short texts, each for one QR code. Rules, quoted by the tests:
 *
 * Q1 A text is `STROKESPACE.1/SET/NUMBER/COUNT/CHECK/` and a part of the packed layout in Base45: letters of the alphanumeric mode only.
 * Q2 SET names what is handed over: the first 8 bytes of the SHA-256 of the packed layout, so that codes of two layouts never mix.
 * Q3 CHECK is the first 4 bytes of the SHA-256 of all the rest of the text: a misread code is known as one.
 * Q4 The parts are of nearly the same length, so that all codes are of one size.
 */
const MARK = 'STROKESPACE';
const VERSION = 1;

/** Bytes in one code: a code of 73 modules at error correction M, which a tablet's camera reads off another's screen at arm's length. */
const MOST_IN_CODE = 370;
/** More codes than this are no layout of ours. */
export const MOST_CODES = 400;

/** What one code says. */
export interface CodePart {
  readonly set: string;
  /** Counts from 1. */
  readonly number: number;
  readonly count: number;
  readonly bytes: Uint8Array;
}

export function codesOf(layout: Layout): readonly string[] {
  const bytes = packed(writeLayout(layout));
  const set = setOf(bytes);
  const count = Math.max(1, Math.ceil(bytes.length / MOST_IN_CODE));
  return Array.from({ length: count }, (_, i) => {
    const [from, to] = [i, i + 1].map((k) => Math.round((k * bytes.length) / count));
    const head = `${MARK}.${VERSION}/${set}/${i + 1}/${count}`;
    const body = toBase45(bytes.subarray(from, to));
    return `${head}/${checkOf(head, body)}/${body}`;
  });
}

export const setOf = (bytes: Uint8Array): string => hex(sha256(bytes).subarray(0, 8));

const checkOf = (head: string, body: string): string =>
  hex(sha256(utf8ToBytes(`${head}/${body}`)).subarray(0, 4));

const hex = (bytes: Uint8Array): string => bytesToHex(bytes).toUpperCase();

/** `foreign`: no code of this program. `newer`: of a version to come. `damaged`: ours, but not as it was made. */
export type ReadCode = CodePart | 'foreign' | 'newer' | 'damaged';

export function readCode(text: string): ReadCode {
  const marked = /^STROKESPACE\.(\d{1,4})\//.exec(text);
  if (!marked) return 'foreign';
  if (Number(marked[1]) > VERSION) return 'newer';
  const parts = /^(.+?\/([0-9A-F]{16})\/(\d{1,3})\/(\d{1,3}))\/([0-9A-F]{8})\/(.+)$/.exec(text);
  if (!parts) return 'damaged';
  const [, head = '', set = '', number, count, check, body = ''] = parts;
  const bytes = fromBase45(body);
  const part = { set, number: Number(number), count: Number(count) };
  const counts = part.number >= 1 && part.number <= part.count && part.count <= MOST_CODES;
  return bytes && counts && check === checkOf(head, body) ? { ...part, bytes } : 'damaged';
}
