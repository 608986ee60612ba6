import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Hands } from '../../layout/pieces/struck.ts';
import type { Player } from '../../layout/player.ts';
import type { Report } from '../../report/report.ts';
import { capitalised, listed, nameOf } from './nameOf.ts';

/** What the hands that play a piece are called, whoever leads. */
export const handNames: Readonly<Record<Hands, string>> = {
  both: 'Both hands',
  lead: 'Lead hand',
  right: 'Right hand',
  left: 'Left hand',
  none: 'No hand',
};

/** Which hands play a piece; of the lead hand, which that is: `Lead hand (right)`. */
export const handsWords = (choice: Hands, { leadHand }: Pick<Player, 'leadHand'>): string =>
  choice === 'lead' ? `${handNames.lead} (${leadHand})` : handNames[choice];

/** How a hi-hat is played that both hands may play. */
export const hiHatNames: Readonly<Record<Player['hiHat'], string>> = {
  either: 'Either hand',
  crossed: 'Crossed',
  open: 'Open',
};

type PlayedBy = Report['player']['playedBy'];

const rows = [
  { hands: handNames.both, key: 'right left' },
  { hands: `${handNames.right} alone`, key: 'right' },
  { hands: `${handNames.left} alone`, key: 'left' },
  { hands: handNames.none, key: '' },
] as const;

/** Which hand plays what, a row for each that plays anything: `Right hand alone`, `Ride and Hi-hat`. */
export function playedByWords(
  playedBy: PlayedBy,
  layout: Layout,
): readonly { readonly hands: string; readonly pieces: string }[] {
  return rows.flatMap(({ hands, key }) => {
    const pieces = playedBy.filter((entry) => entry.hands.join(' ') === key);
    if (pieces.length === 0) return [];
    return [{ hands, pieces: listed(pieces.map(({ piece }) => nameOf(layout, piece))) }];
  });
}

/** Farther than this on the other side a hand alone reaches across, mm. Common practice, no source. */
const ACROSS = 150;

/** What a hand alone plays though it stands on the other side: `the left hand to Ride`; empty where none does. */
export function acrossWords(playedBy: PlayedBy, layout: Layout): string {
  const reaches = rows.flatMap(({ key }) => {
    if (key !== 'right' && key !== 'left') return [];
    const pieces = playedBy.filter(({ piece: id, hands: [alone, ...others] }) => {
      const piece = layout.pieces.find((each) => each.id === id);
      if (alone !== key || others.length > 0 || !piece || !isStruck(piece)) return false;
      return (key === 'right' ? -piece.x : piece.x) > ACROSS;
    });
    if (pieces.length === 0) return [];
    return [`the ${key} hand to ${listed(pieces.map(({ piece }) => nameOf(layout, piece)))}`];
  });
  return capitalised(listed(reaches));
}
