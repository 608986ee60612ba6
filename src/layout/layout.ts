import { z } from 'zod';
import { boxSchema, cablingSchema } from './cabling.ts';
import { deckSchema } from './deck.ts';
import { idField, nameField, within } from './fields.ts';
import { micSchema } from './mics/mic.ts';
import { micClassSchema } from './mics/micClass.ts';
import { originSchema } from './origin.ts';
import { patchSchema } from './patch.ts';
import { pieceSchema } from './pieces/piece.ts';
import { playerSchema } from './player.ts';
import { setUpSchema } from './setUp.ts';
import { signOffsSchema } from './signOff.ts';
import { venueSchema } from './venue.ts';

/** The version of the layout document that this program writes. */
export const SCHEMA_VERSION = 4;

/**
 * The layout document: one kit with its player, mics, box, deck and venue facts. Plain JSON; what can be computed is not
 * in it. Shapes and limits only: what must agree between parts is checked by `checkReferences`.
 */
export const layoutSchema = z.strictObject({
  schema: z.literal(SCHEMA_VERSION),
  id: idField,
  name: nameField,
  venue: venueSchema,
  units: z.enum(['mm', 'in']),
  /** Clearance below which a mic is tight, mm. */
  margin: within(0, 300),
  deck: deckSchema,
  player: playerSchema,
  pieces: z.array(pieceSchema).max(80),
  ownClasses: z.array(micClassSchema).max(40),
  mics: z.array(micSchema).max(64),
  box: boxSchema,
  cabling: cablingSchema,
  patch: patchSchema,
  /** Null: started from nothing stored. */
  origin: originSchema.nullable(),
  signOffs: signOffsSchema,
  setUp: setUpSchema,
});
export type Layout = z.infer<typeof layoutSchema>;
