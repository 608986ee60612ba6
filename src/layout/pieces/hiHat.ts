import { z } from 'zod';
import { within } from '../fields.ts';
import { struckFields } from './struck.ts';
import { standSupport } from './support.ts';

/** Hi-hat: x, y, z is the centre of the closed top cymbal's edge plane; `opening` is how far the top rises, mm. */
export const hiHatSchema = z.strictObject({
  kind: z.literal('hiHat'),
  ...struckFields,
  diameter: within(200, 500),
  opening: within(0, 100),
  support: standSupport,
});
export type HiHat = z.infer<typeof hiHatSchema>;
