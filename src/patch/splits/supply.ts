import type { Leg, Split } from '../../layout/patch.ts';
import { P48, voltsAtMic } from '../phantom.ts';
import type { Volts } from '../quantities.ts';

/** Whether the far end of a leg gives 48 V; `channel` is what the mic's row of the input list says. */
export const gives = (leg: Leg, channel: boolean): boolean =>
  leg.to === 'channel' ? channel : leg.phantom;

/** How many supplies reach the mic: those at the ends of direct legs. */
export const suppliesReaching = ({ legs }: Split, channel: boolean): number =>
  legs.filter((leg) => leg.connection === 'direct' && gives(leg, channel)).length;

/** What the supplies of a split leave at a mic that draws the most it may. */
export const voltsThrough = (split: Split, channel: boolean): Volts =>
  voltsAtMic(P48, P48.most, suppliesReaching(split, channel));

/**
 * Whether a mic's own row should start with 48 V on: the mic needs it, and the row is reached by a direct leg or is not split
 * off at all.
 */
export function rowSupplies(needs: boolean, split: Split | undefined): boolean {
  if (!needs || !split) return needs;
  return split.legs.some(({ to, connection }) => to === 'channel' && connection === 'direct');
}
