import { standSpec } from '../../layout/catalogue/standClasses.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import { servingStands } from '../../rig/smallestStand.ts';
import { FIRM, tippingOf } from '../../rig/tipping.ts';
import type { Finding } from '../report.ts';

/** What a mic's mount cannot do or should not: out of the stand's reach, near tipping, metal on the hoop. */
export const standFindings = (placed: PlacedMic): readonly Finding[] => [
  ...beyondStand(placed),
  ...mayTip(placed),
  ...metalRim(placed),
];

/**
 * `numbers.serving`: how many classes of stand would reach from where the base stands; `rise`: how far the mic is held above the mast's
 * top as it stands, below it when negative; `folded`: how much longer the shortest boom is than the way to it, only where it is.
 */
function beyondStand({ mic, stand }: PlacedMic): Finding[] {
  if (!stand || stand.beyondReach <= 0) return [];
  const { boomMin } = standSpec(stand.standClass);
  const folded = boomMin - stand.boomLength;
  return [
    {
      key: `mic-beyond-stand:${mic.id}`,
      code: 'mic-beyond-stand',
      severity: 'stop',
      about: [mic.id],
      place: stand.hold,
      numbers: {
        beyond: stand.beyondReach,
        serving: servingStands(stand.hold, stand.footprint.hub).length,
        rise: stand.hold.z - stand.clutch.z,
        ...(folded > 0 && { folded }),
      },
    },
  ];
}

/** A factor below 1 is a stand that falls by itself as soon as it is let go: nobody sets it up so. */
function mayTip(placed: PlacedMic): Finding[] {
  const tipping = tippingOf(placed);
  if (!placed.stand || !tipping || tipping.factor >= FIRM) return [];
  return [
    {
      key: `stand-may-tip:${placed.mic.id}`,
      code: 'stand-may-tip',
      severity: tipping.factor < 1 ? 'stop' : 'warn',
      about: [placed.mic.id],
      place: placed.stand.clutch,
      numbers: { factor: tipping.factor },
    },
  ];
}

function metalRim({ mic, tip }: PlacedMic): Finding[] {
  if (mic.mount.kind !== 'clip' || mic.mount.material !== 'metal') return [];
  return [
    {
      key: `clip-metal-rim:${mic.id}`,
      code: 'clip-metal-rim',
      severity: 'note',
      about: [mic.id, mic.mount.drum],
      place: tip,
      numbers: {},
    },
  ];
}
