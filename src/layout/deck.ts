import { z } from 'zod';
import { azimuthField, planCoordinate, within } from './fields.ts';

/** Stairs on an edge of the deck; `offset` from the edge's middle to theirs, toward the player's right or the audience, mm. */
export const stairsSchema = z.strictObject({
  edge: z.enum(['front', 'back', 'left', 'right']),
  offset: planCoordinate,
  width: within(300, 6000),
});

/**
 * The platform the kit stands on: `width` along x, `depth` along y, `height` above the stage floor (0: a marked area).
 * `kit` is where the kit frame's origin stands in the deck frame, and how far it is turned (anticlockwise from above).
 */
export const deckSchema = z.strictObject({
  width: within(500, 20_000),
  depth: within(500, 20_000),
  height: within(0, 3000),
  kit: z.strictObject({ x: planCoordinate, y: planCoordinate, turn: azimuthField }),
  stairs: z.array(stairsSchema).max(8),
});
export type Deck = z.infer<typeof deckSchema>;
export type Stairs = z.infer<typeof stairsSchema>;
