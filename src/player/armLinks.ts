import type { Mm } from '../units/quantity.ts';

/** What decides where an elbow is, hand space, mm. */
export interface ArmLinks {
  readonly shoulderX: Mm;
  readonly shoulderZ: Mm;
  readonly upper: Mm;
  readonly fore: Mm;
  /** The farthest the grip is from the shoulder without leaning. */
  readonly easy: Mm;
  /** The most the trunk leans. */
  readonly lean: Mm;
}

/** Rule A3: the direction in which an elbow hangs, in hand space. */
export const HANG_X = 0.5;
export const HANG_Z = -0.87;

/** Where the elbow's foot stands on the line from shoulder to grip (law of cosines). */
export const elbowFoot = (upper: Mm, fore: Mm, line: Mm): Mm =>
  line > 0 ? (line * line + upper * upper - fore * fore) / (2 * line) : 0;
