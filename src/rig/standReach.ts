import { distance, type Vec2, type Vec3, vec } from '../geometry/vector.ts';
import type { StandSpec } from '../layout/catalogue/standClasses.ts';
import type { Mm } from '../units/quantity.ts';

/** How a stand's mast and boom lie for one place of its base and of the mic's hold point. */
export interface StandReach {
  /** Top of the mast. */
  readonly clutch: Vec3;
  /** Clutch to hold point; 0 without a boom. */
  readonly boomLength: Mm;
  /** How far mast and boom fall short (or are too long) for the hold point, mm; 0 when it is reached. */
  readonly beyondReach: Mm;
}

/** Smaller misses than this are rounding, not reach. */
const REACHED: Mm = 1e-6;

const clamp = (value: Mm, low: Mm, high: Mm): Mm => Math.min(high, Math.max(low, value));

/**
 * S1 The mast stands upright on its base; its top is the clutch. Asked for a height, it goes as near as its class can;
 *    left free (null), it comes as near to the hold point's height as it can, so that the boom lies most nearly level.
 * S2 The boom is straight from clutch to hold point. What it lacks or has too much, and what a height that was asked for
 *    lies outside the mast's range, add up to `beyondReach`.
 * S3 Without a boom the hold point must be the top of the mast; `beyondReach` is the distance to it.
 */
export function standReach(spec: StandSpec, base: Vec2, hold: Vec3, mast: Mm | null): StandReach {
  const height = clamp(mast ?? hold.z, spec.mastMin, spec.mastMax);
  const clutch = vec(base.x, base.y, height);
  const refused = mast === null ? 0 : Math.abs(mast - height);
  const needed = distance(clutch, hold);
  const boomLength = spec.boomMax === 0 ? 0 : needed;
  const missed = Math.abs(needed - clamp(needed, spec.boomMin, spec.boomMax)) + refused;
  return { clutch, boomLength, beyondReach: missed < REACHED ? 0 : missed };
}
