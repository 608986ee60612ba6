import type { Id } from '../../../layout/fields.ts';
import { type CloseRow, type HearingRow, patternLevel } from '../../../report/sound.ts';
import type { Decibels, Degrees } from '../../../units/quantity.ts';

/** A piece sits in the null where the pattern hears it this much softer than on its axis. */
export const NULL_FROM: Decibels = 15;

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
  /** Whether the pattern takes {@link NULL_FROM} of it. */
  readonly inNull: boolean;
}

/** Every piece that a close mic hears, its own source first, then the loudest first. */
export function polarPoints(
  { polar, source, level, shell }: Pick<CloseRow, 'polar' | 'source' | 'level' | 'shell'>,
  micX: number,
  pattern: HearingRow['pattern'],
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
    // Inside a drum nothing comes from where it stands.
    inNull: shell === null && patternLevel(pattern, hearing.angle) <= -NULL_FROM,
  }));
}
