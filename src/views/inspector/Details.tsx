import type { Selection } from '../../session/selection.ts';
import { isAboutBox } from '../panel/worstFirst.ts';
import { useOpen } from '../parts/useOpen.ts';
import { PlayerFields } from '../player/PlayerFields.tsx';
import { BoxFields } from '../stage/BoxFields.tsx';
import { DeckFields } from '../stage/DeckFields.tsx';
import { AboutFindings } from './AboutFindings.tsx';
import { DetailsHead } from './DetailsHead.tsx';
import { MicDetails } from './MicDetails.tsx';
import { PieceDetails } from './PieceDetails.tsx';

/** All numbers of what is selected. */
export function Details({ selection }: { readonly selection: Selection }) {
  const { layout } = useOpen();
  switch (selection.kind) {
    case 'piece': {
      const piece = layout.pieces.find(({ id }) => id === selection.id);
      return piece ? <PieceDetails piece={piece} /> : null;
    }
    case 'mic': {
      const mic = layout.mics.find(({ id }) => id === selection.id);
      return mic ? <MicDetails mic={mic} /> : null;
    }
    case 'box':
      return (
        <>
          <DetailsHead kind="Drum sub-box" title="Box" />
          <AboutFindings of={isAboutBox} />
          <BoxFields />
        </>
      );
    case 'deck':
      return (
        <>
          <DetailsHead kind="What the kit stands on" title="Deck" />
          <DeckFields />
        </>
      );
    case 'player':
      return (
        <>
          <DetailsHead kind="Who plays" title="Player" />
          <PlayerFields />
        </>
      );
  }
}
