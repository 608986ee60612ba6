import { useCallback } from 'react';
import type { MicFocus } from '../move/micFocus.ts';
import type { Palette } from '../palette.ts';
import { paintNearest } from '../shapes/nearestMark.ts';
import type { Pen } from '../shapes/pen.ts';
import { paintLeg } from '../shapes/player.ts';
import { paintArm, paintSweep } from '../shapes/sweep.ts';
import { paintSwung } from '../shapes/swing.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly focus: MicFocus;
  readonly showSweep: boolean;
  readonly paintSwing: (pen: Pen, cymbal: NonNullable<MicFocus['swinging']>) => void;
  readonly colours: Palette;
}

/** What the selected mic is judged by: the move that comes nearest, the place (inside the frame of the drawing). */
export function FocusDrawing({ focus, showSweep, paintSwing, colours }: Props) {
  const { sweep, nearestAt, arm, swinging, swung, leg, place } = focus;
  const paintWay = useCallback(
    (pen: Pen) => {
      if (showSweep && sweep && nearestAt !== null) paintSweep(pen, { sweep, nearestAt });
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
  // Apart from the move itself, so that only the arm or the cymbal is drawn anew while it is played.
  const paintMoment = useCallback(
    (pen: Pen) => {
      if (!showSweep) return;
      if (arm && sweep) paintArm(pen, arm, sweep.radii);
      if (swung) paintSwung(pen, swung);
    },
    [showSweep, arm, sweep, swung],
  );
  const paintPlace = useCallback(
    (pen: Pen) => {
      if (place) paintNearest(pen, place.ends, place.verdict);
    },
    [place],
  );
  return (
    <>
      <Drawn paint={paintWay} colours={colours} />
      <Drawn paint={paintMove} colours={colours} />
      <Drawn paint={paintMoment} colours={colours} />
      <Drawn paint={paintPlace} colours={colours} />
    </>
  );
}
