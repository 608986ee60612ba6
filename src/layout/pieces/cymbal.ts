import { z } from 'zod';
import { within } from '../fields.ts';
import { struckFields } from './struck.ts';
import { supportField } from './support.ts';

/** A cymbal that hangs freely on a stand and swings when struck. x, y, z is the centre of its edge plane; diameter in mm. */
export const cymbalSchema = z.strictObject({
  kind: z.enum(['crash', 'ride', 'splash', 'china']),
  ...struckFields,
  diameter: within(100, 800),
  support: supportField,
});
export type Cymbal = z.infer<typeof cymbalSchema>;
