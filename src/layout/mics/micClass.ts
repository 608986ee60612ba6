import { z } from 'zod';
import { idField, nameField, within } from '../fields.ts';

/**
 * A generic class of microphone: its size in mm, how it hears and what it needs. The body is a cylinder from the tip (the
 * front of the grille) backward; the connector and the cable's bend stand behind it.
 */
export const micClassSchema = z.strictObject({
  id: idField,
  name: nameField,
  length: within(15, 400),
  diameter: within(5, 150),
  /** `end`: the front end faces the source; `side`: the source is beside the tip, the body stands across the aim. */
  address: z.enum(['end', 'side']),
  /** First-order pattern A + B cos(angle), A + B = 1: this is A. 1 omni, 0.5 cardioid, 0 figure-8. */
  patternA: within(0, 1),
  type: z.enum(['dynamic', 'condenser', 'ribbon', 'boundary']),
  phantom: z.boolean(),
  connector: z.enum(['straight', 'rightAngle', 'thinCable']),
  mass: within(0.01, 3),
});
export type MicClass = z.infer<typeof micClassSchema>;
