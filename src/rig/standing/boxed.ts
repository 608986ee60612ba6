import { type Bounds, boundsOfCapsule, boundsOfCylinder, joined } from '../../geometry/bounds.ts';
import type { Capsule } from '../../geometry/capsule.ts';
import type { Cylinder, Tube } from '../../geometry/cylinder.ts';
import { along, distance, type Vec2, vec } from '../../geometry/vector.ts';
import type { Footprint, MicPart, PlacedMic, PlacedPiece } from '../placed.ts';

/** A solid with the box round it, by which most pairs are dismissed before they are measured. */
export interface Boxed<Solid> {
  readonly solid: Solid;
  readonly bounds: Bounds;
}

export interface BoxedMicSolid extends Boxed<Capsule> {
  readonly part: MicPart;
}

/** A mic with its boxes. `bounds` hold it whole, its feet included. */
export interface BoxedMic {
  readonly placed: PlacedMic;
  readonly bounds: Bounds;
  readonly solids: readonly BoxedMicSolid[];
}

/** A piece with its boxes. `bounds` hold it whole, its feet and outlines included. */
export interface BoxedPiece {
  readonly placed: PlacedPiece;
  readonly bounds: Bounds;
  readonly shells: readonly Boxed<Cylinder>[];
  readonly hoops: readonly Boxed<Tube>[];
  readonly hardware: readonly Boxed<Capsule>[];
  /** Shells, and hoops as the discs they go round. */
  readonly bodies: readonly Boxed<Cylinder>[];
}

export function boxedMic(placed: PlacedMic): BoxedMic {
  const solids = placed.solids.map(({ part, capsule }) => ({ part, ...boxedCapsule(capsule) }));
  const feet = placed.stand ? [boundsOfFeet(placed.stand.footprint)] : [];
  return { placed, solids, bounds: around([...solids.map(({ bounds }) => bounds), ...feet]) };
}

export function boxedPiece(placed: PlacedPiece): BoxedPiece {
  const shells = [...placed.shells, ...riseOf(placed)].map((solid) => ({
    solid,
    bounds: boundsOfCylinder(solid),
  }));
  const hoops = placed.hoops.map((solid) => ({ solid, bounds: boundsOfHoop(solid) }));
  const hardware = placed.hardware.map(boxedCapsule);
  const bodies = [...shells, ...placed.hoops.map(boxedDisc)];
  const all = [...shells, ...hoops, ...hardware].map(({ bounds }) => bounds);
  const onDeck = [
    ...placed.footprints.map(boundsOfFeet),
    ...placed.outlines.map((outline) => boundsOfSpots(outline, 0)),
  ];
  return { placed, shells, hoops, hardware, bodies, bounds: around([...all, ...onDeck]) };
}

/**
 * K10 A hi-hat's top rises and falls: nothing may stand between its two cymbals either, from the top of the one to the bottom of the other.
 */
function riseOf({ piece, shells }: PlacedPiece): readonly Cylinder[] {
  const [upper, lower] = shells;
  if (piece.kind !== 'hiHat' || !upper || !lower) return [];
  const apart = distance(upper.centre, lower.centre);
  const centre = along(lower.centre, lower.axis, apart / 2);
  return [{ ...lower, centre, halfHeight: apart / 2 }];
}

function boxedDisc({ centre, axis, outerRadius, halfHeight }: Tube): Boxed<Cylinder> {
  const solid = { centre, axis, radius: outerRadius, halfHeight };
  return { solid, bounds: boundsOfCylinder(solid) };
}

const boxedCapsule = (solid: Capsule): Boxed<Capsule> => ({
  solid,
  bounds: boundsOfCapsule(solid),
});

const boundsOfHoop = (tube: Tube): Bounds =>
  boundsOfCylinder({ ...tube, radius: tube.outerRadius });

const boundsOfFeet = ({ hub, hubRadius, feet }: Footprint): Bounds =>
  boundsOfSpots([hub, ...feet], hubRadius);

/** The box on the deck round everything within `margin` of some spots. */
function boundsOfSpots(spots: readonly Vec2[], margin: number): Bounds {
  const boxes = spots.map(({ x, y }) => ({
    low: vec(x - margin, y - margin, 0),
    high: vec(x + margin, y + margin, 0),
  }));
  return around(boxes);
}

/** Nothing to hold: a box that meets no other. */
const nowhere: Bounds = {
  low: vec(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY),
  high: vec(Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY),
};

const around = (boxes: readonly Bounds[]): Bounds => joined(boxes) ?? nowhere;
