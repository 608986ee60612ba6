import { add, along, distance, scale, type Vec3 } from '../../geometry/vector.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { ClipMount } from '../../layout/mics/mount.ts';
import type { Drum } from '../../layout/pieces/drum.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import type { MicSolid, PlacedMic } from '../placed.ts';
import { rimDirection } from '../rimDirection.ts';
import { surfaceOf } from '../surface.ts';
import { type Microphone, type PlacedBody, type Pose, placeBody } from './body.ts';
import { type Kit, wayDown } from './wayDown.ts';

/** Common practice, no source. */
const CLIP_ARM_RADIUS: Mm = 5;

/**
 * M6 With C, n and r of the head and e the direction of the rim at the clip's angle (M5): the tip is
 *    C + (r - reach) e + height n, and the axis is -cos(pitch) e - sin(pitch) n.
 * M7 A side-address body on a clip stands up from the head: its connector is at the end that points away from the head.
 */
export function clipPose(mount: ClipMount, drum: Drum): Pose {
  const surface = surfaceOf(drum);
  const { centre, normal, radius } = surface;
  const outward = rimDirection(surface, mount.angle);
  const cos = cosDeg(mount.pitch);
  const sin = sinDeg(mount.pitch);
  return {
    tip: along(along(centre, outward, radius - mount.reach), normal, mount.height),
    axis: add(scale(outward, -cos), scale(normal, -sin)),
    across: add(scale(outward, -sin), scale(normal, cos)),
    aside: outward,
  };
}

/** M8 A clip grips the hoop: at its top, on its outside. */
export function clipGrip(mount: ClipMount, drum: Drum): Vec3 {
  const surface = surfaceOf(drum);
  const outward = rimDirection(surface, mount.angle);
  const onRim = along(surface.centre, outward, surface.radius + drum.rim.width);
  return along(onRim, surface.normal, drum.rim.height);
}

/** M9 The clip's arm is straight, from the grip to where the mic is held; the cable follows it, then the drum to the deck. */
export function placeClipMic(
  { mic, micClass }: Microphone,
  mount: ClipMount,
  drum: Drum,
  kit: Kit,
): PlacedMic {
  const pose = clipPose(mount, drum);
  const body = placeBody(micClass, pose);
  const grip = clipGrip(mount, drum);
  const down = wayDown(drum, grip, kit);
  return {
    mic,
    micClass,
    tip: pose.tip,
    axis: pose.axis,
    solids: withArm(body, grip),
    stand: null,
    descent: [{ along: 'arm', length: distance(grip, body.hold) }, ...down.descent],
    deckPoint: down.deckPoint,
  };
}

/** The solids of a clip mic alone, for looking at many places of one. */
export const clipSolids = (micClass: MicClass, mount: ClipMount, drum: Drum): readonly MicSolid[] =>
  withArm(placeBody(micClass, clipPose(mount, drum)), clipGrip(mount, drum));

const withArm = ({ solids, hold }: PlacedBody, grip: Vec3): readonly MicSolid[] => [
  ...solids,
  { part: 'clipArm', capsule: { a: grip, b: hold, radius: CLIP_ARM_RADIUS } },
];
