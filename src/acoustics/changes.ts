import { distance } from '../geometry/vector.ts';
import type { Id } from '../layout/fields.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import type { Acoustics } from './acoustics.ts';
import type { CloseMic } from './closeMic.ts';
import { change } from './trials.ts';

/** What changed for a close mic since an earlier placement; now less then. */
export interface CloseChange {
  readonly mic: Id;
  readonly level: Decibels;
  readonly others: Decibels;
  readonly isolation: Decibels;
  readonly proximity: Decibels;
  /** How far the aim point moved; null where there was or is none. */
  readonly aim: Mm | null;
  /** Every piece heard then and now. */
  readonly pieces: readonly { readonly piece: Id; readonly level: Decibels }[];
}

/** Changes of every close mic that was there before and has the same source, in the layout's order. */
export const closeChanges = (earlier: Acoustics, now: Acoustics): readonly CloseChange[] =>
  now.close.flatMap((mic) => {
    const before = earlier.close.find((one) => one.mic === mic.mic && one.source === mic.source);
    return before ? [closeChange(before, mic)] : [];
  });

const closeChange = (before: CloseMic, now: CloseMic): CloseChange => ({
  mic: now.mic,
  level: change(before.level, now.level),
  others: change(before.others, now.others),
  isolation: change(before.isolation, now.isolation),
  proximity: now.proximity - before.proximity,
  aim: before.aim && now.aim ? distance(before.aim.point, now.aim.point) : null,
  pieces: now.polar.flatMap(({ piece, level }) => {
    const then = before.polar.find((one) => one.piece === piece);
    return then ? [{ piece, level: level - then.level }] : [];
  }),
});
