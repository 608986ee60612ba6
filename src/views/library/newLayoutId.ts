import type { Id } from '../../layout/fields.ts';

/** An id that no other layout has. Works without a secure context too, where `randomUUID` is missing. */
export function newLayoutId(): Id {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `layout-${Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
