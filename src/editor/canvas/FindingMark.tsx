import { useCallback, useEffect, useState } from 'react';
import type { Ink } from '../ink/ink.ts';
import { MARK_RADIUS, type MarkedPlace } from '../labels/markedPlaces.ts';
import type { Palette } from '../palette.ts';
import { FULL_TURN, type Pen } from '../shapes/pen.ts';
import type { ScreenPoint } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  readonly mark: MarkedPlace;
  readonly colours: Palette;
}

/**
 * A ring round the place of a finding: it draws together three times, then stands still (screen px). A wished spot is tied to the mic
 * that is wished there, so that of several rings each is seen to be whose it is.
 */
export function FindingMark({ mark, colours }: Props) {
  const pulse = usePulse(mark.key);
  const { at, from } = mark;
  const paint = useCallback(
    ({ canvas }: Pen) => {
      const radius = MARK_RADIUS + 36 * pulse;
      for (const [colour, width] of [
        [colours.halo, 7],
        [colours.focus, 3],
      ] as const) {
        canvas.beginPath();
        canvas.arc(at.x, at.y, radius, 0, FULL_TURN);
        if (from) tieTo(canvas, { at, from, radius });
        canvas.strokeStyle = colour;
        canvas.lineWidth = width;
        canvas.stroke();
      }
    },
    [pulse, at, from, colours],
  );
  return <Drawn paint={paint} colours={colours} />;
}

interface Tie {
  readonly at: ScreenPoint;
  readonly from: ScreenPoint;
  readonly radius: number;
}

/** A line from the mic to the ring; none where the mic is inside it. */
function tieTo(canvas: Ink, { at, from, radius }: Tie): void {
  const way = Math.hypot(from.x - at.x, from.y - at.y);
  if (way <= radius) return;
  canvas.moveTo(from.x, from.y);
  canvas.lineTo(at.x + ((from.x - at.x) * radius) / way, at.y + ((from.y - at.y) * radius) / way);
}

const PULSES = 3;
const PULSE_MS = 700;

/** From 1 to 0, three times, then 0; always 0 for those who want less motion. */
function usePulse(restart: string): number {
  const [pulse, setPulse] = useState(0);
  useEffect(() => {
    if (restart === '' || matchMedia('(prefers-reduced-motion: reduce)').matches) return undefined;
    let ticket = 0;
    let began: number | undefined;
    const draw = (time: number): void => {
      began ??= time;
      const done = (time - began) / PULSE_MS;
      setPulse(done < PULSES ? (1 - (done % 1)) ** 2 : 0);
      if (done < PULSES) ticket = requestAnimationFrame(draw);
    };
    ticket = requestAnimationFrame(draw);
    return () => cancelAnimationFrame(ticket);
  }, [restart]);
  return pulse;
}
