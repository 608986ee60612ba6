import { fromInches } from '../../../units/inch.ts';
import type { Id } from '../../fields.ts';
import type { Layout } from '../../layout.ts';
import { heldBy, usualPercussion } from '../defaults/usualPieces.ts';
import { fivePieceTwoRacks } from './fivePieceTwoRacks.ts';

/** A scenario of our own: hall, date and player are invented. */
export function demo(id: Id): Layout {
  const kit = fivePieceTwoRacks(id);
  const cowbell = {
    ...usualPercussion('cowbell'),
    x: 150,
    y: 930,
    z: 930,
    diameter: fromInches(3),
    support: heldBy('kick'),
  };
  return {
    ...kit,
    name: 'Demo: Saltworks Hall',
    venue: {
      name: 'Saltworks Hall (invented)',
      date: '2031-05-17',
      temperature: 24,
      humidity: 45,
      notes: 'Second of three acts. Box goes on the hi-hat side; the multicore runs upstage.',
    },
    player: { ...kit.player, name: 'Demo drummer', stature: 1780, seatHeight: 510 },
    pieces: [...kit.pieces, cowbell],
  };
}
