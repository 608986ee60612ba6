import type { Id } from '../../layout/fields.ts';
import type { ImportOutcome, LibraryActions } from '../../session/library.ts';

export type RefusedFile = { readonly file: string } & Extract<ImportOutcome, { ok: false }>;

/** What became of files that were dropped or chosen together. A library that was taken in tells itself what came of it. */
export interface TakenFiles {
  /** The layouts that were taken in, in the order of their files. */
  readonly layouts: readonly Id[];
  readonly refused: readonly RefusedFile[];
}

/**
 * Takes files in, each for itself, one after the other: layouts, or whole libraries. What can't be taken is told and keeps none of the others away.
 * Rejects when a single one fails otherwise than by what is in it.
 */
export async function takeInFiles(
  actions: Pick<LibraryActions, 'importFile' | 'importLibrary' | 'isLibrary'>,
  files: readonly File[],
): Promise<TakenFiles> {
  const layouts: Id[] = [];
  const refused: RefusedFile[] = [];
  for (const file of files) {
    const taken = takeIn(actions, file);
    const outcome = await (files.length === 1 ? taken : taken.catch(asRefusal));
    if (outcome === null) continue;
    if (outcome.ok) layouts.push(outcome.id);
    else refused.push({ ...outcome, file: file.name });
  }
  return { layouts, refused };
}

/** Null for a library: it may hold any number of layouts. */
async function takeIn(
  actions: Pick<LibraryActions, 'importFile' | 'importLibrary' | 'isLibrary'>,
  file: File,
): Promise<ImportOutcome | null> {
  if (!(await actions.isLibrary(file))) return actions.importFile(file);
  await actions.importLibrary(file);
  return null;
}

const asRefusal = (error: unknown): Extract<ImportOutcome, { ok: false }> => ({
  ok: false,
  problems: [{ path: '', message: error instanceof Error ? error.message : String(error) }],
});
