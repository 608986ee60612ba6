import type { Degrees, Mm } from '../../../units/quantity.ts';
import type { Layout } from '../../layout.ts';
import type { MicClass } from '../../mics/micClass.ts';
import type { Mount } from '../../mics/mount.ts';
import type { Cymbal } from '../../pieces/cymbal.ts';
import type { HiHat } from '../../pieces/hiHat.ts';
import { isStruck, type Piece } from '../../pieces/piece.ts';
import { ahead } from '../defaults/room.ts';
import type { MountChoice } from '../micClasses.ts';
import { fromPlayer } from './drumPlaces.ts';
import { roundMountsAt } from './standMount.ts';

const ROUND: readonly Degrees[] = [0, 20, -20, 40, -40, 60, -60, 80, -80];
/** Heights over the edge plane; a swinging cymbal rises under the first ones (common practice, no source). */
const ABOVE_HI_HAT: readonly Mm[] = [125, 175, 230];
const ABOVE_CYMBAL: readonly Mm[] = [200, 250, 320];
/** Overheads stand 600 to 1000 mm above the cymbals (common practice, from memory). */
const ABOVE_ALL: readonly Mm[] = [650, 750, 850, 600, 950];
/** On a large kit no boom reaches its middle from outside: then they hang farther out. */
const OUTWARD: readonly Mm[] = [0, 150, 300, 450];

/** Places for a mic of one cymbal's or the hi-hat's own: above its far edge, looking down on its bow. */
export function* cymbalPlaces(
  layout: Layout,
  cymbal: Cymbal | HiHat,
  micClass: MicClass,
  choice: MountChoice,
): Generator<Mount, void> {
  if (choice === 'clip' || choice === 'plateInKick' || choice === 'plateOnDeck') return;
  const heights = cymbal.kind === 'hiHat' ? ABOVE_HI_HAT : ABOVE_CYMBAL;
  for (const above of heights) {
    for (const aside of ROUND) {
      const out = fromPlayer(cymbal) + aside;
      const tip = { ...ahead(cymbal, out, 0.4 * cymbal.diameter), z: cymbal.z + above };
      const aim = { tip, azimuth: out + 180, pitch: -65 };
      yield* roundMountsAt({ layout, micClass, stand: choice }, aim, out);
    }
  }
}

/** Places for an overhead: above the middle of what it hears, looking straight down. */
export function* overheadPlaces(
  layout: Layout,
  heard: readonly Piece[],
  micClass: MicClass,
  choice: MountChoice,
): Generator<Mount, void> {
  if (choice === 'clip' || choice === 'plateInKick' || choice === 'plateOnDeck') return;
  const struck = heard.filter(isStruck);
  if (struck.length === 0) return;
  const middle = {
    x: struck.reduce((sum, { x }) => sum + x, 0) / struck.length,
    y: struck.reduce((sum, { y }) => sum + y, 0) / struck.length,
  };
  const top = Math.max(...struck.map(({ z }) => z));
  const side = middle.x < 0 ? 180 : 0;
  for (const shift of OUTWARD) {
    const over = ahead(middle, side, shift);
    for (const above of ABOVE_ALL) {
      for (const aside of [0, 90, -90, 180]) {
        const aim = { tip: { ...over, z: top + above }, azimuth: 270, pitch: -90 };
        yield* roundMountsAt({ layout, micClass, stand: choice }, aim, side + aside);
      }
    }
  }
}
