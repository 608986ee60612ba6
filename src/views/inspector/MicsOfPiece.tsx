import { useState } from 'react';
import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import { edit, session } from '../../session/session.ts';
import { FieldProblem } from '../fields/FieldProblem.tsx';
import { MicLine } from '../mics/MicLine.tsx';
import { withUsualMic } from '../mics/withUsualMic.ts';
import { usePanel } from '../panel/usePanel.ts';
import { Icon } from '../parts/Icon.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** The mics whose own source is this piece. */
export function MicsOfPiece({ piece }: { readonly piece: Piece }) {
  const { layout } = useOpen();
  if (!isStruck(piece) && piece.kind !== 'kick') return null;
  const mics = layout.mics.filter((mic) => mic.hears[0] === piece.id);
  return (
    <section className="group">
      <h3>Mics on it</h3>
      {mics.length === 0 ? (
        <UsualMic piece={piece} />
      ) : (
        <ul className="lines">
          {mics.map((mic) => (
            <MicLine key={mic.id} mic={mic} />
          ))}
        </ul>
      )}
    </section>
  );
}

function UsualMic({ piece }: { readonly piece: Piece }) {
  const panel = usePanel();
  const { layout } = useOpen();
  const [problem, setProblem] = useState('');
  const add = () => {
    edit(`Mic for ${piece.name}`, (from) => withUsualMic(from, [piece.id]));
    const added = session.getState().open?.layout.mics.at(layout.mics.length);
    if (added) panel.open({ kind: 'mic', id: added.id });
    else setProblem('No usual place was found. Choose one in Mics.');
  };
  return (
    <>
      <button type="button" onClick={add}>
        <Icon name="plus" /> Add the usual mic
      </button>
      <FieldProblem text={problem} />
    </>
  );
}
