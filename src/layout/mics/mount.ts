import { z } from 'zod';
import {
  azimuthField,
  heightField,
  idField,
  planCoordinate,
  pointField,
  spotField,
  within,
} from '../fields.ts';

/**
 * On the hoop of a drum, moving with it. `angle` is the place round the rim (azimuth of the head's plane, 0 = player's
 * right, 90 = audience); the tip stands `reach` mm inside the rim and `height` mm above the head, and the axis points
 * `pitch` degrees below the head's plane toward the drum's axis.
 */
export const clipMount = z.strictObject({
  kind: z.literal('clip'),
  drum: idField,
  material: z.enum(['rubber', 'metal']),
  angle: azimuthField,
  reach: within(-60, 300),
  height: within(5, 300),
  pitch: within(-10, 90),
});
export type ClipMount = z.infer<typeof clipMount>;

/** Classes of mic stand. Their sizes stand in the catalogue. */
export const standClassField = z.enum([
  'tripodLow',
  'tripodMedium',
  'tripodTall',
  'roundStraight',
  'roundBoom',
]);
export type StandClass = z.infer<typeof standClassField>;

/**
 * On a stand of its own. The base stays when the mic is dragged and the other way round: both are kept, mast and boom
 * follow. `tip` is the front of the mic; the axis points to `azimuth` and `pitch` (positive up), degrees.
 */
export const standMount = z.strictObject({
  kind: z.literal('stand'),
  stand: standClassField,
  base: spotField,
  /** Direction of the tripod's first leg. */
  turn: azimuthField,
  /** Height of the boom's clutch above the deck, mm; null: the height at which the boom lies most nearly level. */
  mast: heightField.nullable(),
  tip: pointField,
  azimuth: azimuthField,
  pitch: within(-90, 90),
});
export type StandMount = z.infer<typeof standMount>;

/** A boundary plate lying in a kick drum, `depth` mm behind the front head, or on the deck (kit frame). */
export const plateInKick = z.strictObject({
  kind: z.literal('plateInKick'),
  kick: idField,
  depth: within(0, 800),
});
export type PlateInKick = z.infer<typeof plateInKick>;
export const plateOnDeck = z.strictObject({
  kind: z.literal('plateOnDeck'),
  x: planCoordinate,
  y: planCoordinate,
  turn: azimuthField,
});
export type PlateOnDeck = z.infer<typeof plateOnDeck>;

export const mountSchema = z.discriminatedUnion('kind', [
  clipMount,
  standMount,
  plateInKick,
  plateOnDeck,
]);
export type Mount = z.infer<typeof mountSchema>;
