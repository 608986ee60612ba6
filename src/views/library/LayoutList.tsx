import { useMemo, useState } from 'react';
import type { LibraryRow } from '../../session/library.ts';
import { Choice } from '../fields/Choice.tsx';
import { Icon } from '../parts/Icon.tsx';
import { counted } from '../words/nameOf.ts';
import { LayoutRow } from './LayoutRow.tsx';
import { NewLayout } from './NewLayout.tsx';
import { RenameDialog } from './RenameDialog.tsx';
import { searchOver } from './searchLayouts.ts';
import { TagsDialog } from './TagsDialog.tsx';
import type { Library } from './useLibrary.ts';

interface LayoutListProps {
  readonly rows: readonly LibraryRow[];
  readonly library: Library;
}

type Shelf = 'all' | 'favourites' | 'archive';

/** Rows shown at once: what is not seen is not drawn, so that a thousand layouts open as fast as ten. */
const PAGE = 20;

/** The stored layouts, the last changed first, found by words, and the way to a new one. */
export function LayoutList({ rows, library }: LayoutListProps) {
  const [starting, setStarting] = useState(false);
  const [renaming, setRenaming] = useState<LibraryRow | null>(null);
  const [tagging, setTagging] = useState<LibraryRow | null>(null);
  const [text, setText] = useState('');
  const [shelf, setShelf] = useState<Shelf>('all');
  const [most, setMost] = useState(PAGE);
  const [isSearched, setSearched] = useState(false);
  const found = useFound(rows, { text, shelf, isSearched });
  const shown = found.slice(0, most);
  return (
    <>
      <div className="list-head">
        <h2>Layouts</h2>
        <button type="button" className="primary" onClick={() => setStarting(true)}>
          <Icon name="plus" /> New layout
        </button>
      </div>
      <ListFilter
        text={text}
        shelf={shelf}
        onText={setText}
        onShelf={setShelf}
        onFocus={() => setSearched(true)}
      />
      {found.length === 0 ? (
        <p role="status">{nothingWords(text, shelf)}</p>
      ) : (
        <ul className="layouts">
          {shown.map((row) => (
            <LayoutRow
              key={row.id}
              row={row}
              library={library}
              onRename={setRenaming}
              onTags={setTagging}
            />
          ))}
        </ul>
      )}
      {found.length > shown.length && (
        <button type="button" onClick={() => setMost(most + PAGE)}>
          Show {Math.min(PAGE, found.length - shown.length)} more of{' '}
          {counted(found.length, 'layout')}
        </button>
      )}
      {starting && <NewLayout library={library} onClose={() => setStarting(false)} />}
      {tagging && (
        <TagsDialog
          row={tagging}
          onClose={() => setTagging(null)}
          onKeep={(tags) => {
            setTagging(null);
            library.mark(tagging, { tags });
          }}
        />
      )}
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

function nothingWords(text: string, shelf: Shelf): string {
  if (text.trim() !== '') return `No layout is found by “${text.trim()}”.`;
  if (shelf === 'favourites') return 'No favourites yet: the star beside a layout makes it one.';
  return shelf === 'archive' ? 'Nothing is archived.' : 'All layouts are in the archive.';
}

/** The rows that are wanted: by words the best first, otherwise the last changed first. Words look into the archive too. */
function useFound(
  rows: readonly LibraryRow[],
  { text, shelf, isSearched }: { text: string; shelf: Shelf; isSearched: boolean },
): readonly LibraryRow[] {
  // Made once a finger is in the field, so that the first letter is answered as fast as the others.
  const search = useMemo(() => (isSearched ? searchOver(rows) : null), [rows, isSearched]);
  return useMemo(() => {
    if (search !== null && text.trim() !== '') {
      const byId = new Map(rows.map((row) => [row.id, row]));
      return search(text)
        .flatMap((id) => byId.get(id) ?? [])
        .filter((row) => shelf === 'all' || isOn(row, shelf));
    }
    return rows.filter((row) => isOn(row, shelf)).sort((a, b) => b.changedAt - a.changedAt);
  }, [rows, search, text, shelf]);
}

const isOn = ({ favourite, archived }: LibraryRow, shelf: Shelf): boolean => {
  if (shelf === 'archive') return archived;
  return !archived && (shelf === 'all' || favourite);
};

interface ListFilterProps {
  readonly text: string;
  readonly shelf: Shelf;
  readonly onText: (text: string) => void;
  readonly onShelf: (shelf: Shelf) => void;
  /** The field is about to be typed in. */
  readonly onFocus: () => void;
}

function ListFilter({ text, shelf, onText, onShelf, onFocus }: ListFilterProps) {
  return (
    <search className="list-filter">
      <input
        type="search"
        className="text-input"
        aria-label="Search layouts"
        placeholder="Name, venue, player, date, tag"
        value={text}
        maxLength={100}
        onFocus={onFocus}
        onChange={(event) => onText(event.target.value)}
      />
      <Choice
        label="Which layouts"
        hideLabel
        value={shelf}
        options={[
          { value: 'all', text: 'All' },
          { value: 'favourites', text: 'Favourites' },
          { value: 'archive', text: 'Archive' },
        ]}
        onChoose={onShelf}
      />
    </search>
  );
}
