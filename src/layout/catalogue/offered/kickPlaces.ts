import { cosDeg, sinDeg } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import { tidyAzimuth, wholeSpot } from '../../edit/tidy.ts';
import type { Layout } from '../../layout.ts';
import type { MicClass } from '../../mics/micClass.ts';
import type { Mount } from '../../mics/mount.ts';
import type { Kick } from '../../pieces/kick.ts';
import { ahead } from '../defaults/room.ts';
import type { MountChoice } from '../micClasses.ts';
import { roundMountsAt } from './standMount.ts';

/** How far in front of a closed head a kick mic stands, and how far inside the port of an open one (common practice, no source). */
const IN_FRONT: readonly Mm[] = [60, 100, 150];
const INSIDE: readonly Mm[] = [75, 100, 50];
const PLATE_DEPTHS: readonly Mm[] = [220, 150];

/** Where a second mic stands beside the first: shares of the radius to the right of the head's middle and above it. */
const BESIDE = [
  [0.45, 0],
  [-0.45, 0],
  [0.4, 0.35],
  [-0.4, 0.35],
] as const;
/** Sides of the kick from which a stand comes, from straight ahead. */
const FROM: readonly Degrees[] = [0, 60, -60];

/**
 * Places for a mic on a kick drum, the most usual first: in the port, else in front of the head; a plate inside or in front.
 * Then in front of the head beside what may stand there already.
 */
export function* kickPlaces(
  layout: Layout,
  kick: Kick,
  micClass: MicClass,
  choice: MountChoice,
): Generator<Mount, void> {
  if (choice === 'clip') return;
  if (choice === 'plateInKick') {
    for (const depth of PLATE_DEPTHS) yield { kind: choice, kick: kick.id, depth };
    return;
  }
  if (choice === 'plateOnDeck') {
    const spot = ahead(kick, kick.turn, kick.depth / 2 + 150);
    yield { kind: choice, ...wholeSpot(spot.x, spot.y), turn: tidyAzimuth(kick.turn + 180) };
    return;
  }
  const distances = kick.port ? INSIDE.map((inside) => -inside) : IN_FRONT;
  for (const distance of distances) {
    const aim = {
      tip: beforeHead(kick, distance),
      azimuth: kick.turn + 180,
      pitch: -kick.rise,
    };
    yield* roundMountsAt({ layout, micClass, stand: choice }, aim, kick.turn);
  }
  for (const distance of IN_FRONT) {
    for (const [right, up] of BESIDE) {
      const spot = { right: (right * kick.diameter) / 2, up: (up * kick.diameter) / 2 };
      const aim = {
        tip: beforeHead(kick, distance, spot),
        azimuth: kick.turn + 180,
        pitch: -kick.rise,
      };
      for (const side of FROM) {
        yield* roundMountsAt({ layout, micClass, stand: choice }, aim, kick.turn + side);
      }
    }
  }
}

/** A spot on the front head, from its middle. */
interface OnHead {
  readonly right: Mm;
  readonly up: Mm;
}

/** The point at a distance before a spot of the front head (negative: inside): the port's middle, else beside the head's. */
function beforeHead(
  kick: Kick,
  distance: Mm,
  { right, up }: OnHead = kick.port ?? { right: kick.diameter / 8, up: 0 },
): { x: Mm; y: Mm; z: Mm } {
  const forward = kick.depth / 2 + distance;
  const level = forward * cosDeg(kick.rise) - up * sinDeg(kick.rise);
  const spot = ahead(ahead(kick, kick.turn, level), kick.turn + 90, right);
  return {
    ...spot,
    z: Math.max(60, kick.z + forward * sinDeg(kick.rise) + up * cosDeg(kick.rise)),
  };
}
