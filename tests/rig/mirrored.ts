import type { Capsule } from '../../src/geometry/capsule.ts';
import type { Vec2, Vec3 } from '../../src/geometry/vector.ts';
import type { Footprint, PlacedMic, PlacedPiece } from '../../src/rig/placed.ts';

/**
 * Placed things as texts that hold every bit of every number, so that two are the same text exactly when they are the same
 * to the last bit (0 and -0 count as one). `side` -1 writes the mirror image in x. What has no order (legs, bars, hardware)
 * is sorted.
 */
export type Side = 1 | -1;

const n = (value: number): string => String(value + 0);
const point = (p: Vec3, side: Side): string => `(${n(side * p.x)} ${n(p.y)} ${n(p.z)})`;
const spot = (p: Vec2, side: Side): string => `(${n(side * p.x)} ${n(p.y)})`;
const capsule = (c: Capsule, side: Side): string =>
  `${point(c.a, side)}-${point(c.b, side)} r${n(c.radius)}`;
/** A bar of a disc has no first end. */
const eitherWay = (c: Capsule, side: Side): string =>
  [point(c.a, side), point(c.b, side)].sort().join('-') + n(c.radius);

const footprint = (f: Footprint, side: Side): string =>
  `${spot(f.hub, side)} r${n(f.hubRadius)} h${n(f.legHeight)} ${f.feet
    .map((foot) => spot(foot, side))
    .sort()
    .join()}`;

export const pieceText = (placed: PlacedPiece, side: Side): string[] => [
  ...placed.shells.map(
    (s) => `${point(s.centre, side)} ${point(s.axis, side)} ${n(s.radius)} ${n(s.halfHeight)}`,
  ),
  ...placed.hoops.map(
    (h) =>
      `${point(h.centre, side)} ${point(h.axis, side)} ${n(h.innerRadius)} ${n(h.outerRadius)}`,
  ),
  ...placed.hardware.map((c) => eitherWay(c, side)).sort(),
  ...placed.footprints.map((f) => footprint(f, side)).sort(),
  ...placed.outlines.map((outline) =>
    outline
      .map((p) => spot(p, side))
      .sort()
      .join(),
  ),
];

export const micText = (placed: PlacedMic, side: Side): string[] => [
  point(placed.tip, side),
  point(placed.axis, side),
  ...placed.solids
    .map(
      (s) =>
        `${s.part} ${s.part === 'base' ? eitherWay(s.capsule, side) : capsule(s.capsule, side)}`,
    )
    .sort(),
  ...(placed.stand
    ? [
        `${point(placed.stand.clutch, side)} ${point(placed.stand.hold, side)}`,
        `${n(placed.stand.boomLength)} ${n(placed.stand.beyondReach)}`,
        footprint(placed.stand.footprint, side),
      ]
    : []),
  ...placed.descent.map((part) => `${part.along} ${n(part.length)}`),
  spot(placed.deckPoint, side),
];
