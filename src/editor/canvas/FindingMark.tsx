import { useCallback, useEffect, useState } from 'react';
import type { Palette } from '../palette.ts';
import { FULL_TURN, type Pen } from '../shapes/pen.ts';
import type { ScreenPoint } from '../view/view.ts';
import { Drawn } from './Drawn.tsx';

interface Props {
  /** Changes when another finding is shown. */
  readonly finding: string;
  readonly at: ScreenPoint;
  readonly colours: Palette;
}

/** Of the ring at rest, px. */
const RADIUS = 28;

/** A ring round the place of a finding: it draws together three times, then stands still (screen px). */
export function FindingMark({ finding, at, colours }: Props) {
  const pulse = usePulse(finding);
  const { x, y } = at;
  const paint = useCallback(
    ({ canvas }: Pen) => {
      for (const [colour, width] of [
        [colours.halo, 7],
        [colours.focus, 3],
      ] as const) {
        canvas.beginPath();
        canvas.arc(x, y, RADIUS + 36 * pulse, 0, FULL_TURN);
        canvas.strokeStyle = colour;
        canvas.lineWidth = width;
        canvas.stroke();
      }
    },
    [pulse, x, y, colours],
  );
  return <Drawn paint={paint} colours={colours} />;
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
