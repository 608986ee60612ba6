import { z } from 'zod';
import {
  azimuthField,
  heightField,
  idField,
  nameField,
  planCoordinate,
  within,
} from '../fields.ts';
import { rimField } from './drum.ts';

/** The port cut into the front head: its diameter and where its centre sits from the head's centre (right and up, as the audience sees it), mm. */
export const portField = z.strictObject({
  diameter: within(40, 500),
  right: within(-400, 400),
  up: within(-400, 400),
});

/** Kick drum: a lying shell. x, y, z is the shell's centre; `turn` is the direction its front head faces; `rise` lifts the front, degrees. */
export const kickSchema = z.strictObject({
  kind: z.literal('kick'),
  id: idField,
  name: nameField,
  x: planCoordinate,
  y: planCoordinate,
  z: heightField,
  turn: azimuthField,
  rise: within(-15, 30),
  diameter: within(300, 1000),
  depth: within(150, 800),
  rim: rimField,
  port: portField.nullable(),
  /** How far each spur's foot stands out to the side of the shell, mm. */
  spurs: within(0, 400),
});
export type Kick = z.infer<typeof kickSchema>;
