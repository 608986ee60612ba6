import { distance, dot, type Vec3 } from '../geometry/vector.ts';
import type { PlacedMic } from '../rig/placed.ts';
import { toDegrees } from '../units/angle.ts';
import type { Degrees, Mm } from '../units/quantity.ts';
import type { Leeway, Spot } from './clearSpotFamily.ts';

/** mm per degree of aim, and the share of the base's way that counts. */
const PER_DEGREE: Mm = 2;
const OF_BASE = 0.3;

/** Rule N5: the dearest change looked at, mm. */
export const DEAREST: Mm = 500;

/** What a spot changes: the tip's way, the turn of the axis and the base's way. */
export interface SpotChange {
  readonly tip: Mm;
  readonly aim: Degrees;
  readonly base: Mm;
}

/** Rule N3: a change costs the mm that the tip moves, 2 mm for every degree that the aim turns, and 0.3 of the mm that the base moves. */
export const costOf = ({ tip, aim, base }: SpotChange): Mm =>
  tip + PER_DEGREE * aim + OF_BASE * base;

/** What of a placed mic its changes are counted from. */
type Origin = Pick<PlacedMic, 'tip' | 'axis' | 'stand'>;

export function changeFrom(now: Origin, { tip, axis, stand }: Spot): SpotChange {
  const base = now.stand?.footprint.hub;
  const hub = stand?.footprint.hub;
  return {
    tip: distance(now.tip, tip),
    aim: angleBetween(now.axis, axis),
    base: base && hub ? Math.hypot(hub.x - base.x, hub.y - base.y) : 0,
  };
}

/** The least that any spot within the leeway of one can cost. */
export const leastCost = ({ tip, aim, base }: SpotChange, leeway: Leeway): Mm =>
  costOf({
    tip: Math.max(0, tip - leeway.tip),
    aim: Math.max(0, aim - leeway.axis),
    base: Math.max(0, base - leeway.base),
  });

/** Exact for small angles too, where the cosine says little. */
const angleBetween = (p: Vec3, q: Vec3): Degrees => {
  const apart = distance(p, q);
  return apart > 1.9
    ? toDegrees(Math.acos(Math.max(-1, dot(p, q))))
    : toDegrees(2 * Math.asin(Math.min(1, apart / 2)));
};
