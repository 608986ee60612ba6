import { useId, useState } from 'react';
import type { LibraryRow } from '../../session/library.ts';
import { Icon } from '../parts/Icon.tsx';
import { counted } from '../words/nameOf.ts';
import { changedWords } from '../words/timeWords.ts';
import type { Library } from './useLibrary.ts';

interface LayoutRowProps {
  readonly row: LibraryRow;
  readonly library: Library;
  readonly onRename: (row: LibraryRow) => void;
}

/** One stored layout: tap to open, the rest behind one button. */
export function LayoutRow({ row, library, onRename }: LayoutRowProps) {
  const [more, setMore] = useState(false);
  const moreId = useId();
  return (
    <li className="layout-row">
      <div className="layout-line">
        <button type="button" className="layout-open" onClick={() => library.open(row)}>
          <span className="layout-name">{row.name}</span>
          <span className="layout-facts">
            {row.venue !== '' && <span>{row.venue}</span>}
            <span>
              {counted(row.pieces, 'piece')}, {counted(row.mics, 'mic')}
            </span>
            <span>Changed {changedWords(row.changedAt, Date.now())}</span>
          </span>
        </button>
        <button
          type="button"
          className="quiet layout-menu"
          aria-expanded={more}
          aria-controls={moreId}
          onClick={() => setMore(!more)}
        >
          <Icon name="more" />
          <span className="spoken">More for {row.name}</span>
        </button>
      </div>
      <div className="buttons layout-more" id={moreId} hidden={!more}>
        <button type="button" onClick={() => onRename(row)}>
          <Icon name="pen" /> Rename
        </button>
        <button type="button" onClick={() => library.duplicate(row)}>
          <Icon name="copy" /> Duplicate
        </button>
        <button type="button" onClick={() => library.exportFile(row)}>
          <Icon name="save" /> Export
        </button>
        <button type="button" className="danger" onClick={() => library.remove(row)}>
          <Icon name="bin" /> Delete
        </button>
      </div>
    </li>
  );
}
