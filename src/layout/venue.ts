import { z } from 'zod';
import { notesField, within } from './fields.ts';

/** Where and when. Temperature in degrees C and relative humidity in % change the speed of sound. */
export const venueSchema = z.strictObject({
  name: z.string().max(80),
  date: z.iso.date('a date as YYYY-MM-DD').nullable(),
  temperature: within(-30, 60),
  humidity: within(0, 100),
  notes: notesField,
});
export type Venue = z.infer<typeof venueSchema>;
