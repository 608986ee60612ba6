import { z } from 'zod';
import { within } from '../fields.ts';
import { struckFields } from './struck.ts';
import { supportField } from './support.ts';

/** Cowbell, block or other small percussion: a struck spot `diameter` mm across on a body `depth` mm deep. */
export const percussionSchema = z.strictObject({
  kind: z.literal('percussion'),
  ...struckFields,
  diameter: within(30, 500),
  depth: within(10, 500),
  support: supportField,
});
export type Percussion = z.infer<typeof percussionSchema>;
