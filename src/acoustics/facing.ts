import { along, distance, dot, subtract, type Vec3 } from '../geometry/vector.ts';
import type { Mm } from '../units/quantity.ts';
import type { Start } from './comb.ts';
import { distanceToDisc, type Ear } from './radiation.ts';
import { isInside } from './shell.ts';
import type { RadiatingSurface, Source } from './source.ts';

/** Which side of a piece a mic is on, and how a stroke first arrives there. */
export interface Facing {
  readonly surface: RadiatingSurface;
  /** H22; a compression gives a positive voltage on pin 2 (AES26, from memory). */
  readonly first: 'compression' | 'rarefaction';
  /** Whether the mic is clearly on that side: from beside a drum or cymbal neither comes first for certain. */
  readonly sure: boolean;
}

/** A mic is clearly before a surface when the way there rises at least 30 degrees from it. */
const SURE = 0.5;

/**
 * H21 A mic inside a shell faces the head it looks at. Outside, it faces the head of the half of the drum on whose side it
 *     stands; a cymbal is faced from above or below.
 * H22 A stroke moves both heads the same way, in the direction of the stick. Before the struck head air is first thinned, on
 *     its other side and before the other head pressed together; inside, the other head's back thins it. So opposite sides of
 *     one head start opposite.
 */
export function facingOf({ tip, axis }: Ear, source: Source): Facing {
  const { struck, surfaces, depth } = source;
  const other = surfaces.find(({ name }) => name === 'resonant') ?? struck;
  const from = subtract(tip, struck.centre);
  const above = dot(from, struck.normal);
  if (isInside(tip, source)) {
    const looksAtStruck = dot(axis, struck.normal) > 0;
    return {
      surface: looksAtStruck ? struck : other,
      first: looksAtStruck ? 'compression' : 'rarefaction',
      sure: true,
    };
  }
  const onStruckSide = above > -depth / 2;
  const surface = onStruckSide ? struck : other;
  const before = onStruckSide ? above : -depth - above;
  return {
    surface,
    first: onStruckSide ? 'rarefaction' : 'compression',
    sure: before >= SURE * distanceToDisc(tip, surface),
  };
}

/** Whether two mics first hear a stroke the same way. */
export const startOf = (one: Facing, other: Facing): Start =>
  one.first === other.first ? 'equal' : 'opposite';

/** Where on a head a mic aims. */
export type AimZone = 'centre' | 'between' | 'edge' | 'beside';

/** Where a mic's axis meets the plane of the head it faces. */
export interface Aim {
  /** Kit frame. */
  readonly point: Vec3;
  readonly fromCentre: Mm;
  /** From the mic's front along its axis. */
  readonly distance: Mm;
  readonly zone: AimZone;
}

/**
 * H23 Within a quarter of the radius a mic aims at the centre (most attack, common practice, no source), beyond two thirds at
 *     the edge (more ring and overtones), in between at both; beyond the radius beside the head.
 */
const CENTRE = 1 / 4;
const EDGE = 2 / 3;

/** The aim point on a surface; undefined where the axis runs along its plane or away from it. */
export function aimAt({ tip, axis }: Ear, surface: RadiatingSurface): Aim | undefined {
  const { centre, normal, radius } = surface;
  const approach = dot(axis, normal);
  const way = dot(subtract(centre, tip), normal) / approach;
  if (Math.abs(approach) < 1e-9 || way <= 0) return undefined;
  const point = along(tip, axis, way);
  const fromCentre = distance(point, centre);
  return { point, fromCentre, distance: way, zone: zoneOf(fromCentre / radius) };
}

function zoneOf(share: number): AimZone {
  if (share <= CENTRE) return 'centre';
  if (share <= EDGE) return 'between';
  return share <= 1 ? 'edge' : 'beside';
}
