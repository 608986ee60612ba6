import { useState } from 'react';
import type { LibraryRow } from '../../session/library.ts';
import { Icon } from '../parts/Icon.tsx';
import { LayoutRow } from './LayoutRow.tsx';
import { NewLayout } from './NewLayout.tsx';
import { RenameDialog } from './RenameDialog.tsx';
import type { Library } from './useLibrary.ts';

interface LayoutListProps {
  readonly rows: readonly LibraryRow[];
  readonly library: Library;
}

/** The stored layouts, the last changed first, and the way to a new one. */
export function LayoutList({ rows, library }: LayoutListProps) {
  const [starting, setStarting] = useState(false);
  const [renaming, setRenaming] = useState<LibraryRow | null>(null);
  return (
    <>
      <div className="list-head">
        <h2>Layouts</h2>
        <button type="button" className="primary" onClick={() => setStarting(true)}>
          <Icon name="plus" /> New layout
        </button>
      </div>
      <ul className="layouts">
        {rows
          .toSorted((a, b) => b.changedAt - a.changedAt)
          .map((row) => (
            <LayoutRow key={row.id} row={row} library={library} onRename={setRenaming} />
          ))}
      </ul>
      {starting && <NewLayout library={library} onClose={() => setStarting(false)} />}
      {renaming && (
        <RenameDialog
          name={renaming.name}
          onClose={() => setRenaming(null)}
          onRename={(name) => {
            setRenaming(null);
            library.rename(renaming, name);
          }}
        />
      )}
    </>
  );
}
