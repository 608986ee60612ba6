import type { Capsule } from '../../geometry/capsule.ts';
import type { Vec3 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Figure } from '../../report/figure.ts';
import { type Moment, momentOf } from '../../report/moment.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { type ArmPosition, armAt, type Sweep, sweepOf } from '../../report/sweep.ts';
import { type Surface, surfaceOf } from '../../rig/surface.ts';
import type { OpenLayout } from '../../session/session.ts';
import type { Turner } from '../elevation/turned.ts';
import type { Verdict } from '../palette.ts';
import { momentText, nearestText } from '../words.ts';

export type Movement = NonNullable<ClearanceRow['nearest']>['movement'];

/** What a mic is judged by: whatever comes nearest to it, and where. In the frame of the drawing. */
export interface MicFocus {
  /** The way of the arm in that move, when in it the mic is nearest, and the arm at the moment that is shown. */
  readonly sweep: Sweep | null;
  readonly nearestAt: number;
  readonly arm: ArmPosition | null;
  readonly swinging: Surface | null;
  readonly leg: readonly Capsule[];
  readonly place: FocusPlace | null;
}

/** Where mic and moving part face each other, and how far they are apart. */
export interface FocusPlace {
  readonly ends: readonly [Vec3, Vec3];
  readonly verdict: Verdict;
  readonly text: string;
}

/** Positions of the arm that are drawn along one move. */
const STEPS = 28;

/** The focus on a mic at the moment of least clearance, kit frame; null for a mic that is not there. */
export function focusOn(
  { layout, report }: OpenLayout,
  mic: string,
  figure: Figure,
): MicFocus | null {
  const row = report.clearances.find((one) => one.mic === mic);
  if (!row) return null;
  const { nearest, verdict } = row;
  const movement = nearest?.movement;
  const nearestAt = movement && 'at' in movement ? movement.at : 1;
  return {
    sweep: movement ? sweepOf(layout, movement, STEPS) : null,
    nearestAt,
    arm: movement ? armAt(layout, movement, nearestAt) : null,
    swinging: movement ? swingingIn(layout, movement) : null,
    leg: movement ? legIn(figure, movement) : [],
    place: nearest
      ? {
          ends: [nearest.onMic, nearest.onMoving],
          verdict,
          text: nearestText(row, layout.units),
        }
      : null,
  };
}

/** The focus at another moment of the move, with what is nearest then. */
export function focusAt(
  focus: MicFocus,
  { layout, report }: OpenLayout,
  row: ClearanceRow,
  at: number,
): { readonly focus: MicFocus; readonly moment: Moment } | null {
  const movement = row.nearest?.movement;
  const placed = report.rig.mics.find(({ mic }) => mic.id === row.mic);
  const moment = movement && placed ? momentOf(layout, placed, movement, at) : null;
  if (!movement || !moment || !('hand' in movement)) return null;
  const { arm, onMic, onMoving, verdict } = moment;
  const text = momentText(moment, movement.hand, layout.units);
  return { moment, focus: { ...focus, arm, place: { ends: [onMic, onMoving], verdict, text } } };
}

function swingingIn({ pieces }: Layout, movement: Movement): Surface | null {
  if (movement.kind !== 'swing') return null;
  const cymbal = pieces.find(({ id }) => id === movement.cymbal);
  return cymbal && isStruck(cymbal) ? surfaceOf(cymbal) : null;
}

function legIn({ legs }: Figure, movement: Movement): readonly Capsule[] {
  if (movement.kind !== 'leg') return [];
  return legs
    .filter(({ side, pedal }) => side === movement.foot && pedal === movement.pedal)
    .flatMap(({ thigh, shin }) => [thigh, shin]);
}

/** The same in an elevation. */
export const turnedFocus = (focus: MicFocus, turner: Turner): MicFocus => ({
  sweep: focus.sweep && turner.sweep(focus.sweep),
  nearestAt: focus.nearestAt,
  arm: focus.arm && turner.arm(focus.arm),
  swinging: focus.swinging && turner.surface(focus.swinging),
  leg: focus.leg.map(turner.capsule),
  place: focus.place && {
    ...focus.place,
    ends: [
      turner.standpoint.point(focus.place.ends[0]),
      turner.standpoint.point(focus.place.ends[1]),
    ],
  },
});
