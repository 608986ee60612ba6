import { useCallback } from 'react';
import type { ForbiddenZone } from '../../report/zone.ts';
import type { MicFocus } from '../move/micFocus.ts';
import type { Palette } from '../palette.ts';
import { paintNearest } from '../shapes/nearestMark.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintLeg } from '../shapes/player.ts';
import { paintArm, paintSweep } from '../shapes/sweep.ts';
import { paintZone } from '../shapes/zone.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly focus: MicFocus;
  readonly showSweep: boolean;
  readonly zone: ForbiddenZone | null;
  readonly paintSwing: (pen: Pen, cymbal: NonNullable<MicFocus['swinging']>) => void;
  readonly colours: Palette;
}

/** What the selected mic is judged by: its forbidden zone, the move that comes nearest, the place (inside the frame of the drawing). */
export function FocusDrawing({ focus, showSweep, zone, paintSwing, colours }: Props) {
  const { sweep, nearestAt, arm, swinging, leg, place } = focus;
  const rings = zone?.rings;
  const paintTheZone = useCallback(
    (pen: Pen) => {
      if (rings) paintZone(pen, rings);
    },
    [rings],
  );
  const paintWay = useCallback(
    (pen: Pen) => {
      if (showSweep && sweep) paintSweep(pen, { sweep, nearestAt });
    },
    [showSweep, sweep, nearestAt],
  );
  const paintMove = useCallback(
    (pen: Pen) => {
      if (!showSweep) return;
      if (swinging) paintSwing(pen, swinging);
      if (leg.length > 0) paintLeg(pen, leg);
    },
    [showSweep, swinging, leg, paintSwing],
  );
  // Apart from the move itself, so that only the arm is drawn anew while it is played.
  const paintTheArm = useCallback(
    (pen: Pen) => {
      if (showSweep && arm && sweep) paintArm(pen, arm, sweep.radii);
    },
    [showSweep, arm, sweep],
  );
  const paintPlace = useCallback(
    (pen: Pen) => {
      if (place) paintNearest(pen, place.ends, place.verdict);
    },
    [place],
  );
  return (
    <>
      <Drawn paint={paintTheZone} colours={colours} />
      <Drawn paint={paintWay} colours={colours} />
      <Drawn paint={paintMove} colours={colours} />
      <Drawn paint={paintTheArm} colours={colours} />
      <Drawn paint={paintPlace} colours={colours} />
    </>
  );
}
