import { z } from 'zod';
import { idField, nameField } from './fields.ts';
import { venueSchema } from './venue.ts';

/** The layout that this one was started from, as it was then: what changed since is measured from there. */
export const originSchema = z.strictObject({
  layout: idField,
  /** The stored revision of it; null when it was not stored. */
  revision: z.number().int().min(1).nullable(),
  name: nameField,
  venue: venueSchema,
});
export type Origin = z.infer<typeof originSchema>;
