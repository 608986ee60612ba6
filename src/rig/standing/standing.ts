import type { Vec3 } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import type { Mm } from '../../units/quantity.ts';

/** What stands in the way of what, with nothing moving. */
export type StandingCode =
  /** A mic's body, plug, cable bend or plate in or against a shell, hoop, head, cymbal or seat. */
  | 'mic-in-shell'
  /** A boom, mast or clip arm in or against one of those. */
  | 'boom-through-piece'
  /** Any part of a mic and its mount against a piece's stand, leg or pedal. */
  | 'mic-against-stand'
  /** Any part of a mic and its mount against another's. */
  | 'mic-against-mic'
  /** A shell, cymbal, body of percussion or seat in another piece's. */
  | 'piece-in-piece'
  /** Feet of two stands cross, or stand on each other, on a pedal or in a kick. */
  | 'feet-overlap'
  | 'base-off-deck'
  | 'piece-off-deck';

/** One thing that cannot stand where it is drawn. At most one for each code and pair. */
export interface Standing {
  readonly code: StandingCode;
  /** Ids of the mics and pieces it is about: mics before pieces, else in the layout's order. */
  readonly about: readonly Id[];
  /** Where it is worst, kit frame. */
  readonly place: Vec3;
  /** How deep solids overlap, how far a foot stands past another's leg, or how far it is off the deck, mm. */
  readonly overlap: Mm;
}

/** K1 Solids that touch or overlap by less than this are not in each other's way: the tolerance of the searches. */
export const TOUCHING: Mm = 0.2;

/** The worst of each code; nothing that merely touches. */
export function worstOfEach(found: readonly Standing[]): readonly Standing[] {
  if (found.length === 0) return found;
  const worst = new Map<StandingCode, Standing>();
  for (const entry of found) {
    const known = worst.get(entry.code);
    if (entry.overlap > TOUCHING && !(known && known.overlap >= entry.overlap)) {
      worst.set(entry.code, entry);
    }
  }
  return [...worst.values()];
}
