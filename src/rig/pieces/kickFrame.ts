import { along, type Vec3, vec } from '../../geometry/vector.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';

/** A kick drum's own directions and the centres of its heads. Unit vectors, kit frame. */
export interface KickFrame {
  readonly middle: Vec3;
  /** Where the front head faces. */
  readonly front: Vec3;
  /** To the right of someone who looks at the front head. */
  readonly right: Vec3;
  /** Up along the front head. */
  readonly up: Vec3;
  readonly frontHead: Vec3;
  readonly backHead: Vec3;
}

/** P10 A kick lies along its `turn`, its front lifted by `rise`; its centre is the middle of the shell. */
export function kickFrame(kick: Kick): KickFrame {
  const cosTurn = cosDeg(kick.turn);
  const sinTurn = sinDeg(kick.turn);
  const cosRise = cosDeg(kick.rise);
  const sinRise = sinDeg(kick.rise);
  const middle = vec(kick.x, kick.y, kick.z);
  const front = vec(cosRise * cosTurn, cosRise * sinTurn, sinRise);
  return {
    middle,
    front,
    right: vec(-sinTurn, cosTurn, 0),
    up: vec(-sinRise * cosTurn, -sinRise * sinTurn, cosRise),
    frontHead: along(middle, front, kick.depth / 2),
    backHead: along(middle, front, -kick.depth / 2),
  };
}

/** Centre of the port; the front head's centre where there is none. */
export function portCentre(kick: Kick, { frontHead, right, up }: KickFrame): Vec3 {
  if (!kick.port) return frontHead;
  return along(along(frontHead, right, kick.port.right), up, kick.port.up);
}
