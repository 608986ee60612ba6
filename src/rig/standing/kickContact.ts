import type { Capsule } from '../../geometry/capsule.ts';
import {
  type CapsuleContact,
  capsuleToCylinder,
  capsuleToPiercedDisc,
  capsuleToTube,
} from '../../geometry/capsuleContact.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { kickFrame, portCentre } from '../pieces/kickFrame.ts';

/**
 * K4 A kick with a port is hollow: a mic and its boom may pass through the port and stand inside. They must keep off the
 *    shell's wall, the batter head, and the front head round the port; wall and heads have no thickness.
 */
export function kickContact(
  capsule: Capsule,
  kick: Kick,
  { diameter }: NonNullable<Kick['port']>,
): CapsuleContact {
  const frame = kickFrame(kick);
  const radius = kick.diameter / 2;
  const axis = frame.front;
  const contacts = [
    capsuleToTube(capsule, {
      centre: frame.middle,
      axis,
      innerRadius: radius,
      outerRadius: radius,
      halfHeight: kick.depth / 2,
    }),
    capsuleToCylinder(capsule, { centre: frame.backHead, axis, radius, halfHeight: 0 }),
    capsuleToPiercedDisc(capsule, {
      centre: frame.frontHead,
      axis,
      radius,
      holeCentre: portCentre(kick, frame),
      holeRadius: diameter / 2,
    }),
  ];
  return contacts.reduce((worst, next) => (next.gap < worst.gap ? next : worst));
}
