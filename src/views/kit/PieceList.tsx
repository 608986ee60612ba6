import { isCymbal, isDrum, type Piece } from '../../layout/pieces/piece.ts';
import { useSession } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';
import { kindWords } from '../words/kindWords.ts';
import { counted } from '../words/nameOf.ts';
import { sizeWords } from '../words/sizeWords.ts';

const groups: readonly { readonly title: string; readonly has: (piece: Piece) => boolean }[] = [
  { title: 'Drums', has: (piece) => isDrum(piece) || piece.kind === 'kick' },
  { title: 'Cymbals', has: (piece) => isCymbal(piece) || piece.kind === 'hiHat' },
  { title: 'Percussion', has: (piece) => piece.kind === 'percussion' },
  { title: 'Pedals and throne', has: (piece) => piece.kind === 'pedal' || piece.kind === 'throne' },
];

/** Every piece of the kit, by group; tapped, its numbers open. */
export function PieceList() {
  const { pieces } = useOpen().layout;
  return groups.map(({ title, has }) => {
    const members = pieces.filter(has);
    if (members.length === 0) return null;
    return (
      <section key={title} className="list-group">
        <h3>{title}</h3>
        <ul className="lines">
          {members.map((piece) => (
            <PieceLine key={piece.id} piece={piece} />
          ))}
        </ul>
      </section>
    );
  });
}

function PieceLine({ piece }: { readonly piece: Piece }) {
  const panel = usePanel();
  const { layout } = useOpen();
  const selection = useSession((state) => state.selection);
  const isSelected = selection?.kind === 'piece' && selection.id === piece.id;
  const mics = layout.mics.filter((mic) => mic.hears[0] === piece.id).length;
  const facts = [
    kindWords(piece.kind) === piece.name ? '' : kindWords(piece.kind),
    sizeWords(piece),
    mics > 0 ? counted(mics, 'mic') : '',
  ].filter((fact) => fact !== '');
  return (
    <li className={isSelected ? 'line shown' : 'line'}>
      <button
        type="button"
        className="line-button short"
        onClick={() => panel.open({ kind: 'piece', id: piece.id })}
      >
        <span className="line-text">
          <span className="line-name">{piece.name}</span>
          {facts.length > 0 && <span className="line-note">{facts.join(' · ')}</span>}
        </span>
        <Icon name="forward" />
      </button>
    </li>
  );
}
