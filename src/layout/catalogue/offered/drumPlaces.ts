import { toDegrees, turnBetween } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import { tidyAzimuth } from '../../edit/tidy.ts';
import type { Layout } from '../../layout.ts';
import type { MicClass } from '../../mics/micClass.ts';
import type { Mount } from '../../mics/mount.ts';
import type { Drum } from '../../pieces/drum.ts';
import type { Percussion } from '../../pieces/percussion.ts';
import { isDrum } from '../../pieces/piece.ts';
import { ahead } from '../defaults/room.ts';
import type { MountChoice } from '../micClasses.ts';
import { roundMountsAt } from './standMount.ts';

/** Round the rim from the best direction, a little more to either side each time. */
const ROUND: readonly Degrees[] = [0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90, -90];

/** Heights of a mic over small percussion (common practice, no source). */
const ABOVE_PERCUSSION: readonly Mm[] = [180, 250, 320];

/** How a mic looks over a rim (common practice, no source): low over the edge, then flatter and lower, then higher and farther out. */
const LOOKS = [
  { reach: 30, height: 45, pitch: 35 },
  { reach: 20, height: 35, pitch: 20 },
  { reach: 0, height: 60, pitch: 45 },
] as const;

/** Places for a mic on a drum: over the rim, first on the side away from the player (a snare: between hi-hat and rack tom). */
export function* drumPlaces(
  layout: Layout,
  drum: Drum,
  micClass: MicClass,
  choice: MountChoice,
): Generator<Mount, void> {
  if (choice === 'plateInKick' || choice === 'plateOnDeck') return;
  const best = drum.kind === 'snare' ? betweenNeighbours(layout, drum) : fromPlayer(drum);
  for (const look of LOOKS) {
    for (const aside of ROUND) {
      const angle = tidyAzimuth(Math.round(best + aside));
      if (choice === 'clip') {
        yield { kind: 'clip', drum: drum.id, material: 'rubber', angle, ...look };
        continue;
      }
      const edge = ahead(drum, angle, drum.diameter / 2 - look.reach);
      const tip = { ...edge, z: drum.z + look.height };
      const aim = { tip, azimuth: angle + 180, pitch: -look.pitch };
      yield* roundMountsAt({ layout, micClass, stand: choice }, aim, angle);
    }
  }
}

/** Places over small percussion: beside and above it, away from the player. */
export function* percussionPlaces(
  layout: Layout,
  piece: Percussion,
  micClass: MicClass,
  choice: MountChoice,
): Generator<Mount, void> {
  if (choice === 'clip' || choice === 'plateInKick' || choice === 'plateOnDeck') return;
  for (const above of ABOVE_PERCUSSION) {
    for (const aside of ROUND) {
      const out = fromPlayer(piece) + aside;
      const tip = { ...ahead(piece, out, piece.diameter / 2 + 150), z: piece.z + above };
      const aim = { tip, azimuth: out + 180, pitch: -45 };
      yield* roundMountsAt({ layout, micClass, stand: choice }, aim, out);
    }
  }
}

/** The direction from the player over a piece; straight ahead where the piece stands on the player. */
export const fromPlayer = ({ x, y }: { readonly x: Mm; readonly y: Mm }): Degrees =>
  x === 0 && y === 0 ? 90 : toDegrees(Math.atan2(y, x));

/** The direction from a snare that passes between the hi-hat and the rack tom nearest to it. */
function betweenNeighbours(layout: Layout, snare: Drum): Degrees {
  const hiHat = layout.pieces.find((piece) => piece.kind === 'hiHat');
  const toms = layout.pieces.filter(isDrum).filter(({ kind }) => kind === 'rackTom');
  if (!hiHat || toms.length === 0) return fromPlayer(snare);
  const toHat = toward(snare, hiHat);
  const turns = toms.map((tom) => turnBetween(toHat, toward(snare, tom)));
  const least = turns.reduce((a, b) => (Math.abs(b) < Math.abs(a) ? b : a));
  return toHat + least / 2;
}

const toward = (
  from: { readonly x: Mm; readonly y: Mm },
  to: { readonly x: Mm; readonly y: Mm },
): Degrees => toDegrees(Math.atan2(to.y - from.y, to.x - from.x));
