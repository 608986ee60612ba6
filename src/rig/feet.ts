import type { Capsule } from '../geometry/capsule.ts';
import { listed } from '../geometry/listed.ts';
import { type Vec2, vec } from '../geometry/vector.ts';
import { cosDeg, sinDeg } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import type { Footprint } from './placed.ts';

/** Half the thickness of a leg, of a tripod or of a drum. Common practice, no source. */
export const LEG_RADIUS: Mm = 8;

/**
 * F1 The directions of a stand's legs: the first at `turn`, the others evenly round it; two legs stand 90 degrees apart,
 *    centred on `turn`. Turns are taken both ways from `turn`, so that a mirrored stand has exactly mirrored feet.
 */
export function legDirections(turn: Degrees, legs: number): Degrees[] {
  if (legs === 2) return [turn - 45, turn + 45];
  return Array.from({ length: legs }, (_, k) =>
    2 * k <= legs ? turn + (k * 360) / legs : turn - ((legs - k) * 360) / legs,
  );
}

/** The point on the plan at a distance (mm) from another in a direction. */
export const planPoint = (from: Vec2, direction: Degrees, distance: Mm): Vec2 => ({
  x: from.x + distance * cosDeg(direction),
  y: from.y + distance * sinDeg(direction),
});

/** A stand on legs. */
export interface Legs {
  readonly hub: Vec2;
  readonly hubRadius: Mm;
  readonly legHeight: Mm;
  readonly turn: Degrees;
  readonly legs: number;
  /** Hub to the tip of a foot. */
  readonly spread: Mm;
}

/** F2 A stand's footprint: a leg from its hub to each foot, at `spread` from the hub. */
export const legsFootprint = ({
  hub,
  hubRadius,
  legHeight,
  turn,
  legs,
  spread,
}: Legs): Footprint => ({
  hub,
  hubRadius,
  feet: listed(legDirections(turn, legs), (direction) => planPoint(hub, direction, spread)),
  legHeight,
});

/** F3 A disc lying on the deck. */
export const discFootprint = (hub: Vec2, radius: Mm, thickness: Mm): Footprint => ({
  hub,
  hubRadius: radius,
  feet: [],
  legHeight: thickness,
});

/**
 * F4 The solids of a footprint: a capsule per leg, from the mast at leg height down to the foot; a disc is four crossing
 *    bars as thick as itself.
 */
export function baseCapsules({ hub, hubRadius, feet, legHeight }: Footprint): Capsule[] {
  if (feet.length === 0) return discBars(hub, hubRadius, legHeight / 2);
  return listed(feet, (foot) => ({
    a: vec(hub.x, hub.y, legHeight),
    b: vec(foot.x, foot.y, LEG_RADIUS),
    radius: LEG_RADIUS,
  }));
}

function discBars(hub: Vec2, discRadius: Mm, radius: Mm): Capsule[] {
  const half = Math.max(0, discRadius - radius);
  return listed([0, 45, 90, 135], (direction) => {
    const dx = half * cosDeg(direction);
    const dy = half * sinDeg(direction);
    return {
      a: vec(hub.x - dx, hub.y - dy, radius),
      b: vec(hub.x + dx, hub.y + dy, radius),
      radius,
    };
  });
}
