import { AddPiece } from '../kit/AddPiece.tsx';
import { PieceList } from '../kit/PieceList.tsx';
import { useOpen } from '../parts/useOpen.ts';

/** Everything the kit is made of. */
export function KitSection() {
  const { layout } = useOpen();
  return (
    <>
      <h2 className="spoken">Kit</h2>
      {layout.pieces.length === 0 && <p className="field-hint">Nothing on the deck yet.</p>}
      <PieceList />
      <AddPiece />
    </>
  );
}
