import { isStruck, type Piece } from '../../layout/pieces/piece.ts';
import { MicLine } from '../mics/MicLine.tsx';
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
        <p className="field-hint">None yet.</p>
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
