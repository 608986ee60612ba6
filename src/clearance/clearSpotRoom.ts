import type { Mm } from '../units/quantity.ts';
import { DEAREST } from './clearSpotCost.ts';
import { placesAround, ROUGH } from './clearSpotScout.ts';
import type { SpotScene } from './clearSpotTrial.ts';

/** Places between two steps. */
const STEP = 64;

/**
 * Rule N7: where no spot is clear, the most room that any place of the rough look all round has, mm: of those where the mic may stand
 * and keeps its aim, the present one among them. With a margin as small as that there is a clear spot. Undefined where it may stand nowhere. Step by
 * step, so that it can be left.
 */
export function* mostRoom({
  family,
  now,
  clearanceOf,
  barred,
}: SpotScene): Generator<void, Mm | undefined> {
  let most: Mm | undefined;
  const places = placesAround(family, now, { strides: ROUGH, dearest: DEAREST });
  for (const [looked, { values }] of places.entries()) {
    if (looked % STEP === 0) yield;
    const spot = family.spotAt(values);
    if (!spot) continue;
    const room = clearanceOf(spot.groups.flat(), most);
    if ((most === undefined || room > most) && barred(spot) === undefined) most = room;
  }
  return most;
}
