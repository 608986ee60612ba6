import { cosDeg, sinDeg } from '../../../units/angle.ts';
import type { Degrees, Mm } from '../../../units/quantity.ts';
import { tidy, tidyAzimuth, tidySpot, wholeSpot } from '../../edit/tidy.ts';
import type { Layout } from '../../layout.ts';
import type { MicClass } from '../../mics/micClass.ts';
import type { StandClass, StandMount } from '../../mics/mount.ts';
import { ahead } from '../defaults/room.ts';
import { type StandSpec, standSpec } from '../standClasses.ts';
import { type Spot, standingAt } from './standingRoom.ts';

/** Where the front of a mic is and where it looks; kit frame, azimuth on the plan, pitch above the level. */
export interface Aim {
  readonly tip: Spot & { readonly z: Mm };
  readonly azimuth: Degrees;
  readonly pitch: Degrees;
}

/** A mic that needs a stand. */
export interface StandWish {
  readonly layout: Layout;
  readonly micClass: MicClass;
  readonly stand: StandClass;
}

/** Shares of the longest boom at which bases are tried, and how far to either side of straight behind the mic. */
const SHARES = [0.55, 0.7, 0.4, 0.8];
const ASIDE: readonly Degrees[] = [0, 20, -20, 40, -40, 60, -60, 90, -90];

/**
 * A mic at an aim on a stand whose base is put where its boom reaches and its feet have room: behind the mic as seen from `out`
 * (the direction away from the drum), else more and more to the side. One mount, or none where no spot is in the stand's reach.
 */
export function standMountsAt(
  { layout, micClass, stand }: StandWish,
  aim: Aim,
  out: Degrees,
): readonly StandMount[] {
  const spec = standSpec(stand);
  const back = micClass.address === 'end' ? (micClass.length * 2) / 3 : micClass.diameter / 2;
  const level = ahead(aim.tip, aim.azimuth, -back * cosDeg(aim.pitch));
  const hold = { ...level, z: aim.tip.z - back * sinDeg(aim.pitch) };
  const spots = (spec.boomMax === 0 ? [0] : SHARES.map((share) => share * spec.boomMax))
    .filter((distance) => reaches(spec, distance, hold.z))
    .flatMap((distance) => ASIDE.map((aside) => ahead(hold, out + aside, distance)));
  const standing = standingAt(layout, { spec, height: hold.z }, spots);
  if (!standing) return [];
  return [
    {
      kind: 'stand',
      stand,
      base: wholeSpot(standing.base.x, standing.base.y),
      turn: standing.turn,
      mast: null,
      tip: { ...tidySpot(aim.tip.x, aim.tip.y), z: tidy(aim.tip.z) },
      azimuth: tidyAzimuth(aim.azimuth),
      pitch: tidy(aim.pitch),
    },
  ];
}

/** {@link standMountsAt} for a mic that is put down for the user: at whole mm and half degrees, before anybody asks whether it is clear there. */
export const roundMountsAt = (wish: StandWish, aim: Aim, out: Degrees): readonly StandMount[] =>
  standMountsAt(wish, rounded(aim), out);

function rounded({ tip, azimuth, pitch }: Aim): Aim {
  const half = (angle: Degrees): Degrees => Math.round(2 * angle) / 2 + 0;
  return {
    tip: { ...wholeSpot(tip.x, tip.y), z: Math.round(tip.z) },
    azimuth: tidyAzimuth(half(azimuth)),
    pitch: half(pitch),
  };
}

/** Whether mast and boom come from a base at a level distance to a height. */
function reaches(spec: StandSpec, distance: Mm, height: Mm): boolean {
  const clutch = Math.min(spec.mastMax, Math.max(spec.mastMin, height));
  const boom = Math.hypot(distance, height - clutch);
  return boom >= spec.boomMin && boom <= spec.boomMax;
}
