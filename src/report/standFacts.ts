import type { Id } from '../layout/fields.ts';
import type { StandClass } from '../layout/mics/mount.ts';
import { smallestStand } from '../rig/smallestStand.ts';
import { tippingOf } from '../rig/tipping.ts';
import type { Report } from './report.ts';

/** What can be said of a mic's stand, well or badly placed. */
export interface StandFacts {
  /** Righting over tipping moment (rules T1 to T3); infinite when the load's centre is over the base. */
  readonly factor: number;
  /** The smallest class that reaches the mic from where the base stands (rule S4); undefined when none does. */
  readonly smallest: StandClass | undefined;
}

/** Undefined for a mic that is not there or not on a stand. */
export function standFactsOf({ rig }: Pick<Report, 'rig'>, micId: Id): StandFacts | undefined {
  const placed = rig.mics.find(({ mic }) => mic.id === micId);
  const tipping = placed && tippingOf(placed);
  if (!placed?.stand || !tipping) return undefined;
  const { hold, footprint } = placed.stand;
  return { factor: tipping.factor, smallest: smallestStand(hold, footprint.hub) };
}
