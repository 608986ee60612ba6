import { useState } from 'react';
import type { Layout } from '../../layout/layout.ts';
import type { LibraryActions, LibraryMarks, LibraryRow } from '../../session/library.ts';
import { type Task, useTask } from '../parts/useTask.ts';
import { type TakenFiles, takeInFiles } from './takeInFiles.ts';

const NO_FILES: TakenFiles = { layouts: [], refused: [] };

/** What the list screen can do, and what it has to tell. */
export interface Library {
  readonly task: Task;
  /** The layout that was deleted last and can be brought back. */
  readonly deleted: LibraryRow | null;
  /** The layout that went into the archive last and can be taken out again. */
  readonly archived: LibraryRow | null;
  /** What became of the files that were taken in last, as long as it was not put away. */
  readonly taken: TakenFiles;
  start(layout: Layout): void;
  takeIn(files: readonly File[]): void;
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
  const [taken, setTaken] = useState(NO_FILES);
  return {
    task,
    deleted,
    archived,
    taken,
    mark: (row, marks) =>
      task.run('Keeping this', async () => {
        await actions.mark(row.id, marks);
        if (marks.archived === true) setArchived(row);
      }),
    exportLibrary: () => task.run('Export', () => actions.exportLibrary()),
    start: (layout) => task.run('Starting the layout', () => actions.create(layout)),
    takeIn: (files) =>
      task.run('Import', async () => {
        setTaken(NO_FILES);
        setTaken(await takeInFiles(actions, files));
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
    forgetRefused: () => setTaken({ ...taken, refused: [] }),
    forgetImported: () => setTaken({ ...taken, layouts: [] }),
  };
}
