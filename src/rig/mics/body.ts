import { along, perpendicular, scale, unit, type Vec3, vec } from '../../geometry/vector.ts';
import type { Mic } from '../../layout/mics/mic.ts';
import type { MicClass } from '../../layout/mics/micClass.ts';
import type { Mm } from '../../units/quantity.ts';
import type { MicSolid } from '../placed.ts';

/** A mic with what its class says of it. */
export interface Microphone {
  readonly mic: Mic;
  readonly micClass: MicClass;
}

/** Where a mic's front is and how it lies: everything that its mount decides about its body. Unit vectors, kit frame. */
export interface Pose {
  readonly tip: Vec3;
  /** Where the mic listens to. */
  readonly axis: Vec3;
  /** For a side-address mic: from the head of the body to its connector, across the axis. */
  readonly across: Vec3;
  /** Level direction in which a cable leaves sideways when the body stands upright. */
  readonly aside: Vec3;
}

/** The solids of a mic without its mount, and where a mount takes hold of it. */
export interface PlacedBody {
  readonly solids: readonly MicSolid[];
  readonly hold: Vec3;
}

/** How far behind its front a mic is held, as a share of its length. Common practice, no source. */
const HELD_AT = 2 / 3;

/**
 * What stands behind a body: plug and cable, lengths along the body. Together 110 mm for a straight plug and 40 mm for a
 * right-angled one, within the reference values (100-120 and 35-45 mm); the shares are common practice, no source.
 */
const behind = {
  straight: { plug: 70, plugRadius: 9.5, cable: 40, cableRadius: 3.5, turns: false },
  rightAngle: { plug: 40, plugRadius: 9.5, cable: 30, cableRadius: 3.5, turns: true },
  thinCable: { plug: 0, plugRadius: 0, cable: 20, cableRadius: 2, turns: false },
} as const;

/**
 * M1 An end-address body is a capsule from the tip backward along the axis, as long as the mic, its round ends included:
 *    it ends at the tip and nowhere passes it.
 * M2 A side-address body lies across the axis, one radius behind the tip; the tip is one radius from the head's end.
 * M3 A mic is held at two thirds of its length from its front.
 */
export function placeBody(micClass: MicClass, pose: Pose): PlacedBody {
  const { length, diameter, address } = micClass;
  const radius = diameter / 2;
  const toward = address === 'end' ? scale(pose.axis, -1) : pose.across;
  const front =
    address === 'end' ? pose.tip : along(along(pose.tip, pose.axis, -radius), toward, -radius);
  const body: MicSolid = {
    part: 'body',
    capsule: {
      a: along(front, toward, radius),
      b: along(front, toward, Math.max(radius, length - radius)),
      radius,
    },
  };
  const rear = along(front, toward, length);
  return {
    solids: [body, ...plugAndCable(micClass.connector, rear, toward, pose.aside)],
    hold: along(front, toward, HELD_AT * length),
  };
}

/**
 * M4 Behind the body stand the plug and the stiff part of the cable: straight on, or with a right-angled plug hanging down
 *    from it (to the side where the plug stands upright).
 */
export function plugAndCable(
  connector: MicClass['connector'],
  rear: Vec3,
  toward: Vec3,
  aside: Vec3,
): MicSolid[] {
  const { plug, plugRadius, cable, cableRadius, turns } = behind[connector];
  const plugEnd = along(rear, toward, plug);
  const cableWay = turns ? unit(perpendicular(vec(0, 0, -1), toward), aside) : toward;
  const start = turns ? along(rear, toward, plug - plugRadius) : plugEnd;
  const bend = rod('bend', start, cableWay, { length: cable, radius: cableRadius });
  return plug > 0
    ? [rod('connector', rear, toward, { length: plug, radius: plugRadius }), bend]
    : [bend];
}

/** A capsule from a point along a direction whose far end, its cap included, is `length` away. */
const rod = (
  part: 'connector' | 'bend',
  from: Vec3,
  way: Vec3,
  { length, radius }: { readonly length: Mm; readonly radius: Mm },
): MicSolid => ({
  part,
  capsule: { a: from, b: along(from, way, Math.max(0, length - radius)), radius },
});
