import { cosDeg, sinDeg } from '../units/angle.ts';
import { convexHull } from './convexPolygon.ts';
import type { Cylinder } from './cylinder.ts';
import { remembered } from './remembered.ts';
import { along, cross, unit, type Vec2, type Vec3, vec } from './vector.ts';

/** Corners round each end of a cylinder as it is drawn: the outline stays within 1 % of its radius. */
const CORNERS = 24;

/** The outline of a turned cylinder as it is seen, convex and anticlockwise. */
export const cylinderOutline = remembered(
  ({ centre, axis, radius, halfHeight }: Cylinder): readonly Vec2[] => {
    const aside = unit(cross(axis, mostAcross(axis)), vec(1, 0, 0));
    const other = cross(axis, aside);
    const spots = [halfHeight, -halfHeight].flatMap((out) => {
      const end = along(centre, axis, out);
      return Array.from({ length: CORNERS }, (_, i): Vec2 => {
        const angle = (360 * i) / CORNERS;
        const rim = along(along(end, aside, radius * cosDeg(angle)), other, radius * sinDeg(angle));
        return { x: rim.x, y: rim.y };
      });
    });
    return convexHull(spots)?.corners ?? spots;
  },
);

/** The axis of space that is farthest from a direction. */
function mostAcross({ x, y, z }: Vec3): Vec3 {
  const ax = Math.abs(x);
  const ay = Math.abs(y);
  const az = Math.abs(z);
  if (ax <= ay && ax <= az) return vec(1, 0, 0);
  return ay <= az ? vec(0, 1, 0) : vec(0, 0, 1);
}
