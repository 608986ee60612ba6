import { z } from 'zod';
import {
  azimuthField,
  heightField,
  idField,
  nameField,
  planCoordinate,
  tiltField,
} from '../fields.ts';

/** Which hands play a piece. `lead` follows the player's lead hand. */
export const handsField = z.enum(['both', 'lead', 'right', 'left', 'none']);
export type Hands = z.infer<typeof handsField>;

/**
 * What every piece that hands strike has: the centre of its playing surface, x and y on the plan and z above the deck
 * (mm, kit frame); the surface leans `tilt` degrees from level toward the direction `tiltToward`.
 */
export const struckFields = {
  id: idField,
  name: nameField,
  x: planCoordinate,
  y: planCoordinate,
  z: heightField,
  tilt: tiltField,
  tiltToward: azimuthField,
  hands: handsField,
};
