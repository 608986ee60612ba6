import type { Mm } from '../units/quantity.ts';
import type { Capsule } from './capsule.ts';
import type { Cylinder } from './cylinder.ts';
import type { Vec2, Vec3 } from './vector.ts';

/** A box along the axes of the frame, its faces included. */
export interface Bounds {
  readonly low: Vec3;
  readonly high: Vec3;
}

export const boundsOfCapsule = ({ a, b, radius }: Capsule): Bounds => ({
  low: {
    x: Math.min(a.x, b.x) - radius,
    y: Math.min(a.y, b.y) - radius,
    z: Math.min(a.z, b.z) - radius,
  },
  high: {
    x: Math.max(a.x, b.x) + radius,
    y: Math.max(a.y, b.y) + radius,
    z: Math.max(a.z, b.z) + radius,
  },
});

/** The tightest box round a cylinder, by how far its disc and its axis reach along each axis of the frame. */
export function boundsOfCylinder({ centre, axis, radius, halfHeight }: Cylinder): Bounds {
  const reach = (cosine: number): Mm =>
    halfHeight * Math.abs(cosine) + radius * Math.sqrt(Math.max(0, 1 - cosine * cosine));
  const x = reach(axis.x);
  const y = reach(axis.y);
  const z = reach(axis.z);
  return {
    low: { x: centre.x - x, y: centre.y - y, z: centre.z - z },
    high: { x: centre.x + x, y: centre.y + y, z: centre.z + z },
  };
}

/** The box over everything on the plan within `margin` of some spots, from z 0 up to `height`; it meets no other when there are none. */
export function boundsOverPlan(spots: readonly Vec2[], margin: Mm, height: Mm): Bounds {
  const low = { x: Number.POSITIVE_INFINITY, y: Number.POSITIVE_INFINITY };
  const high = { x: Number.NEGATIVE_INFINITY, y: Number.NEGATIVE_INFINITY };
  for (const { x, y } of spots) {
    low.x = Math.min(low.x, x);
    low.y = Math.min(low.y, y);
    high.x = Math.max(high.x, x);
    high.y = Math.max(high.y, y);
  }
  return {
    low: { x: low.x - margin, y: low.y - margin, z: 0 },
    high: { x: high.x + margin, y: high.y + margin, z: height },
  };
}

/** The box round boxes; undefined for none. */
export function joined(boxes: readonly Bounds[]): Bounds | undefined {
  const first = boxes[0];
  if (!first) return undefined;
  const low = { ...first.low };
  const high = { ...first.high };
  for (const box of boxes) {
    low.x = Math.min(low.x, box.low.x);
    low.y = Math.min(low.y, box.low.y);
    low.z = Math.min(low.z, box.low.z);
    high.x = Math.max(high.x, box.high.x);
    high.y = Math.max(high.y, box.high.y);
    high.z = Math.max(high.z, box.high.z);
  }
  return { low, high };
}

/** True when two boxes share a point. */
export const boundsMeet = (p: Bounds, q: Bounds): boolean =>
  p.low.x <= q.high.x &&
  q.low.x <= p.high.x &&
  p.low.y <= q.high.y &&
  q.low.y <= p.high.y &&
  p.low.z <= q.high.z &&
  q.low.z <= p.high.z;
