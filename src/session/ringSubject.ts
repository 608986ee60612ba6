import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import { isDrum } from '../layout/pieces/piece.ts';
import type { Selection } from './selection.ts';

/** What a rim ring is for: a clip mic, or a drum that has none yet. */
export type RingSubject =
  | { readonly kind: 'mic'; readonly mic: Id }
  | { readonly kind: 'drum'; readonly drum: Id };

/** The clip mic whose rim ring is shown: the selected one, or the first on the selected drum; that drum when it has none; else null. */
export function ringSubject(layout: Layout, selection: Selection | null): RingSubject | null {
  if (selection?.kind !== 'mic' && selection?.kind !== 'piece') return null;
  const { kind, id } = selection;
  const mic = layout.mics.find(
    (one) => one.mount.kind === 'clip' && (kind === 'mic' ? one.id : one.mount.drum) === id,
  );
  if (mic) return { kind: 'mic', mic: mic.id };
  const drum = kind === 'piece' && layout.pieces.find((piece) => piece.id === id && isDrum(piece));
  return drum ? { kind: 'drum', drum: drum.id } : null;
}
