import type { Id } from '../../../layout/fields.ts';
import { type CloseRow, type HearingRow, patternLevel } from '../../../report/sound.ts';
import { turnBetween } from '../../../units/angle.ts';
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

/** Angles of points as a clock has them: clockwise from where the mic looks, -180 to 180. */
export const clockAngle = ({ angle, side }: Pick<PolarPoint, 'angle' | 'side'>): Degrees =>
  side === 'left' ? -angle : angle;

/**
 * Where numbers stand round the rim: each as near to its own angle as it can, none nearer than `apart` to the next. The circle
 * is cut where its widest gap is, and numbers that would overlap share the mean of what they want.
 */
export function rimAngles(angles: readonly Degrees[], apart: Degrees): readonly Degrees[] {
  const sorted = angles.map((angle, i) => ({ angle, i })).toSorted((p, q) => p.angle - q.angle);
  const gapBefore = (at: number): Degrees => {
    const before = sorted.at(at - 1)?.angle ?? 0;
    const gap = (sorted[at]?.angle ?? 0) - before;
    return at === 0 ? gap + 360 : gap;
  };
  const cut = sorted.reduce((best, _, at) => (gapBefore(at) > gapBefore(best) ? at : best), 0);
  const inTurn = [
    ...sorted.slice(cut),
    ...sorted.slice(0, cut).map(({ angle, i }) => ({ angle: angle + 360, i })),
  ];
  // Runs of numbers side by side; a run that meets the one before joins it.
  const runs: { sum: number; count: number }[] = [];
  inTurn.forEach(({ angle }, place) => {
    let run = { sum: angle - place * apart, count: 1 };
    for (let last = runs.at(-1); last && last.sum / last.count > run.sum / run.count; ) {
      runs.pop();
      run = { sum: last.sum + run.sum, count: last.count + run.count };
      last = runs.at(-1);
    }
    runs.push(run);
  });
  const placed = runs.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
  const found = [...angles];
  inTurn.forEach(({ i }, place) => {
    found[i] = turnBetween(0, (placed[place] ?? 0) + place * apart);
  });
  return found;
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
