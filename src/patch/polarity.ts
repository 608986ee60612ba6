import type { Id } from '../layout/fields.ts';
import type { Pickup } from './pickup.ts';

/**
 * Which mics to start with reversed polarity.
 *
 * A4 Opposite sides of one head start opposite (A3), so a mic on the far side of a drum's head is reversed when another close
 *    mic of the same drum is on the usual side. The usual side is the stick's; of a kick it is the beater's far side, where its
 *    mics usually are. Mics from whose place no side is certain, and all others, start as plugged.
 */
export function reversedMics(pickups: readonly Pickup[]): ReadonlySet<Id> {
  const onUsualSide = new Set(
    pickups.filter((pickup) => pickup.first === usualStart(pickup)).map(({ own }) => own?.id),
  );
  const reversed = pickups.filter(
    (pickup) =>
      pickup.first !== undefined &&
      pickup.first !== usualStart(pickup) &&
      onUsualSide.has(pickup.own?.id),
  );
  return new Set(reversed.map(({ placed }) => placed.mic.id));
}

const usualStart = ({ source }: Pickup): NonNullable<Pickup['first']> =>
  source === 'kick' ? 'compression' : 'rarefaction';
