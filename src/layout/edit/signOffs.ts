import { digestOf } from '../digest.ts';
import { type Layout, layoutSchema, SCHEMA_VERSION } from '../layout.ts';
import { mostEntries } from '../schema/listLimit.ts';
import { signedText } from '../signed.ts';
import type { SignOff } from '../signOff.ts';

/** What the drummer said; what was shown is the layout itself. */
export type Said = Pick<SignOff, 'name' | 'at' | 'consent' | 'answers' | 'notes'>;

const MOST_SIGN_OFFS = mostEntries(layoutSchema.shape.signOffs);

/**
 * The layout with one more sign-off, the last, bound to its player, pieces and mics as they are. The oldest goes when there is no
 * room for another.
 *
 * @throws {RangeError} When a number of the layout is not finite.
 */
export function addSignOff(layout: Layout, said: Said): Layout {
  const signed = signedText(layout);
  const signOff: SignOff = {
    id: freshSignOffId(layout.signOffs),
    name: said.name,
    at: said.at,
    consent: said.consent,
    answers: said.answers,
    notes: said.notes,
    form: SCHEMA_VERSION,
    signed,
    digest: digestOf(signed),
  };
  return { ...layout, signOffs: [...layout.signOffs.slice(1 - MOST_SIGN_OFFS), signOff] };
}

/** Ids of sign-offs count on, so that one that is gone is never taken for another. */
function freshSignOffId(signOffs: readonly SignOff[]): string {
  const numbers = signOffs.map(({ id }) => Number(/^signed-(\d{1,9})$/.exec(id)?.[1] ?? 0));
  return `signed-${Math.max(0, ...numbers) + 1}`;
}
