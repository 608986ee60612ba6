import type { Mm } from '../units/quantity.ts';
import { dot, perpendicular, subtract, type Vec3 } from './vector.ts';

/**
 * A segment as seen from an axis: for t in [0, 1] its height along the axis and its distance from it. Over any part of the
 * segment both have exact bounds, since the height is linear and the distance convex in t.
 */
export class AxialPath {
  readonly #height: number;
  readonly #climb: number;
  /** The squared distance is near + 2 t drift + t t spread. */
  readonly #near: number;
  readonly #drift: number;
  readonly #spread: number;

  constructor(segment: readonly [Vec3, Vec3], centre: Vec3, axis: Vec3) {
    const from = subtract(segment[0], centre);
    const way = subtract(segment[1], segment[0]);
    this.#height = dot(from, axis);
    this.#climb = dot(way, axis);
    const beside = perpendicular(from, axis);
    const sideways = perpendicular(way, axis);
    this.#near = dot(beside, beside);
    this.#drift = dot(beside, sideways);
    this.#spread = dot(sideways, sideways);
  }

  /** Height above or below the centre, along the axis. */
  height(t: number): Mm {
    return Math.abs(this.#height + t * this.#climb);
  }

  fromAxis(t: number): Mm {
    return Math.sqrt(Math.max(0, this.#near + t * (2 * this.#drift + t * this.#spread)));
  }

  leastHeight(low: number, high: number): Mm {
    const atLow = this.#height + low * this.#climb;
    const atHigh = this.#height + high * this.#climb;
    return atLow * atHigh <= 0 ? 0 : Math.min(Math.abs(atLow), Math.abs(atHigh));
  }

  leastFromAxis(low: number, high: number): Mm {
    const nearest = this.#spread > 0 ? -this.#drift / this.#spread : low;
    return this.fromAxis(Math.min(high, Math.max(low, nearest)));
  }

  mostFromAxis(low: number, high: number): Mm {
    return Math.max(this.fromAxis(low), this.fromAxis(high));
  }
}
