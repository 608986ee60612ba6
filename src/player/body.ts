import type { BodyOverrides, Player } from '../layout/player.ts';
import type { Mm } from '../units/quantity.ts';

/** Body lengths the model uses, mm. Names as in the 2012 survey of 6,068 people (NATICK/TR-15/007). */
export type Body = { readonly [Length in keyof BodyOverrides]-?: Mm };

/**
 * Rule B1. Straight lines of each length on stature, mm = intercept + slope x stature: least squares over the public data of the 2012
 * survey (NATICK/TR-15/007, both sexes). The people measured were adults in military service: a player may differ, so each
 * length can be overridden.
 */
const ON_STATURE: { readonly [Length in keyof Body]: readonly [intercept: number, slope: number] } =
  {
    acromialHeightSitting: [77.034, 0.299129],
    biacromialBreadth: [-45.734, 0.259529],
    acromionRadiale: [-11.87, 0.197879],
    radialeStylion: [-52.923, 0.182055],
    stylionToGripCentre: [15.348, 0.026655],
    buttockKneeLength: [99.041, 0.297455],
    kneeHeightSitting: [-63.484, 0.35208],
  };

/** The player's body lengths: measured where given, from stature otherwise. */
export function bodyOf({ stature, body }: Pick<Player, 'stature' | 'body'>): Body {
  const length = (name: keyof Body): Mm => {
    const [intercept, slope] = ON_STATURE[name];
    return body[name] ?? intercept + slope * stature;
  };
  return {
    acromialHeightSitting: length('acromialHeightSitting'),
    biacromialBreadth: length('biacromialBreadth'),
    acromionRadiale: length('acromionRadiale'),
    radialeStylion: length('radialeStylion'),
    stylionToGripCentre: length('stylionToGripCentre'),
    buttockKneeLength: length('buttockKneeLength'),
    kneeHeightSitting: length('kneeHeightSitting'),
  };
}
