import type { Layout } from '../../layout/layout.ts';
import type { Report } from '../../report/report.ts';
import { listed, nameOf } from './nameOf.ts';

type PlayedBy = Report['player']['playedBy'];

const rows = [
  { hands: 'Both hands', key: 'right left' },
  { hands: 'Right hand alone', key: 'right' },
  { hands: 'Left hand alone', key: 'left' },
  { hands: 'No hand', key: '' },
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
