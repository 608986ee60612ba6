import { distance, unit, type Vec2, type Vec3, vec } from '../geometry/vector.ts';
import { isCymbal, isDrum, type Piece, type Struck } from '../layout/pieces/piece.ts';
import { surfaceOf } from '../rig/surface.ts';
import type { Degrees, Mm } from '../units/quantity.ts';

/** Usual ways to place two overheads. */
export type Arrangement = 'spaced' | 'coincident' | 'snareEquidistant';

/** Where an overhead's front would be and where it would look, as a stand mount takes it. */
export interface OverheadPlace {
  readonly tip: Vec3;
  readonly azimuth: Degrees;
  readonly pitch: Degrees;
  /** To the middle of the snare's head; null without a snare. */
  readonly toSnare: Mm | null;
}

/** Overheads of a spaced pair stand at least this far apart (common practice, no source). */
const LEAST_SPACING: Mm = 600;
/** Fronts of a coincident pair stand this far apart, so that its bodies pass each other (common practice, no source). */
const COINCIDENT_GAP: Mm = 60;
/** Each of a coincident pair leans half of 90 degrees to its side (common practice, no source). */
const COINCIDENT_PITCH: Degrees = -45;

/**
 * Places for a left and a right overhead (as the player sees them) at a height over the highest cymbal's middle; undefined
 * without cymbals. In whole mm.
 *
 * H36 spaced: each over the middle of its half of the cymbals, from left to right, looking down.
 * H37 coincident: over the middle of all cymbals, beside each other across the line to the snare, so that both are equally far
 *     from it; leaning 45 degrees to the left and to the right.
 * H38 snare-equidistant: as spaced, each then moved on the plan toward or away from the snare until both are as far from its
 *     middle as they were on average (within 10 mm). Needs a snare, else it is as spaced.
 */
export function overheadArrangement(
  arrangement: Arrangement,
  pieces: readonly Piece[],
  height: Mm,
): readonly [left: OverheadPlace, right: OverheadPlace] | undefined {
  const cymbals = pieces.flatMap((piece) =>
    isCymbal(piece) || piece.kind === 'hiHat' ? [centreOf(piece)] : [],
  );
  if (cymbals.length === 0) return undefined;
  const z = Math.round(Math.max(...cymbals.map((centre) => centre.z)) + height);
  const drum = pieces.filter(isDrum).find(({ kind }) => kind === 'snare');
  const snare = drum && centreOf(drum);
  if (arrangement === 'coincident') return coincident(middleOf(cymbals), z, snare);
  const spaced = spacedSpots(cymbals);
  const spots =
    snare && arrangement === 'snareEquidistant' ? equidistant(spaced, z, snare) : spaced;
  const looking = { azimuth: 270, pitch: -90 };
  return [placeAt(spots.left, z, looking, snare), placeAt(spots.right, z, looking, snare)];
}

interface Spots {
  readonly left: Vec2;
  readonly right: Vec2;
}

const centreOf = (piece: Struck): Vec3 => surfaceOf(piece).centre;

function spacedSpots(cymbals: readonly Vec3[]): Spots {
  const across = cymbals.toSorted((p, q) => p.x - q.x);
  const half = Math.ceil(across.length / 2);
  const left = middleOf(across.slice(0, half));
  const right = middleOf(across.slice(-half));
  const missing = Math.max(0, LEAST_SPACING - (right.x - left.x)) / 2;
  return {
    left: { x: left.x - missing, y: left.y },
    right: { x: right.x + missing, y: right.y },
  };
}

const middleOf = (spots: readonly Vec2[]): Vec2 => ({
  x: spots.reduce((sum, { x }) => sum + x, 0) / spots.length,
  y: spots.reduce((sum, { y }) => sum + y, 0) / spots.length,
});

function equidistant({ left, right }: Spots, z: Mm, snare: Vec3): Spots {
  const fromSnare = ({ x, y }: Vec2): Mm => distance(vec(x, y, z), snare);
  const wanted = (fromSnare(left) + fromSnare(right)) / 2;
  const above = z - snare.z;
  const out = Math.sqrt(Math.max(0, wanted * wanted - above * above));
  const at = (spot: Vec2, aside: number): Vec2 => {
    const way = unit(vec(spot.x - snare.x, spot.y - snare.y, 0), vec(aside, 0, 0));
    return { x: snare.x + out * way.x, y: snare.y + out * way.y };
  };
  return { left: at(left, -1), right: at(right, 1) };
}

function coincident(
  middle: Vec2,
  z: Mm,
  snare: Vec3 | undefined,
): readonly [left: OverheadPlace, right: OverheadPlace] {
  const from = snare ?? vec(middle.x, middle.y - 1, 0);
  const ahead = unit(vec(middle.x - from.x, middle.y - from.y, 0), vec(0, 1, 0));
  // The mic that looks left stands on the right, so that their bodies lead away from each other.
  const side = ahead.y < 0 ? -1 : 1;
  const at = (half: number): Vec2 => ({
    x: middle.x + half * side * COINCIDENT_GAP * ahead.y,
    y: middle.y - half * side * COINCIDENT_GAP * ahead.x,
  });
  const looking = { pitch: COINCIDENT_PITCH };
  return [
    placeAt(at(0.5), z, { ...looking, azimuth: 180 }, snare),
    placeAt(at(-0.5), z, { ...looking, azimuth: 0 }, snare),
  ];
}

function placeAt(
  { x, y }: Vec2,
  z: Mm,
  looking: Pick<OverheadPlace, 'azimuth' | 'pitch'>,
  snare: Vec3 | undefined,
): OverheadPlace {
  const tip = vec(Math.round(x) + 0, Math.round(y) + 0, z);
  return { tip, ...looking, toSnare: snare ? distance(tip, snare) : null };
}
