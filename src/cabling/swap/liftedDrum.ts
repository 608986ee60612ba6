import { type Bounds, boundsMeet, boundsOfCapsule, joined } from '../../geometry/bounds.ts';
import type { Capsule } from '../../geometry/capsule.ts';
import { type CapsuleContact, capsuleToCapsule } from '../../geometry/capsuleContact.ts';
import type { Cylinder } from '../../geometry/cylinder.ts';
import {
  boundsOfLifted,
  capsuleToLifted,
  type LiftedCylinder,
  liftedOverlap,
} from '../../geometry/liftedCylinder.ts';
import { along, type Vec3, vec } from '../../geometry/vector.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import type { PlacedPiece } from '../../rig/placed.ts';
import type { Mm } from '../../units/quantity.ts';

/** Room that hands and a drum that is not lifted quite straight want round it. Common practice, no source. */
export const SWAP_ROOM: Mm = 10;

/** All that a drum passes while it is lifted straight up by its own height, with the room round it. Kit frame, mm. */
export interface LiftedDrum {
  /** The drum's own height: shell and both hoops. */
  readonly rise: Mm;
  readonly body: LiftedCylinder;
  /** Its own legs, which come up with it. */
  readonly legs: readonly Capsule[];
  readonly bounds: Bounds;
}

/**
 * X1 The drum is lifted straight up by its own height: its shell with both hoops, as one cylinder, and legs that stand on the shell. What
 *    it passes on the way counts, from where it stands to the end of the lift.
 * X2 Round it, and over it, there must be {@link SWAP_ROOM}. Not under it: what it leaves behind is in nobody's way.
 */
export function liftedDrum(
  { shells: [shell], hardware }: Pick<PlacedPiece, 'shells' | 'hardware'>,
  { rim, support }: Drum,
): LiftedDrum | null {
  if (!shell) return null;
  const half = shell.halfHeight + rim.height;
  const rise = 2 * half;
  const cylinder: Cylinder = {
    centre: along(shell.centre, shell.axis, SWAP_ROOM / 2),
    axis: shell.axis,
    radius: shell.radius + rim.width + SWAP_ROOM,
    halfHeight: half + SWAP_ROOM / 2,
  };
  const body = { cylinder, rise };
  const legs = support.kind === 'legs' ? hardware.map((leg) => liftedLeg(leg, rise)) : [];
  const own = boundsOfLifted(body);
  return { rise, body, legs, bounds: joined([own, ...legs.map(boundsOfCapsule)]) ?? own };
}

/** A leg stands upright (P3), so that its way is a longer leg. */
const liftedLeg = ({ a, b, radius }: Capsule, rise: Mm): Capsule => ({
  a: vec(a.x, a.y, Math.min(a.z + SWAP_ROOM, b.z)),
  b: vec(b.x, b.y, b.z + rise),
  radius: radius + SWAP_ROOM,
});

/** Where something stands in a lifted drum's way, and how deep; undefined when it does not. */
export interface InTheWay {
  readonly into: Mm;
  readonly at: Vec3;
}

export function capsuleInTheWay(
  { body, legs, bounds }: LiftedDrum,
  capsule: Capsule,
): InTheWay | undefined {
  if (!boundsMeet(bounds, boundsOfCapsule(capsule))) return undefined;
  const contacts = [
    capsuleToLifted(capsule, body),
    ...legs.map((leg) => capsuleToCapsule(capsule, leg)),
  ];
  return deepest(contacts.map(({ gap, at }: CapsuleContact) => ({ into: -gap, at })));
}

/** A cymbal, shell or seat in the way of the drum itself; legs pass none. */
export function solidInTheWay({ body }: LiftedDrum, solid: Cylinder): InTheWay | undefined {
  const overlap = liftedOverlap(body, solid);
  return overlap && deepest([{ into: overlap.depth, at: overlap.at }]);
}

export const deepest = (found: readonly InTheWay[]): InTheWay | undefined =>
  found.reduce<InTheWay | undefined>(
    (worst, one) => (one.into > (worst?.into ?? 0) ? one : worst),
    undefined,
  );
