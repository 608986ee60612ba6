import { z } from 'zod';
import { nameField, within } from './fields.ts';

/** Measured body lengths that replace the regressions on stature, mm. Only what is given replaces. */
export const bodyOverrides = z.strictObject({
  acromialHeightSitting: within(350, 800).optional(),
  biacromialBreadth: within(200, 600).optional(),
  acromionRadiale: within(180, 500).optional(),
  radialeStylion: within(140, 400).optional(),
  stylionToGripCentre: within(30, 120).optional(),
  buttockKneeLength: within(400, 850).optional(),
  kneeHeightSitting: within(350, 750).optional(),
});
export type BodyOverrides = z.infer<typeof bodyOverrides>;

/** Which hand plays a hi-hat that both hands may play: either, the lead hand alone (crossed), the one on the hi-hat's side alone (open). */
export const hiHatField = z.enum(['either', 'crossed', 'open']);

/** The player and how they hit. Lengths in mm. */
export const playerSchema = z.strictObject({
  name: nameField,
  stature: within(1200, 2200),
  seatHeight: within(300, 800),
  leadHand: z.enum(['right', 'left']),
  hiHat: hiHatField,
  body: bodyOverrides,
  stick: z.strictObject({
    length: within(250, 600),
    diameter: within(6, 40),
    butt: within(0, 250),
  }),
  /** How far the contact point rises in a full stroke. */
  strokeHeight: within(20, 600),
  /** How far the trunk leans at most toward what the arm alone does not reach. */
  lean: within(0, 400),
});
export type Player = z.infer<typeof playerSchema>;
