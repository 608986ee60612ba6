import { duplicatePiece } from '../../layout/edit/duplicatePiece.ts';
import { mirrorPiece } from '../../layout/edit/mirror.ts';
import { renamePiece } from '../../layout/edit/pieces.ts';
import { deletePiece } from '../../layout/edit/removePiece.ts';
import type { Id } from '../../layout/fields.ts';
import { isDrum, isStruck, type Piece } from '../../layout/pieces/piece.ts';
import { edit, select, session, showPatch } from '../../session/session.ts';
import { TextField } from '../fields/TextField.tsx';
import { usePanel } from '../panel/usePanel.ts';
import { useOpen } from '../parts/useOpen.ts';
import { kindWords } from '../words/kindWords.ts';
import { sizeWords } from '../words/sizeWords.ts';
import { AboutFindings } from './AboutFindings.tsx';
import { DetailsHead } from './DetailsHead.tsx';
import { FeetFields } from './FeetFields.tsx';
import { KickFields } from './KickFields.tsx';
import { MicsOfPiece } from './MicsOfPiece.tsx';
import { PedalFields } from './PedalFields.tsx';
import { RunNews } from './RunNews.tsx';
import { SizeFields } from './SizeFields.tsx';
import { StruckFields } from './StruckFields.tsx';
import { ThingActions } from './ThingActions.tsx';
import { ThroneFields } from './ThroneFields.tsx';

/** All numbers of one piece. */
export function PieceDetails({ piece }: { readonly piece: Piece }) {
  const { id, name } = piece;
  return (
    <>
      <DetailsHead kind={kindAndSize(piece)} title={name} />
      <RunNews />
      <AboutFindings of={({ about }) => about.includes(id)} />
      <FieldsOf piece={piece} />
      <MicsOfPiece piece={piece} />
      {isDrum(piece) && <SwapLink drum={id} />}
      <section className="group">
        <TextField
          label="Name"
          value={name}
          most={80}
          onSet={(to) => edit(`Rename ${name}`, (layout) => renamePiece(layout, id, to))}
        />
      </section>
      <PieceActions piece={piece} />
    </>
  );
}

/** The way to what must be undone before the drum comes out. */
function SwapLink({ drum }: { readonly drum: Id }) {
  const panel = usePanel();
  return (
    <section className="group">
      <button
        type="button"
        onClick={() => {
          showPatch({ part: 'swap', drum });
          panel.goTo('patch');
        }}
      >
        What to undo to swap it
      </button>
    </section>
  );
}

function kindAndSize(piece: Piece): string {
  const size = sizeWords(piece);
  return size === '' ? kindWords(piece.kind) : `${kindWords(piece.kind)} · ${size}`;
}

function FieldsOf({ piece }: { readonly piece: Piece }) {
  if (isStruck(piece)) {
    return (
      <>
        <StruckFields piece={piece} />
        <SizeFields piece={piece} />
        <FeetFields piece={piece} />
      </>
    );
  }
  switch (piece.kind) {
    case 'kick':
      return (
        <>
          <KickFields kick={piece} />
          <SizeFields piece={piece} />
        </>
      );
    case 'pedal':
      return <PedalFields pedal={piece} />;
    case 'throne':
      return <ThroneFields throne={piece} />;
  }
}

function PieceActions({ piece }: { readonly piece: Piece }) {
  const { layout } = useOpen();
  const { id, name, kind } = piece;
  const duplicate = () => {
    const before = layout;
    edit(`Duplicate ${name}`, (from) => duplicatePiece(from, id));
    const after = session.getState().open?.layout;
    const copy = after?.pieces.at(-1);
    if (copy && after !== before) select({ kind: 'piece', id: copy.id });
  };
  return (
    <ThingActions
      name={name}
      {...(kind !== 'throne' && { onDuplicate: duplicate })}
      onMirror={() => edit(`Mirror ${name}`, (from) => mirrorPiece(from, id))}
      onDelete={() => {
        edit(`Delete ${name}`, (from) => deletePiece(from, id));
        select(null);
      }}
    />
  );
}
