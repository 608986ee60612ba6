import {
  along,
  cross,
  distance,
  perpendicular,
  scale,
  unit,
  type Vec3,
  vec,
} from '../../geometry/vector.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { Mount } from '../../layout/mics/mount.ts';
import type { Kick } from '../../layout/pieces/kick.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import type { Mm } from '../../units/quantity.ts';
import { kickFrame, portCentre } from '../pieces/kickFrame.ts';
import type { MicSolid, PlacedMic } from '../placed.ts';
import { type Microphone, plugAndCable } from './body.ts';

/** Half the thickness of a plate. Within the reference value (20 mm high); common practice, no source. */
const PLATE_RADIUS: Mm = 10;
/** Bars of a plate lie no farther apart than this, so that 5 mm at most stay open between them. */
const BAR_SPACING: Mm = 25;
/** Where a cable from the port meets the deck, in front of the hoop. Common practice, no source. */
const IN_FRONT: Mm = 50;

type Plate<Kind extends Mount['kind']> = Extract<Mount, { kind: Kind }>;

const UP = vec(0, 0, 1);

/** Where a plate's front edge lies, where it faces, and which way is beside and away from the surface it lies on. */
interface PlatePose {
  readonly tip: Vec3;
  readonly axis: Vec3;
  readonly beside: Vec3;
}

/**
 * M15 A plate is as long and as wide as its class says and 20 mm thick: bars along its axis from the tip backward, the outer
 *     ones at its edges.
 */
function plateSolids({ length, diameter, connector }: MicClass, pose: PlatePose): MicSolid[] {
  const radius = Math.min(PLATE_RADIUS, diameter / 2);
  const back = scale(pose.axis, -1);
  const edge = diameter / 2 - radius;
  const gaps = Math.max(1, Math.ceil((2 * edge) / BAR_SPACING));
  const bars = Array.from({ length: gaps + 1 }, (_, i): MicSolid => {
    const front = along(pose.tip, pose.beside, (edge * (2 * i - gaps)) / gaps);
    return {
      part: 'plate',
      capsule: {
        a: along(front, back, radius),
        b: along(front, back, Math.max(radius, length - radius)),
        radius,
      },
    };
  });
  return [...bars, ...plugAndCable(connector, along(pose.tip, back, length), back, UP)];
}

/**
 * M16 A plate in a kick faces the batter head; its front edge is `depth` behind the front head. It lies at the bottom of
 *     the shell, so low that its edges touch the shell. The cable leaves through the port, over its lower edge, and hangs to
 *     the deck in front of the drum.
 */
export function placePlateInKick(
  { mic, micClass }: Microphone,
  mount: Plate<'plateInKick'>,
  kick: Kick,
): PlacedMic {
  const frame = kickFrame(kick);
  const down = unit(perpendicular(vec(0, 0, -1), frame.front), vec(0, 0, -1));
  const inside = Math.max(0, kick.diameter / 2 - PLATE_RADIUS);
  const edge = Math.min(inside, Math.max(0, micClass.diameter / 2 - PLATE_RADIUS));
  const low = Math.sqrt(inside * inside - edge * edge);
  const tip = along(along(frame.frontHead, frame.front, -mount.depth), down, low);
  const axis = scale(frame.front, -1);
  const rear = along(tip, axis, -micClass.length);
  const sill = along(portCentre(kick, frame), frame.up, -(kick.port?.diameter ?? 0) / 2);
  const landing = along(
    sill,
    unit(vec(frame.front.x, frame.front.y, 0), UP),
    kick.rim.height + IN_FRONT,
  );
  return {
    mic,
    micClass,
    tip,
    axis,
    solids: plateSolids(micClass, { tip, axis, beside: frame.right }),
    stand: null,
    descent: [
      { along: 'kick', length: distance(rear, sill) },
      { along: 'air', length: distance(sill, vec(landing.x, landing.y, 0)) },
    ],
    deckPoint: { x: landing.x, y: landing.y },
  };
}

/** M17 A plate on the deck lies with the middle of its front edge at x, y and faces `turn`. Its cable lies on the deck at once. */
export function placePlateOnDeck(
  { mic, micClass }: Microphone,
  mount: Plate<'plateOnDeck'>,
): PlacedMic {
  const { x, y, turn } = mount;
  const tip = vec(x, y, Math.min(PLATE_RADIUS, micClass.diameter / 2));
  const axis = vec(cosDeg(turn), sinDeg(turn), 0);
  const rear = along(tip, axis, -micClass.length);
  return {
    mic,
    micClass,
    tip,
    axis,
    solids: plateSolids(micClass, { tip, axis, beside: cross(UP, axis) }),
    stand: null,
    descent: [],
    deckPoint: { x: rear.x, y: rear.y },
  };
}
