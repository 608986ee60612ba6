import type { Capsule } from '../../geometry/capsule.ts';
import type { Vec3 } from '../../geometry/vector.ts';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Figure } from '../../report/figure.ts';
import type { ClearanceRow, Report } from '../../report/report.ts';
import { type Sweep, sweepOf } from '../../report/sweep.ts';
import { type Surface, surfaceOf } from '../../rig/surface.ts';
import type { Turner } from '../elevation/turned.ts';
import type { Verdict } from '../palette.ts';

/** What a mic is judged by: whatever comes nearest to it, and where. In the frame of the drawing. */
export interface MicFocus {
  /** The way of the arm, and when in it the mic is nearest. */
  readonly sweep: Sweep | null;
  readonly nearestAt: number;
  readonly swinging: Surface | null;
  readonly leg: readonly Capsule[];
  readonly place: { readonly ends: readonly [Vec3, Vec3]; readonly verdict: Verdict } | null;
}

/** Positions of the arm that are drawn along one move. */
const STEPS = 28;

export type Movement = NonNullable<ClearanceRow['nearest']>['movement'];

/** The focus on a mic, kit frame; null for a mic that is not there. */
export function focusOn(
  layout: Layout,
  report: Report,
  mic: string,
  figure: Figure,
): MicFocus | null {
  const row = report.clearances.find((one) => one.mic === mic);
  if (!row) return null;
  const { nearest, verdict } = row;
  const movement = nearest?.movement;
  return {
    sweep: movement ? sweepOf(layout, movement, STEPS) : null,
    nearestAt: movement && 'at' in movement ? movement.at : 1,
    swinging: movement ? swingingIn(layout, movement) : null,
    leg: movement ? legIn(figure, movement) : [],
    place: nearest ? { ends: [nearest.onMic, nearest.onMoving], verdict } : null,
  };
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
export const turnedFocus = (
  { sweep, nearestAt, swinging, leg, place }: MicFocus,
  turner: Turner,
): MicFocus => ({
  sweep: sweep && turner.sweep(sweep),
  nearestAt,
  swinging: swinging && turner.surface(swinging),
  leg: leg.map(turner.capsule),
  place: place && {
    ...place,
    ends: [turner.standpoint.point(place.ends[0]), turner.standpoint.point(place.ends[1])],
  },
});
