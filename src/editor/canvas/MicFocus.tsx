import { useCallback, useMemo } from 'react';
import type { Layout } from '../../layout/layout.ts';
import { isStruck } from '../../layout/pieces/piece.ts';
import type { Report } from '../../report/report.ts';
import { sweepOf } from '../../report/sweep.ts';
import type { ForbiddenZone } from '../../report/zone.ts';
import { surfaceOf } from '../../rig/surface.ts';
import type { Palette } from '../palette.ts';
import { paintNearest } from '../shapes/nearestMark.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintSweep } from '../shapes/sweep.ts';
import { paintSwing } from '../shapes/swing.ts';
import { paintZone } from '../shapes/zone.ts';
import { Drawn } from './Drawn.tsx';

/** Positions of the arm that are drawn along one move. */
const STEPS = 28;

interface Props {
  readonly layout: Layout;
  readonly report: Report;
  readonly mic: string;
  readonly showSweep: boolean;
  readonly zone: ForbiddenZone | null;
  readonly colours: Palette;
}

/** What the selected mic is judged by: its forbidden zone, the move that comes nearest, the place (inside the kit frame). */
export function MicFocus({ layout, report, mic, showSweep, zone, colours }: Props) {
  const row = report.clearances.find((one) => one.mic === mic);
  const nearest = row?.nearest;
  const movement = nearest?.movement;
  const sweep = useMemo(
    () => (movement && showSweep ? sweepOf(layout, movement, STEPS) : null),
    [layout, movement, showSweep],
  );
  const nearestAt = movement && 'at' in movement ? movement.at : 1;
  const paintMove = useCallback(
    (pen: Pen) => {
      if (sweep) paintSweep(pen, { sweep, nearestAt });
    },
    [sweep, nearestAt],
  );
  const rings = zone?.mic === mic ? zone.rings : null;
  const paintTheZone = useCallback(
    (pen: Pen) => {
      if (rings) paintZone(pen, rings);
    },
    [rings],
  );
  const swinging = useMemo(
    () =>
      movement?.kind === 'swing'
        ? layout.pieces.find(({ id }) => id === movement.cymbal)
        : undefined,
    [layout.pieces, movement],
  );
  const paintTheSwing = useCallback(
    (pen: Pen) => {
      if (showSweep && swinging && isStruck(swinging)) paintSwing(pen, surfaceOf(swinging));
    },
    [showSweep, swinging],
  );
  const verdict = row?.verdict;
  const paintPlace = useCallback(
    (pen: Pen) => {
      if (nearest && verdict) paintNearest(pen, [nearest.onMic, nearest.onMoving], verdict);
    },
    [nearest, verdict],
  );
  return (
    <>
      <Drawn paint={paintTheZone} colours={colours} />
      <Drawn paint={paintMove} colours={colours} />
      <Drawn paint={paintTheSwing} colours={colours} />
      <Drawn paint={paintPlace} colours={colours} />
    </>
  );
}
