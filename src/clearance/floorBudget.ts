import type { Mm } from '../units/quantity.ts';
import { SPOT } from './floorField.ts';

/** Farthest that the height told may lie below the lowest true one within as much of a spot (rule F1), mm. */
export const BELOW: Mm = 15;
/** Farthest that an axis rises from one sample to the next in either direction, mm. */
export const FALL: Mm = 4;
/** Heights are kept as single floats: as exact as this, mm. */
const ROUNDING: Mm = 1e-3;
/**
 * What is left of it on the plan for {@link FloorBall}s, mm. The place of an axis is kept as the cell that it was seen in, and its ball counts for the whole of a
 * spot's cell as if both were where they are nearest. So it may count for a spot that is farther from the place by a cell's diagonal and a half.
 */
const LEFT: Mm = BELOW - 1.5 * SPOT * Math.SQRT2;
/** An axis is never known better than this, mm: thin balls, which have no more left to grow, have denser samples. */
const LEAST_BOW: Mm = 0.45;
/** The room for rising axes in the square of a grown ball's radius, mm^2: see {@link strideOf}. */
const STEEP = (8 * FALL * FALL) / 44;

/** Rule F3: what balls about an axis are taken for, so that the floor is never above the true one. */
export interface FloorBall {
  readonly radius: Mm;
  /** By how much they grow, mm. */
  readonly grown: Mm;
  /** Farthest that an axis may be from where it is taken to be, mm: they count as so much nearer and lower. With what they grow it is what is left. */
  readonly bow: Mm;
  /** Farthest from their places that they come down, mm on the plan, whole cells aside. */
  readonly reach: Mm;
  /** By how much their places are lowered, mm. */
  readonly lowered: Mm;
  /** Farthest that samples of an axis are apart in either direction, mm on the plan. */
  readonly stride: Mm;
  /** Farthest that the ends of a piece are from its samples, mm on the plan. */
  readonly end: Mm;
}

export function floorBall(radius: Mm): FloorBall {
  // So much that samples may be a spot apart, if there is.
  const enough = Math.sqrt(4 * radius * radius + SPOT * SPOT + STEEP) - 2 * radius;
  const grown = Math.min(LEFT - 2 * LEAST_BOW, enough);
  const bow = (LEFT - grown) / 2;
  return {
    radius,
    grown,
    bow,
    reach: radius + grown + bow,
    lowered: bow + FALL + ROUNDING,
    stride: strideOf(radius, grown),
    end: grown / 2,
  };
}

/**
 * Rule F3: how far apart samples of an axis may be on the plan in either direction, along it and on its way, so that nothing comes down lower than the
 * balls about them, mm.
 *
 * What is between four samples is a mean of them, each with a weight. Let a ball of radius r be there, the samples' balls be R large, and each be
 * lowered by half the height D that they differ by at most. Were a point of the ball's under side, h below its middle, below all of theirs, then
 * R^2 less the square of its distance to each on the plan were less than the square of h + d - D/2, where d is how much higher the sample is, or
 * less than 0 where that is below 0. The mean of the squared distances is r^2 - h^2 + V, with the samples' variance V on the plan, at most half
 * the square of how far apart they are in either direction. The mean of the squares on the other side is at most h^2 + D^2/44: the worst
 * are two samples D apart in height, one with weight t, and the most of t (1/2 - t)^2 / (1 - t) is below 1/44. So there is no such point where
 * R^2 >= r^2 + V + D^2/44.
 *
 * What lies beyond the outermost samples in one direction, up to half of what balls grow, is at most half a FALL below what lies beside it between two
 * of them, and these differ by a FALL at most: a ball there is within theirs with so much less to grow, V half as much and the same lowering.
 * What lies beyond them in both directions is no farther on the plan from the nearest than balls grow.
 */
const strideOf = (radius: Mm, grown: Mm): Mm =>
  Math.sqrt(4 * radius * grown + grown * grown - STEEP);
