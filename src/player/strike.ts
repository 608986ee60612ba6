import {
  add,
  along,
  cross,
  dot,
  perpendicular,
  scale,
  subtract,
  unit,
  type Vec3,
  vec,
} from '../geometry/vector.ts';
import type { Struck } from '../layout/pieces/piece.ts';
import { surfaceOf } from '../rig/surface.ts';
import { cosDeg, sinDeg, toRadians } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import type { Arm } from './arm.ts';
import { mirrored, type SideSign } from './hands.ts';

/** Rule S1: where the sticks meet each kind of piece. */
interface Contact {
  /** The strike point stands this many radii from the centre toward the shoulder. */
  readonly toward: number;
  /** Angle of the stick to the surface: positive with the tip down. */
  readonly attack: Degrees;
  /** How far behind the tip the stick meets the surface, mm. */
  readonly behindTip: Mm;
}
const ON_HEAD: Contact = { toward: 0, attack: 10, behindTip: 0 };
const ON_EDGE: Contact = { toward: 1, attack: -10, behindTip: 80 };
const CONTACT: { readonly [Kind in Struck['kind']]: Contact } = {
  snare: ON_HEAD,
  rackTom: ON_HEAD,
  floorTom: ON_HEAD,
  percussion: ON_HEAD,
  hiHat: { toward: 0.8, attack: 10, behindTip: 0 },
  ride: { toward: 0.55, attack: 10, behindTip: 0 },
  crash: ON_EDGE,
  splash: ON_EDGE,
  china: ON_EDGE,
};

/** Rule S3: the stick turns up at most to 85 degrees in a stroke. */
const STEEPEST = toRadians(85);
const UP = vec(0, 0, 1);
const DOWN = vec(0, 0, -1);

/** The arm at contact, and how a full stroke rises from there; hand space. */
export interface Strike {
  readonly grip: Vec3;
  /** Unit vector from grip to tip at contact. */
  readonly stick: Vec3;
  /** Unit vector square to the stick, upward in its vertical plane: toward it the stick turns. */
  readonly upward: Vec3;
  /** The turn of a full stroke, radians. */
  readonly turn: number;
  /** The grip's rise of a full stroke, mm. */
  readonly rise: Mm;
}

/** The strike of one hand on one piece (rules S1 to S3), in hand space. `strokeHeight` in mm. */
export function strikeOn(piece: Struck, sign: SideSign, arm: Arm, strokeHeight: Mm): Strike {
  const contact = CONTACT[piece.kind];
  const kitSurface = surfaceOf(piece);
  const centre = mirrored(kitSurface.centre, sign);
  const normal = mirrored(kitSurface.normal, sign);
  const shoulder = vec(arm.shoulderX, 0, arm.shoulderZ);
  // S1: the strike point, in the surface, toward the shoulder.
  const backward = unit(perpendicular(vec(0, -1, 0), normal), DOWN);
  const toward = unit(perpendicular(subtract(shoulder, centre), normal), backward);
  const point = along(centre, toward, contact.toward * kitSurface.radius);
  // S2: the stick lies along the horizontal way from the shoulder, held parallel to the surface, then tipped by the attack angle.
  const away = unit(vec(point.x - shoulder.x, point.y, 0), vec(0, 1, 0));
  // On an upright surface square to that way the stick stands up before the surface, or hangs down behind it.
  const upright = dot(away, normal) < 0 ? UP : DOWN;
  const flat = unit(perpendicular(away, normal), upright);
  const stick = subtract(
    scale(flat, cosDeg(contact.attack)),
    scale(normal, sinDeg(contact.attack)),
  );
  const grip = along(point, stick, contact.behindTip - arm.ahead);
  // S3: the contact point rises by the stroke height, a third of it by the hand, the rest by the stick's turn.
  const lying = Math.asin(Math.min(1, Math.max(-1, stick.z)));
  const raised = Math.asin(Math.min(1, Math.sin(lying) + (2 * strokeHeight) / 3 / arm.ahead));
  const axis = unit(cross(stick, UP), vec(1, 0, 0));
  return {
    grip,
    stick,
    upward: cross(axis, stick),
    turn: Math.max(0, Math.min(STEEPEST, raised) - lying),
    rise: strokeHeight / 3,
  };
}

/** A hand in a stroke: its grip and the stick's direction. */
export type Raised = Pick<Strike, 'grip' | 'stick'>;

/** Grip and stick direction in a stroke at s in [0, 1]. */
export function raisedTo(strike: Strike, s: number): Raised {
  const angle = s * strike.turn;
  return {
    grip: add(strike.grip, vec(0, 0, s * strike.rise)),
    stick: add(scale(strike.stick, Math.cos(angle)), scale(strike.upward, Math.sin(angle))),
  };
}

/** Cosine of the angle between two unit vectors. */
export const cosBetween = (p: Vec3, q: Vec3): number => Math.min(1, Math.max(-1, dot(p, q)));
