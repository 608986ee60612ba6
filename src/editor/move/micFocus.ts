import type { Capsule } from '../../geometry/capsule.ts';
import type { Vec3 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Figure } from '../../report/figure.ts';
import { judgementOf } from '../../report/judgement.ts';
import { type Moment, momentOf, nearestMoment } from '../../report/moment.ts';
import type { ClearanceRow } from '../../report/report.ts';
import { type ArmPosition, type Sweep, sweepOf } from '../../report/sweep.ts';
import { type Surface, surfaceOf } from '../../rig/surface.ts';
import type { OpenLayout } from '../../session/session.ts';
import type { Turner } from '../elevation/turned.ts';
import type { Verdict } from '../palette.ts';
import { momentText, nearestText } from '../words.ts';

type Movement = NonNullable<ClearanceRow['nearest']>['movement'];

/** What a mic is judged by: whatever comes nearest to it, and where. In the frame of the drawing. */
export interface MicFocus {
  /** The way of the arm in that move, and the arm at the moment that is shown. */
  readonly sweep: Sweep | null;
  readonly arm: ArmPosition | null;
  /** The cymbal of that swing at rest, and at the moment that is shown. */
  readonly swinging: Surface | null;
  readonly swung: Surface | null;
  /** When in the move or swing, from 0 to 1, the mic is nearest; null where there is nothing to play. */
  readonly nearestAt: number | null;
  /** What is nearest then, with the clearance itself: at or below what is measured then, and by the way out of all of a swing where the mic stands in it. */
  readonly nearest: Moment | null;
  readonly leg: readonly Capsule[];
  readonly place: FocusPlace | null;
}

/** Where mic and moving part face each other, and how far they are apart, with the verdict of that; null where the mic can't stay whatever it is. */
export interface FocusPlace {
  readonly ends: readonly [Vec3, Vec3];
  readonly verdict: Verdict | null;
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
  const nearestAt = nearest ? nearestMoment(layout, nearest) : null;
  const placed = report.rig.mics.find((one) => one.mic.id === mic);
  const moment =
    nearest && placed && nearestAt !== null ? momentOf(layout, placed, nearest, nearestAt) : null;
  const { clearance } = row;
  return {
    sweep: movement ? sweepOf(layout, movement, STEPS) : null,
    arm: moment?.arm ?? null,
    swinging: movement ? swingingIn(layout, movement) : null,
    swung: moment?.cymbal ?? null,
    nearestAt,
    nearest: moment && nearest ? { ...moment, clearance, verdict, part: nearest.part } : null,
    leg: movement ? legIn(figure, movement) : [],
    place: nearest
      ? {
          ends: [nearest.onMic, nearest.onMoving],
          verdict: verdictAt(row, verdict, report),
          text: nearestText(row, layout),
        }
      : null,
  };
}

/** The focus at a moment of the move, with what is nearest then. */
export function focusAt(
  focus: MicFocus,
  { layout, report }: OpenLayout,
  row: ClearanceRow,
  at: number,
): { readonly focus: MicFocus; readonly moment: Moment } | null {
  if (focus.nearest && at === focus.nearestAt) return { moment: focus.nearest, focus };
  const { nearest } = row;
  const placed = report.rig.mics.find(({ mic }) => mic.id === row.mic);
  const moment = nearest && placed ? momentOf(layout, placed, nearest, at) : null;
  if (!nearest || !moment) return null;
  const { arm, cymbal, onMic, onMoving } = moment;
  const verdict = verdictAt(row, moment.verdict, report);
  const text = momentText(moment, nearest.movement, layout);
  const place: FocusPlace = { ends: [onMic, onMoving], verdict, text };
  return { moment, focus: { ...focus, arm, swung: cymbal, place } };
}

/** No room from what moves is the trouble of a mic that can't stay, nor does it make it clear: only what strikes it is judged too. */
const verdictAt = (
  row: ClearanceRow,
  verdict: Verdict,
  report: OpenLayout['report'],
): Verdict | null =>
  verdict === 'struck' || judgementOf(row, report) === row.verdict ? verdict : null;

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
  nearest: focus.nearest,
  arm: focus.arm && turner.arm(focus.arm),
  swinging: focus.swinging && turner.surface(focus.swinging),
  swung: focus.swung && turner.surface(focus.swung),
  leg: focus.leg.map(turner.capsule),
  place: focus.place && {
    ...focus.place,
    ends: [
      turner.standpoint.point(focus.place.ends[0]),
      turner.standpoint.point(focus.place.ends[1]),
    ],
  },
});
