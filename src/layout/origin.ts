import { z } from 'zod';
import { boxSchema, cablingSchema } from './cabling.ts';
import { deckSchema } from './deck.ts';
import { idField, nameField } from './fields.ts';
import { venueSchema } from './venue.ts';

/**
 * The layout that this one was started from, with what its venue gave it then: deck, box, cables and air. What the next venue
 * changes is measured from there, on whatever tablet.
 */
export const originSchema = z.strictObject({
  layout: idField,
  /** The stored revision of it; null when it was not stored. */
  revision: z.number().int().min(1).nullable(),
  name: nameField,
  venue: venueSchema,
  deck: deckSchema,
  box: boxSchema,
  cabling: cablingSchema,
});
export type Origin = z.infer<typeof originSchema>;
