import {
  type Bounds,
  boundsOfCapsule,
  boundsOfCylinder,
  boundsOverPlan,
  joined,
} from '../../geometry/bounds.ts';
import type { Capsule } from '../../geometry/capsule.ts';
import type { Cylinder, Tube } from '../../geometry/cylinder.ts';
import { listed } from '../../geometry/listed.ts';
import { along, distance, type Vec2, vec } from '../../geometry/vector.ts';
import type { Id } from '../../layout/fields.ts';
import { LEG_RADIUS } from '../feet.ts';
import type { Footprint, MicPart, PlacedMic, PlacedPiece } from '../placed.ts';

/** A solid with the box round it, by which most pairs are dismissed before they are measured. */
export interface Boxed<Solid> {
  readonly solid: Solid;
  readonly bounds: Bounds;
}

export interface BoxedMicSolid extends Boxed<Capsule> {
  readonly part: MicPart;
}

/** A footprint with the box round its feet and all of its legs. */
export interface BoxedFeet {
  readonly footprint: Footprint;
  readonly bounds: Bounds;
}

/** What lies on the deck, with the box round it. */
export interface BoxedOutline {
  readonly outline: readonly Vec2[];
  readonly bounds: Bounds;
}

/** What of a mic or piece stands on the deck. */
export interface OnDeck {
  readonly id: Id;
  readonly piece: PlacedPiece | undefined;
  readonly feet: readonly BoxedFeet[];
  readonly outlines: readonly BoxedOutline[];
  readonly shells: readonly Boxed<Cylinder>[];
}

/** A mic with its boxes. `bounds` hold it whole, its feet included. */
export interface BoxedMic {
  readonly placed: PlacedMic;
  readonly onDeck: OnDeck;
  readonly bounds: Bounds;
  readonly solids: readonly BoxedMicSolid[];
}

/** A piece with its boxes. `bounds` hold it whole, its feet and outlines included. */
export interface BoxedPiece {
  readonly placed: PlacedPiece;
  readonly onDeck: OnDeck;
  readonly bounds: Bounds;
  readonly shells: readonly Boxed<Cylinder>[];
  readonly hoops: readonly Boxed<Tube>[];
  readonly hardware: readonly Boxed<Capsule>[];
  /** Shells, and hoops as the discs they go round. */
  readonly bodies: readonly Boxed<Cylinder>[];
}

export function boxedMic(placed: PlacedMic): BoxedMic {
  const solids = listed(placed.solids, ({ part, capsule }) => ({ part, ...boxedCapsule(capsule) }));
  const feet = placed.stand ? [boxedFeet(placed.stand.footprint)] : [];
  const onDeck = { id: placed.mic.id, piece: undefined, feet, outlines: [], shells: [] };
  return { placed, onDeck, solids, bounds: around(solids, feet) };
}

export function boxedPiece(placed: PlacedPiece): BoxedPiece {
  const shells = listed([...placed.shells, ...riseOf(placed)], boxedCylinder);
  // A hoop reaches no farther than the disc that it goes round.
  const hoops = listed(placed.hoops, (solid) => ({
    solid,
    bounds: boundsOfCylinder(discOf(solid)),
  }));
  const discs = listed(hoops, ({ solid, bounds }) => ({ solid: discOf(solid), bounds }));
  const hardware = listed(placed.hardware, boxedCapsule);
  const feet = listed(placed.footprints, boxedFeet);
  const outlines = listed(placed.outlines, boxedOutline);
  return {
    placed,
    onDeck: { id: placed.piece.id, piece: placed, feet, outlines, shells },
    shells,
    hoops,
    hardware,
    bodies: shells.concat(discs),
    bounds: around(shells, hoops, hardware, feet, outlines),
  };
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

const discOf = ({ centre, axis, outerRadius, halfHeight }: Tube): Cylinder => ({
  centre,
  axis,
  radius: outerRadius,
  halfHeight,
});

const boxedCylinder = (solid: Cylinder): Boxed<Cylinder> => ({
  solid,
  bounds: boundsOfCylinder(solid),
});

const boxedCapsule = (solid: Capsule): Boxed<Capsule> => ({
  solid,
  bounds: boundsOfCapsule(solid),
});

/** The legs reach from the deck to where they meet the mast, half their thickness above it. */
function boxedFeet(footprint: Footprint): BoxedFeet {
  const { hub, hubRadius, feet, legHeight } = footprint;
  const margin = Math.max(hubRadius, LEG_RADIUS);
  return { footprint, bounds: boundsOverPlan([hub, ...feet], margin, legHeight + LEG_RADIUS) };
}

const boxedOutline = (outline: readonly Vec2[]): BoxedOutline => ({
  outline,
  bounds: boundsOverPlan(outline, 0, 0),
});

/** Nothing to hold: a box that meets no other. */
const nowhere: Bounds = {
  low: vec(Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY),
  high: vec(Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY),
};

function around(...lists: readonly (readonly { readonly bounds: Bounds }[])[]): Bounds {
  const boxes: Bounds[] = [];
  for (const boxed of lists) for (const { bounds } of boxed) boxes.push(bounds);
  return joined(boxes) ?? nowhere;
}
