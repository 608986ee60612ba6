import type { Fit, FitPlace } from '../../report/fit.ts';
import { type LengthUnit, showLength } from '../../units/lengthText.ts';

interface Kit {
  readonly x: number;
  readonly y: number;
}

/** `Shift the kit by 120 mm: 120 mm toward the audience`, `Turn it in place by 8° clockwise`, or both. */
export function fitPlaceWords({ kit, shift, turn }: FitPlace, from: Kit, unit: LengthUnit): string {
  const way = turn > 0 ? 'anticlockwise' : 'clockwise';
  const turned = `${Number(Math.abs(turn).toFixed(1))}° ${way}, seen from above`;
  if (shift === 0) return `Turn the kit in place by ${turned}`;
  const [x, y] = [kit.x - from.x, kit.y - from.y];
  const ways = [
    ...(Math.abs(x) >= 0.5
      ? [`${showLength(Math.abs(x), unit)} to the player's ${x > 0 ? 'right' : 'left'}`]
      : []),
    ...(Math.abs(y) >= 0.5
      ? [`${showLength(Math.abs(y), unit)} ${y > 0 ? 'toward the audience' : 'back'}`]
      : []),
  ];
  const shifted = `${ways.join(' and ') || showLength(shift, unit)}`;
  return turn === 0
    ? `Shift the kit ${shifted}`
    : `Turn the kit by ${turned}, and shift it ${shifted}`;
}

/** Why no shift and no turn does it. */
export function noFitWords({ tooWide, tooDeep }: Fit, unit: LengthUnit): string {
  const parts = [
    ...(tooWide > 0 ? [`${showLength(Math.ceil(tooWide), unit)} too wide`] : []),
    ...(tooDeep > 0 ? [`${showLength(Math.ceil(tooDeep), unit)} too deep`] : []),
  ];
  const now = parts.length > 0 ? ` As it stands it is ${parts.join(' and ')} for this deck.` : '';
  return `No shift and no turn makes the whole kit fit.${now} A larger deck, or stands drawn in.`;
}
