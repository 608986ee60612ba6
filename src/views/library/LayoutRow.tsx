import { memo, useId, useMemo, useState } from 'react';
import { outlineIn } from '../../layout/kitOutline.ts';
import type { LibraryRow } from '../../session/library.ts';
import { type RowNeed, useRowNeed } from '../../session/rowNeeds.ts';
import { useSession } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';
import { VerdictMark } from '../parts/VerdictMark.tsx';
import { counted } from '../words/nameOf.ts';
import { needWords } from '../words/needWords.ts';
import { signedRowWords } from '../words/signOffWords.ts';
import { changedWords } from '../words/timeWords.ts';
import type { Verdict } from '../words/verdictWords.ts';
import { KitPicture } from './KitPicture.tsx';
import type { Library } from './useLibrary.ts';

interface LayoutRowProps {
  readonly row: LibraryRow;
  readonly library: Library;
  readonly onRename: (row: LibraryRow) => void;
  readonly onTags: (row: LibraryRow) => void;
}

/** One stored layout: tap to open, the rest behind one button. Drawn again only when it changes, so that typing a search stays light. */
export const LayoutRow = memo(function LayoutRow(props: LayoutRowProps) {
  const { row, library } = props;
  const [more, setMore] = useState(false);
  const moreId = useId();
  const outline = useMemo(() => outlineIn(row.picture), [row.picture]);
  return (
    <li className="layout-row">
      <div className="layout-line">
        <button type="button" className="layout-open" onClick={() => library.open(row)}>
          <KitPicture outline={outline} />
          <LayoutFacts row={row} />
        </button>
        <button
          type="button"
          className="quiet layout-menu"
          aria-pressed={row.favourite}
          onClick={() => library.mark(row, { favourite: !row.favourite })}
        >
          <span className={row.favourite ? 'star on' : 'star'}>
            <Icon name="star" />
          </span>
          <span className="spoken">Favourite: {row.name}</span>
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
        {more && <MoreButtons {...props} />}
      </div>
    </li>
  );
});

function LayoutFacts({ row }: { readonly row: LibraryRow }) {
  const need = useRowNeed(row);
  const isUnsaved = useSession((state) => state.unsaved.includes(row.id));
  const signOff = row.signOff === 'unknown' ? (need?.signOff ?? 'unknown') : row.signOff;
  return (
    <span className="layout-words">
      <span className="layout-name">{row.name}</span>
      <span className="layout-facts">
        {row.venue !== '' && <span>{row.venue}</span>}
        {row.date !== null && <span>{row.date}</span>}
        {row.player !== '' && <span>{row.player}</span>}
        <span>
          {counted(row.pieces, 'piece')}, {counted(row.mics, 'mic')}
        </span>
        <span>Changed {changedWords(row.changedAt, Date.now())}</span>
      </span>
      <span className="layout-facts">
        {isUnsaved && (
          <span className="layout-mark warn">Not saved: export it before you close this page</span>
        )}
        {row.otherLines > 0 && (
          <span className="layout-mark warn">Changed on another tablet too: see its history</span>
        )}
        {need && row.mics > 0 && <Need need={need} />}
        {signOff !== 'none' && (
          <span className={signOff === 'holds' ? 'layout-mark' : 'layout-mark warn'}>
            {signedRowWords[signOff]}
          </span>
        )}
        {row.archived && <span className="layout-mark">Archived</span>}
        {row.tags.map((tag) => (
          <span key={tag} className="layout-mark">
            {tag}
          </span>
        ))}
      </span>
    </span>
  );
}

function Need({ need }: { readonly need: Pick<RowNeed, 'solve' | 'look'> }) {
  const worst = worstOf(need);
  return (
    <span className={`layout-need ${worst}`}>
      <VerdictMark verdict={worst} />
      {needWords(need) || 'Nothing to solve'}
    </span>
  );
}

function worstOf({ solve, look }: Pick<RowNeed, 'solve' | 'look'>): Verdict {
  if (solve > 0) return 'struck';
  return look > 0 ? 'tight' : 'clear';
}

function MoreButtons({ row, library, onRename, onTags }: LayoutRowProps) {
  return (
    <>
      <button type="button" onClick={() => onRename(row)}>
        <Icon name="pen" /> Rename
      </button>
      <button type="button" onClick={() => library.duplicate(row)}>
        <Icon name="copy" /> Duplicate
      </button>
      <button type="button" onClick={() => onTags(row)}>
        <Icon name="tag" /> Tags
      </button>
      <button type="button" onClick={() => library.exportFile(row)}>
        <Icon name="save" /> Export
      </button>
      <button type="button" onClick={() => library.mark(row, { archived: !row.archived })}>
        <Icon name="box" /> {row.archived ? 'Out of the archive' : 'Archive'}
      </button>
      <button type="button" className="danger" onClick={() => library.remove(row)}>
        <Icon name="bin" /> Delete
      </button>
    </>
  );
}
