import { newPiece } from '../../layout/catalogue/defaults/newPiece.ts';
import { addPiece } from '../../layout/edit/pieces.ts';
import type { PieceKind } from '../../layout/pieces/piece.ts';
import { edit, session } from '../../session/session.ts';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { kindWords } from '../words/kindWords.ts';

const kinds: readonly PieceKind[] = [
  'snare',
  'rackTom',
  'floorTom',
  'kick',
  'hiHat',
  'crash',
  'ride',
  'splash',
  'china',
  'percussion',
  'pedal',
  'throne',
];

/** One tap adds a piece of usual size where it usually stands, and opens its numbers. */
export function AddPiece() {
  const { layout } = useOpen();
  const panel = usePanel();
  const add = (kind: PieceKind) => {
    edit(`Add ${kindWords(kind).toLowerCase()}`, (from) => addPiece(from, newPiece(kind, from)));
    const after = session.getState().open?.layout;
    const added = after?.pieces.at(-1);
    if (added && after !== layout) panel.open({ kind: 'piece', id: added.id });
  };
  const hasThrone = layout.pieces.some(({ kind }) => kind === 'throne');
  return (
    <section className="group" aria-labelledby="add-piece">
      <h3 id="add-piece">Add a piece</h3>
      <div className="kind-grid">
        {kinds
          .filter((kind) => kind !== 'throne' || !hasThrone)
          .map((kind) => (
            <button key={kind} type="button" onClick={() => add(kind)}>
              {kindWords(kind)}
            </button>
          ))}
      </div>
    </section>
  );
}
