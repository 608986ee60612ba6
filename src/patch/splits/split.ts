import type { Id } from '../../layout/fields.ts';
import type { Ohms } from '../quantities.ts';

/** One end of a split. */
interface LegFacts {
  /** `direct`: hard-wired to the mic. `isolated`: over a transformer, which passes audio only. */
  readonly connection: 'direct' | 'isolated';
  /** Pin 1 is open at this end. */
  readonly lifted: boolean;
  /** Input impedance of what it goes to, above 0. */
  readonly impedance: Ohms;
}

/** The leg to the mic's own row of the input list: its 48 V is that of the row. */
export interface ChannelLeg extends LegFacts {
  readonly to: 'channel';
}

/** A leg to anywhere else, by name: monitors, a recorder, the amplifier of a seat shaker. */
export interface OtherLeg extends LegFacts {
  readonly to: 'other';
  readonly name: string;
  /** Whether that end gives 48 V. */
  readonly phantom: boolean;
}

export type Leg = ChannelLeg | OtherLeg;

/** One signal to several places: with a transformer in a passive splitter, or a plain Y, wires alone. */
export interface Split {
  readonly id: Id;
  /** The mic whose signal is split. The id of another split is refused, as a fact. */
  readonly of: Id;
  readonly kind: 'transformer' | 'y';
  readonly legs: readonly Leg[];
}

/** Input impedance of a mic input, from memory: 1 to 3 kilohm are usual. */
const USUAL_IMPEDANCE: Ohms = 2000;

/** The usual split: the channel on the direct leg, another place on an isolated one. */
export const usualSplit = (id: Id, mic: Id, name: string): Split => ({
  id,
  of: mic,
  kind: 'transformer',
  legs: [
    { to: 'channel', connection: 'direct', lifted: false, impedance: USUAL_IMPEDANCE },
    {
      to: 'other',
      name,
      connection: 'isolated',
      phantom: false,
      lifted: false,
      impedance: USUAL_IMPEDANCE,
    },
  ],
});

/** The split of a mic: the first where, wrongly, there are several. */
export const splitOf = (splits: readonly Split[], mic: Id): Split | undefined =>
  splits.find(({ of }) => of === mic);
