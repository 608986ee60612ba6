import { z } from 'zod';

// The page runs under a content security policy without eval: the validator must not compile functions at run time.
z.config({ jitless: true });

/** Field shapes shared by every part of a layout, with the limits beyond which a value is a mistake, not a choice. */

/** Names a thing inside one layout for ever: lower-case letters, digits and hyphens, 1 to 40 characters. */
export const idField = z
  .string()
  .regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'an id: 1 to 40 lower-case letters, digits or hyphens');
export type Id = z.infer<typeof idField>;

/** A short label as people type it, shown as plain text everywhere. */
export const nameField = z.string().min(1).max(80);
/** Free notes. */
export const notesField = z.string().max(4000);

/** A number of mm, degrees or the like, finite and within limits. */
export const within = (low: number, high: number) => z.number().min(low).max(high);

/** A coordinate on the plan: within 20 m of the origin. */
export const planCoordinate = within(-20_000, 20_000);
/** A height above the deck. */
export const heightField = within(0, 4000);
/** A direction on the plan: degrees from the player's right (+x), turning toward the audience (+y = 90). */
export const azimuthField = within(-360, 360);
/** How far a playing surface leans from level, toward its `tiltToward` direction. */
export const tiltField = within(0, 90);

/** A spot on the plan in the kit frame (mm). */
export const spotField = z.strictObject({ x: planCoordinate, y: planCoordinate });
/** A point in the kit frame (mm). */
export const pointField = z.strictObject({ x: planCoordinate, y: planCoordinate, z: heightField });
