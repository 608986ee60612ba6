import { z } from 'zod';
import { azimuthField, planCoordinate, within } from './fields.ts';

/** The drum sub-box: place on the deck (deck frame; beside the deck it stands on the stage floor), the side its inputs face, its tail. */
export const boxSchema = z.strictObject({
  x: planCoordinate,
  y: planCoordinate,
  turn: azimuthField,
  inputs: z.number().int().min(4).max(24),
  /** Length of the multicore from the box to the stage box, mm. */
  tail: within(0, 100_000),
});
export type Box = z.infer<typeof boxSchema>;

/** Cables carried: how many of each length (mm). */
export const stockSchema = z
  .array(z.strictObject({ length: within(300, 100_000), count: z.number().int().min(0).max(999) }))
  .max(60);
export type Stock = z.infer<typeof stockSchema>;

/**
 * How runs are dressed: service loops at both ends (mm), an allowance over the laid length (%), distance kept from
 * what stands on the deck (mm), and how far they gather: from 0 (each its own shortest way) to 1 (as little laid way as can be).
 */
export const cablingSchema = z.strictObject({
  loopAtMic: within(0, 3000),
  loopAtBox: within(0, 3000),
  dressing: within(0, 50),
  keepAway: within(0, 300),
  neatness: within(0, 1),
  stock: stockSchema,
});
export type Cabling = z.infer<typeof cablingSchema>;
