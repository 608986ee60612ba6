import { useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type {
  ImportOutcome,
  LibraryActions,
  LibraryMarks,
  LibraryRow,
} from '../../session/library.ts';
import { type Task, useTask } from '../parts/useTask.ts';

export type RefusedFile = { readonly file: string } & Extract<ImportOutcome, { ok: false }>;

/** What the list screen can do, and what it has to tell. */
export interface Library {
  readonly task: Task;
  /** The layout that was deleted last and can be brought back. */
  readonly deleted: LibraryRow | null;
  /** The layout that went into the archive last and can be taken out again. */
  readonly archived: LibraryRow | null;
  readonly refused: RefusedFile | null;
  /** Id of the layout that was imported last. */
  readonly imported: Id | null;
  start(layout: Layout): void;
  takeIn(file: File): void;
  open(row: Pick<LibraryRow, 'id'>): void;
  rename(row: LibraryRow, name: string): void;
  duplicate(row: LibraryRow): void;
  exportFile(row: LibraryRow): void;
  mark(row: LibraryRow, marks: Partial<LibraryMarks>): void;
  exportLibrary(): void;
  remove(row: LibraryRow): void;
  restore(): void;
  forgetDeleted(): void;
  forgetArchived(): void;
  forgetRefused(): void;
  forgetImported(): void;
}

export function useLibrary(actions: LibraryActions): Library {
  const task = useTask();
  const [deleted, setDeleted] = useState<LibraryRow | null>(null);
  const [archived, setArchived] = useState<LibraryRow | null>(null);
  const [refused, setRefused] = useState<RefusedFile | null>(null);
  const [imported, setImported] = useState<Id | null>(null);
  return {
    task,
    deleted,
    archived,
    refused,
    imported,
    mark: (row, marks) =>
      task.run('Keeping this', async () => {
        await actions.mark(row.id, marks);
        if (marks.archived === true) setArchived(row);
      }),
    exportLibrary: () => task.run('Export', () => actions.exportLibrary()),
    start: (layout) => task.run('Starting the layout', () => actions.create(layout)),
    takeIn: (file) =>
      task.run('Import', async () => {
        if (await actions.isLibrary(file)) return actions.importLibrary(file);
        const outcome = await actions.importFile(file);
        setImported(outcome.ok ? outcome.id : null);
        if (!outcome.ok) setRefused({ ...outcome, file: file.name });
      }),
    open: (row) => task.run('Opening', () => actions.open(row.id)),
    rename: (row, name) => task.run('Renaming', () => actions.rename(row.id, name)),
    duplicate: (row) => task.run('Copying', () => actions.duplicate(row.id)),
    exportFile: (row) => task.run('Export', () => actions.exportFile(row.id)),
    remove: (row) =>
      task.run('Deleting', async () => {
        await actions.remove(row.id);
        setDeleted(row);
      }),
    restore: () => {
      if (deleted === null) return;
      task.run('Bringing it back', async () => {
        await actions.restore(deleted.id);
        setDeleted(null);
      });
    },
    forgetDeleted: () => setDeleted(null),
    forgetArchived: () => setArchived(null),
    forgetRefused: () => setRefused(null),
    forgetImported: () => setImported(null),
  };
}
