import type { Id } from '../layout/fields.ts';

/** An id for a new layout: 128 random bits in hexadecimal. Works on pages without a secure context as well. */
export const newLayoutId = (): Id =>
  [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, '0'))
    .join('');
