import { z } from 'zod';
import { digestOf } from '../layout/digest.ts';
import { idField } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { signedText } from '../layout/signed.ts';
import { ownLayout, session } from '../session/session.ts';
import { type Signing, signing } from '../session/signing.ts';

const KEY = 'strokespace.signing';

const keptSchema = z.strictObject({
  /** Of the kit that is asked about: what was said of another one is worth nothing. */
  digest: z.string(),
  layout: idField,
  asked: z.array(idField).max(64),
  step: z.discriminatedUnion('at', [
    z.strictObject({ at: z.enum(['start', 'stands', 'lane', 'consent']) }),
    z.strictObject({ at: z.literal('mic'), index: z.number().int().min(0) }),
  ]),
  said: z.record(
    z.string(),
    z.strictObject({
      answer: z.enum(['fine', 'move']),
      note: z.string().max(4000),
      wish: z.strictObject({ x: z.number(), y: z.number() }).nullable(),
    }),
  ),
});

/**
 * Keeps an asking for a sign-off that was begun over a reload, as long as the kit is the one that was asked about. Without storage it
 * holds while the page is open.
 */
export function keepSigning(storage: () => Storage): void {
  session.subscribe((now, before) => {
    const layout = ownLayout(now);
    if (layout === null || before.open?.layout.id === layout.id) return;
    const kept = signing.getState().layout === null ? read(storage, layout) : null;
    if (kept !== null) signing.setState(kept);
  });
  signing.subscribe((now) => {
    const layout = ownLayout(session.getState());
    try {
      if (now.layout === null) storage().removeItem(KEY);
      else if (layout?.id === now.layout) {
        storage().setItem(KEY, JSON.stringify({ ...now, digest: digestOf(signedText(layout)) }));
      }
    } catch {
      // Refused or full: the asking is there while the page is open.
    }
  });
}

function read(storage: () => Storage, layout: Layout): Signing | null {
  let value: unknown;
  try {
    value = JSON.parse(storage().getItem(KEY) ?? 'null');
  } catch {
    return null;
  }
  const kept = keptSchema.safeParse(value);
  if (!kept.success || kept.data.layout !== layout.id) return null;
  const { digest, ...begun } = kept.data;
  return digest === digestOf(signedText(layout)) ? begun : null;
}
