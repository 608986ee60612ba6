import type { Id } from '../../layout/fields.ts';
import type { Leg, Split } from '../../layout/patch.ts';
import type { Ohms } from '../quantities.ts';

/** Input impedance of a mic input, from memory: 1 to 3 kilohm are usual. */
const USUAL_IMPEDANCE: Ohms = 2000;

/** One more leg to another place: isolated where there is a transformer. */
export const usualLeg = (kind: Split['kind'], name: string): Leg => ({
  to: 'other',
  name,
  connection: kind === 'y' ? 'direct' : 'isolated',
  phantom: false,
  lifted: false,
  impedance: USUAL_IMPEDANCE,
});

/** The usual split: the channel on the direct leg, another place on an isolated one. */
export const usualSplit = (id: Id, mic: Id, name: string): Split => ({
  id,
  of: mic,
  kind: 'transformer',
  legs: [
    { to: 'channel', connection: 'direct', lifted: false, impedance: USUAL_IMPEDANCE },
    usualLeg('transformer', name),
  ],
});

/** The split of a mic: the first where, wrongly, there are several. */
export const splitOf = (splits: readonly Split[], mic: Id): Split | undefined =>
  splits.find(({ of }) => of === mic);
