import { z } from 'zod';
import { azimuthField, idField, nameField, planCoordinate, within } from '../fields.ts';

/** A foot pedal: x, y is where the heel rests on the deck, `turn` the direction from heel to toe; length and width in mm. */
export const pedalSchema = z.strictObject({
  kind: z.literal('pedal'),
  id: idField,
  name: nameField,
  x: planCoordinate,
  y: planCoordinate,
  turn: azimuthField,
  length: within(150, 500),
  width: within(60, 300),
  plays: z.enum(['kick', 'hiHat']),
  foot: z.enum(['right', 'left']),
});
export type Pedal = z.infer<typeof pedalSchema>;
