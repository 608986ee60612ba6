import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';

/**
 * The RFC 8785 text of a value: one text for everything that is equal as JSON. Fields that are undefined are left out.
 *
 * @throws {RangeError} When the value holds what JSON can't: a number that is not finite, half a surrogate pair, a circle.
 */
export function canonicalText(value: unknown): string {
  let text: string | undefined;
  try {
    text = canonicalize(value);
  } catch (error) {
    const why = error instanceof Error ? error.message : 'unknown';
    throw new RangeError(`Expected a value that JSON can hold: ${why}.`, { cause: error });
  }
  if (text === undefined) throw new RangeError('Expected a value that JSON can hold.');
  return text;
}

/** The SHA-256 of a text's UTF-8 bytes, 64 lower-case hexadecimal digits (FIPS 180-4). Not the browser's own: that one is asynchronous. */
export const digestOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));
