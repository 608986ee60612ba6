import { along, length, perpendicular, scale, subtract, unit, vec } from '../geometry/vector.ts';
import type { Decibels, Mm } from '../units/quantity.ts';
import { type CloseEar, type CloseFigures, closeFigures, workingDistance } from './closeFigures.ts';
import { facingOf } from './facing.ts';
import { type Ear, NEAREST } from './radiation.ts';

/** Ways to move a close mic that are tried out: along its axis, up, over the head, or by turning alone. */
export type TrialMove = 'nearer' | 'farther' | 'up' | 'towardCentre' | 'aimAtCentre';

/** What a move would change. */
export interface Trial {
  readonly move: TrialMove;
  readonly level: Decibels;
  readonly isolation: Decibels;
  readonly proximity: Decibels;
}

/** How far each move goes. */
export const TRIAL_STEP: Mm = 20;

/**
 * H26 What small moves of a close mic do: 20 mm along its axis, 20 mm up from the deck, 20 mm (or what is left) over the head
 *     toward its middle, each without turning; or turning to the head's middle on the spot. A move that can't be made is left out.
 */
export const trialsOf = (close: CloseEar, now: CloseFigures): readonly Trial[] =>
  moved(close).map(({ move, ear }) => {
    const then = closeFigures({ ...close, ear });
    return {
      move,
      level: then.level - now.level,
      isolation: change(now.isolation, then.isolation),
      proximity: then.proximity - now.proximity,
    };
  });

/** A difference that is 0 between two infinities. */
export const change = (before: Decibels, after: Decibels): Decibels =>
  before === after ? 0 : after - before;

function moved({ ear, own }: CloseEar): { readonly move: TrialMove; readonly ear: Ear }[] {
  const { tip, axis } = ear;
  const to = (move: TrialMove, other: Partial<Ear>) => ({ move, ear: { ...ear, ...other } });
  const { centre, normal } = facingOf(ear, own).surface;
  const aside = perpendicular(subtract(centre, tip), normal);
  const left = length(aside);
  const room = workingDistance(ear, own).distance > TRIAL_STEP + NEAREST;
  const step = Math.min(TRIAL_STEP, left);
  const inward = scale(aside, left === 0 ? 0 : step / left);
  const toCentre = subtract(centre, tip);
  return [
    ...(room ? [to('nearer', { tip: along(tip, axis, TRIAL_STEP) })] : []),
    to('farther', { tip: along(tip, axis, -TRIAL_STEP) }),
    to('up', { tip: along(tip, vec(0, 0, 1), TRIAL_STEP) }),
    ...(step < 1 ? [] : [to('towardCentre', { tip: along(tip, inward, 1) })]),
    to('aimAtCentre', { axis: unit(toCentre, axis) }),
  ];
}
