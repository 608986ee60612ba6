import type { Id } from '../../../layout/fields.ts';
import type { CloseRow } from '../../../report/sound.ts';
import type { Decibels, Degrees } from '../../../units/quantity.ts';

/** A piece on a mic's polar plot. */
export interface PolarPoint {
  /** 0 for the mic's own source, then 1 for what spills most. */
  readonly number: number;
  readonly piece: Id;
  readonly angle: Degrees;
  /** Drawn on this side of the axis: where it lies for the player. */
  readonly side: 'left' | 'right';
  /** Against the mic's own source. */
  readonly level: Decibels;
}

/** Every piece that a close mic hears, its own source first, then the loudest first. */
export function polarPoints(
  { polar, source, level }: Pick<CloseRow, 'polar' | 'source' | 'level'>,
  micX: number,
): readonly PolarPoint[] {
  const own = polar.filter(({ piece }) => piece === source);
  const others = polar
    .filter(({ piece }) => piece !== source)
    .toSorted((p, q) => q.level - p.level);
  return [...own, ...others].map((hearing, i) => ({
    number: own.length === 0 ? i + 1 : i,
    piece: hearing.piece,
    angle: hearing.angle,
    side: hearing.from.x < micX ? 'left' : 'right',
    level: hearing.level - level,
  }));
}
