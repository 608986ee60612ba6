import { z } from 'zod';
import { idField } from '../layout/fields.ts';
import { isThere } from '../session/selection.ts';
import { ownLayout, select, session } from '../session/session.ts';

const KEY = 'strokespace.selection';

const keptSchema = z.strictObject({
  layout: idField,
  selection: z.union([
    z.strictObject({ kind: z.enum(['piece', 'mic']), id: idField }),
    z.strictObject({ kind: z.enum(['box', 'deck', 'player']) }),
  ]),
});
type Kept = z.infer<typeof keptSchema>;

/**
 * Keeps what is selected over a reload: selected again in the first layout that is opened, if it is the same one and the thing is still in it.
 * Without storage it holds while the page is open.
 *
 * @param storage This tab's own: another tab has another thing selected.
 */
export function keepSelection(storage: () => Storage): void {
  let before = read(storage);
  session.subscribe((now, then) => {
    const layout = ownLayout(now);
    if (layout !== null && then.open?.layout.id !== layout.id) {
      const kept = before;
      before = null;
      // Once all are told of the opening: those told later must not take the older state for the newer one.
      if (kept?.layout === layout.id) queueMicrotask(() => selectAgain(kept));
    }
    if (now.selection === then.selection && layout?.id === then.open?.layout.id) return;
    try {
      if (layout === null || now.selection === null) storage().removeItem(KEY);
      else {
        const kept: Kept = { layout: layout.id, selection: now.selection };
        storage().setItem(KEY, JSON.stringify(kept));
      }
    } catch {
      // Refused or full: a selection is no work.
    }
  });
}

function selectAgain({ layout, selection }: Kept): void {
  const now = session.getState();
  const open = ownLayout(now);
  if (open?.id === layout && now.selection === null && isThere(selection, open)) select(selection);
}

function read(storage: () => Storage): Kept | null {
  try {
    const kept = keptSchema.safeParse(JSON.parse(storage().getItem(KEY) ?? 'null'));
    return kept.success ? kept.data : null;
  } catch {
    return null;
  }
}
