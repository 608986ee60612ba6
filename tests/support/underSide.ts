import type { Vec2, Vec3 } from '../../src/geometry/vector.ts';

/** The lowest height at which a capsule stands over a spot, by halving; infinite beside it. */
export function underSide(spot: Vec2, [a, b]: readonly [Vec3, Vec3], radius: number): number {
  const off = (z: number): number => {
    const [x, y, w] = [b.x - a.x, b.y - a.y, b.z - a.z];
    const size = x * x + y * y + w * w;
    const along = ((spot.x - a.x) * x + (spot.y - a.y) * y + (z - a.z) * w) / (size || 1);
    const k = Math.min(1, Math.max(0, along));
    return Math.hypot(spot.x - a.x - k * x, spot.y - a.y - k * y, z - a.z - k * w) - radius;
  };
  let [low, high] = [Math.min(a.z, b.z) - radius, Math.max(a.z, b.z) + radius];
  for (let round = 0; round < 60; round++) {
    const [p, q] = [low + (high - low) / 3, high - (high - low) / 3];
    if (off(p) < off(q)) high = q;
    else low = p;
  }
  if (off(low) > 0) return Number.POSITIVE_INFINITY;
  let [outside, inside] = [Math.min(a.z, b.z) - radius - 1, low];
  while (inside - outside > 1e-3) {
    const middle = (outside + inside) / 2;
    if (off(middle) > 0) outside = middle;
    else inside = middle;
  }
  return inside;
}
