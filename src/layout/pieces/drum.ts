import { z } from 'zod';
import { within } from '../fields.ts';
import { struckFields } from './struck.ts';
import { supportField } from './support.ts';

/** The hoop: how far it stands above the head and outside the shell, mm. */
export const rimField = z.strictObject({ height: within(0, 60), width: within(0, 40) });

/** Snare, rack tom or floor tom: an upright shell whose upper head hands strike. Diameter and depth in mm. */
export const drumSchema = z.strictObject({
  kind: z.enum(['snare', 'rackTom', 'floorTom']),
  ...struckFields,
  diameter: within(100, 800),
  depth: within(40, 800),
  rim: rimField,
  support: supportField,
});
export type Drum = z.infer<typeof drumSchema>;
