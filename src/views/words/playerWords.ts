import type { Player } from '../../layout/player.ts';
import { type LengthUnit, showLength } from '../../units/lengthText.ts';
import { counted } from './nameOf.ts';

/** What tells one player from another: `1750 mm tall, seat 500 mm, leads right, hi-hat open, strokes to 305 mm`. */
export function playerFactsWords(player: Player, unit: LengthUnit): string {
  const length = (value: number): string => showLength(value, unit);
  const measured = Object.keys(player.body).length;
  return [
    `${length(player.stature)} tall`,
    `seat ${length(player.seatHeight)}`,
    `leads ${player.leadHand}`,
    ...(player.hiHat === 'either' ? [] : [`hi-hat ${player.hiHat}`]),
    `stick ${length(player.stick.length)}`,
    `strokes to ${length(player.strokeHeight)}`,
    ...(measured === 0 ? [] : [`${counted(measured, 'length')} measured`]),
  ].join(', ');
}
