import type { Id } from '../layout/fields.ts';
import type { Layout } from '../layout/layout.ts';
import type { Selection } from './selection.ts';

/** The clip mic whose rim ring is shown: the selected one, or the first on the selected drum; null when there is none. */
export function ringSubject(layout: Layout, selection: Selection | null): Id | null {
  if (selection?.kind !== 'mic' && selection?.kind !== 'piece') return null;
  const mic = layout.mics.find(
    ({ id, mount }) =>
      mount.kind === 'clip' &&
      (selection.kind === 'mic' ? id === selection.id : mount.drum === selection.id),
  );
  return mic?.id ?? null;
}
