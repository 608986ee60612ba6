import { sha256 } from '@noble/hashes/sha2.js';
import { type Meta, metaSchema } from './meta.ts';

/**
 * A record: 16 bytes of head, the meta as JSON in UTF-8, the body. The head: `SSr1`, the lengths of meta and body and the
 * first four bytes of the SHA-256 of both, numbers little-endian. Whatever is torn, cut off or damaged is passed over to the
 * next record that is whole.
 */
export interface StoredRecord {
  readonly meta: Meta;
  readonly body: Uint8Array;
}

const MAGIC = [0x53, 0x53, 0x72, 0x31] as const;
const HEAD = 16;
const MOST_META = 65_536;
/** Bytes of a packed text at most; a full layout has about 10,000. */
const MOST_BODY = 16_000_000;

const NOTHING = new Uint8Array();

/** The bytes of one record after the other. */
export function recordBytes(
  records: readonly (Partial<StoredRecord> & Pick<StoredRecord, 'meta'>)[],
) {
  return joined(records.map(({ meta, body = NOTHING }) => bytesOf(meta, body)));
}

function bytesOf(meta: Meta, body: Uint8Array): Uint8Array {
  const text = new TextEncoder().encode(JSON.stringify(meta));
  const bytes = new Uint8Array(HEAD + text.length + body.length);
  bytes.set(MAGIC);
  const view = new DataView(bytes.buffer);
  view.setUint32(4, text.length, true);
  view.setUint32(8, body.length, true);
  bytes.set(text, HEAD);
  bytes.set(body, HEAD + text.length);
  bytes.set(sha256(bytes.subarray(HEAD)).subarray(0, 4), 12);
  return bytes;
}

export function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Reads records from bytes that come piece by piece. */
export class RecordReader {
  #rest: Uint8Array = NOTHING;
  #passedOver = 0;

  /** Bytes that belong to no whole record. */
  get passedOver(): number {
    return this.#passedOver;
  }

  /** The records that are whole with this piece. */
  push(piece: Uint8Array): readonly StoredRecord[] {
    this.#rest = this.#rest.length === 0 ? piece : joined([this.#rest, piece]);
    return this.#read(false);
  }

  /** The records in what is left; there is no more to come. */
  end(): readonly StoredRecord[] {
    const records = this.#read(true);
    this.#passedOver += this.#rest.length;
    this.#rest = NOTHING;
    return records;
  }

  #read(isLast: boolean): readonly StoredRecord[] {
    const records: StoredRecord[] = [];
    const bytes = this.#rest;
    let at = 0;
    while (at + HEAD <= bytes.length) {
      const found = recordAt(bytes, at);
      if (found === 'more' && !isLast) break;
      if (typeof found === 'object') {
        records.push(found.record);
        at += found.length;
      } else {
        const next = nextMagic(bytes, at + 1);
        this.#passedOver += next - at;
        at = next;
      }
    }
    // A copy, so that the large piece can go.
    this.#rest = bytes.slice(at);
    return records;
  }
}

function nextMagic(bytes: Uint8Array, from: number): number {
  for (let at = from; at < bytes.length; at++) {
    const left = Math.min(MAGIC.length, bytes.length - at);
    if (MAGIC.every((byte, index) => index >= left || bytes[at + index] === byte)) return at;
  }
  return bytes.length;
}

/** `more`: it may be a record when more bytes come. */
function recordAt(
  bytes: Uint8Array,
  at: number,
): { readonly record: StoredRecord; readonly length: number } | 'more' | 'none' {
  if (!MAGIC.every((byte, index) => bytes[at + index] === byte)) return 'none';
  const view = new DataView(bytes.buffer, bytes.byteOffset + at, HEAD);
  const [metaLength, bodyLength] = [view.getUint32(4, true), view.getUint32(8, true)];
  if (metaLength > MOST_META || bodyLength > MOST_BODY) return 'none';
  const length = HEAD + metaLength + bodyLength;
  if (at + length > bytes.length) return 'more';
  const inside = bytes.slice(at + HEAD, at + length);
  const check = sha256(inside);
  if ([0, 1, 2, 3].some((index) => check[index] !== bytes[at + 12 + index])) return 'none';
  const meta = metaIn(inside.subarray(0, metaLength));
  return meta === null ? 'none' : { record: { meta, body: inside.subarray(metaLength) }, length };
}

function metaIn(bytes: Uint8Array): Meta | null {
  try {
    const read = metaSchema.safeParse(JSON.parse(new TextDecoder().decode(bytes)));
    return read.success ? read.data : null;
  } catch {
    return null;
  }
}
