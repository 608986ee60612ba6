import { z } from 'zod';
import { azimuthField, idField, nameField, within } from '../fields.ts';

/** The player's seat. Its centre is the origin of the kit frame, its height is the player's seat height. */
export const throneSchema = z.strictObject({
  kind: z.literal('throne'),
  id: idField,
  name: nameField,
  diameter: within(200, 600),
  legs: z.union([z.literal(3), z.literal(4), z.literal(5)]),
  spread: within(150, 500),
  turn: azimuthField,
});
export type Throne = z.infer<typeof throneSchema>;
