import { z } from 'zod';
import { azimuthField, idField, within } from '../fields.ts';

/** What carries a piece. Feet are real: they are drawn, found when they cross, and kept clear by cables. */
export const standSupport = z.strictObject({
  kind: z.literal('stand'),
  /** From the piece's centre to the stand's hub on the plan, mm. */
  dx: within(-1500, 1500),
  dy: within(-1500, 1500),
  legs: z.union([z.literal(2), z.literal(3)]),
  /** Hub to the tip of a foot, mm. */
  spread: within(80, 700),
  /** Direction of the first leg; the others follow evenly (two legs stand 90 degrees apart, centred on it). */
  turn: azimuthField,
});

/** Legs on the drum's own shell, each foot `overhang` mm outside it. */
export const legsSupport = z.strictObject({
  kind: z.literal('legs'),
  overhang: within(0, 300),
  turn: azimuthField,
});

/** Carried by another piece's hardware: no feet of its own. */
export const heldSupport = z.strictObject({ kind: z.literal('held'), by: idField });

export const supportField = z.discriminatedUnion('kind', [standSupport, legsSupport, heldSupport]);
export type Support = z.infer<typeof supportField>;
