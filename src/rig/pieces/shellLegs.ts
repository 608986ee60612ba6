import { listed } from '../../geometry/listed.ts';
import { type Vec3, vec } from '../../geometry/vector.ts';
import type { Support } from '../../layout/pieces/support.ts';
import type { Mm } from '../../units/quantity.ts';
import { discFootprint, LEG_RADIUS, legDirections, planPoint } from '../feet.ts';
import type { Carrier } from './pieceStand.ts';

/** Rubber foot of a drum's leg. Common practice, no source. */
const FOOT_RADIUS: Mm = 15;
const FOOT_HEIGHT: Mm = 20;
const LEGS = 3;

/**
 * P3 Legs on a drum's own shell stand upright, three of them, each `overhang` outside the shell as seen from above its
 *    middle, from the deck to half the shell's height. Each foot is a small disc of its own: cables pass between them.
 */
export function shellLegs(
  support: Extract<Support, { kind: 'legs' }>,
  middle: Vec3,
  shellRadius: Mm,
): Carrier {
  const feet = listed(legDirections(support.turn, LEGS), (direction) =>
    planPoint(middle, direction, shellRadius + support.overhang),
  );
  return {
    hardware: listed(feet, ({ x, y }) => ({
      a: vec(x, y, LEG_RADIUS),
      b: vec(x, y, middle.z),
      radius: LEG_RADIUS,
    })),
    footprints: listed(feet, (foot) => discFootprint(foot, FOOT_RADIUS, FOOT_HEIGHT)),
  };
}
