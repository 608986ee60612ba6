import { distance, vec } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import type { Layout } from '../../layout/layout.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import type { Mm } from '../../units/quantity.ts';
import type { Finding } from '../report.ts';

/**
 * From how far away a mic hears more of the room and the rest of the kit than of its own source: nobody puts it there on purpose, so a
 * number was mistyped. Common practice, no source; a mic that is to hear several pieces (overheads, room) may stand farther back.
 */
const FAR: Mm = 3000;
const FAR_FROM_SEVERAL: Mm = 6000;

/** Whether a mic is implausibly far from the nearest piece that it is to hear. `numbers.away`: how far, mm. */
export function distanceFindings(
  { mic, tip }: PlacedMic,
  pieces: Layout['pieces'],
): readonly Finding[] {
  let nearest: { readonly id: Id; readonly away: Mm } | undefined;
  let heard = 0;
  for (const piece of pieces) {
    if (piece.kind === 'throne' || !mic.hears.includes(piece.id)) continue;
    heard += 1;
    const away = distance(tip, vec(piece.x, piece.y, heightOf(piece)));
    if (!nearest || away < nearest.away) nearest = { id: piece.id, away };
  }
  if (!nearest || nearest.away <= (heard > 1 ? FAR_FROM_SEVERAL : FAR)) return [];
  return [
    {
      key: `mic-far-away:${mic.id}`,
      code: 'mic-far-away',
      severity: 'warn',
      about: [mic.id, nearest.id],
      place: tip,
      numbers: { away: nearest.away },
    },
  ];
}

const heightOf = (piece: Layout['pieces'][number]): Mm => ('z' in piece ? piece.z : 0);
