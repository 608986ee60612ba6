import type { Drum } from '../../layout/pieces/drum.ts';
import type { RingOfMic } from '../../report/ring.ts';
import type { Degrees } from '../../units/quantity.ts';
import type { Verdict } from '../palette.ts';
import { besideRim, RING_OUT } from '../rim/rimLine.ts';
import {
  apart,
  fillPath,
  type Pen,
  strokePath,
  traceDisc,
  traceLine,
  tracePolygon,
} from './pen.ts';

/** Degrees between the corners of an arc as it is drawn: it is never a thousandth of the radius off the circle. */
const FINE = 5;
const HALO = 11;

interface DrawnRing {
  readonly drum: Drum;
  readonly arcs: RingOfMic['arcs'];
  /** Where on the rim the mic sits now. */
  readonly at: Degrees;
  /** Whether the mic is not placed yet, and would sit there. */
  readonly isPlanned: boolean;
}

/**
 * The ring round a drum's edge (kit frame). The verdicts can be told apart without colour: clear is a solid line, tight is
 * dashed, struck is a thin line with bars across it.
 */
export function paintRing(pen: Pen, { drum, arcs, at, isPlanned }: DrawnRing): void {
  const { canvas, colours } = pen;
  apart(pen, () => {
    canvas.lineCap = 'butt';
    // Corners of a few degrees look the same in any way, and round ones cost most.
    canvas.lineJoin = 'bevel';
    traceArc(pen, drum, { from: 0, to: 360 });
    strokePath(pen, colours.halo, HALO);
    for (const arc of arcs) {
      traceArc(pen, drum, arc);
      strokes[arc.verdict](pen);
      canvas.setLineDash([]);
    }
    paintPointer(pen, drum, at, isPlanned);
  });
}

const strokes: Readonly<Record<Verdict, (pen: Pen) => void>> = {
  clear(pen) {
    strokePath(pen, pen.colours.verdict.clear, 4.5);
  },
  tight(pen) {
    pen.canvas.setLineDash([9 * pen.px, 5 * pen.px]);
    strokePath(pen, pen.colours.verdict.tight, 5);
  },
  struck(pen) {
    strokePath(pen, pen.colours.verdict.struck, 1.5);
    pen.canvas.setLineDash([2 * pen.px, 5 * pen.px]);
    strokePath(pen, pen.colours.verdict.struck, 9);
  },
};

function traceArc(
  pen: Pen,
  drum: Drum,
  { from, to }: Pick<DrawnRing['arcs'][number], 'from' | 'to'>,
): void {
  const steps = Math.max(1, Math.ceil((to - from) / FINE));
  const out = RING_OUT * pen.px;
  const spots = Array.from({ length: steps + 1 }, (_, i) =>
    besideRim(drum, from + ((to - from) * i) / steps, out),
  );
  traceLine(pen, ...spots);
}

/** Where the mic sits now: a wedge that points at the rim; hollow where one would sit. */
function paintPointer(pen: Pen, drum: Drum, at: Degrees, isHollow: boolean): void {
  const [low, high] = [(RING_OUT - 5) * pen.px, (RING_OUT + 10) * pen.px];
  const apex = besideRim(drum, at, low);
  const back = besideRim(drum, at, high);
  const side = { x: (back.y - apex.y) * 0.5, y: (apex.x - back.x) * 0.5 };
  tracePolygon(pen, [
    apex,
    { x: back.x + side.x, y: back.y + side.y },
    { x: back.x - side.x, y: back.y - side.y },
  ]);
  strokePath(pen, pen.colours.halo, isHollow ? 6 : 3);
  fillPath(pen, isHollow ? pen.colours.plate : pen.colours.selected);
  if (isHollow) strokePath(pen, pen.colours.selected, 2.5);
}

/** A place of the ring that was asked about. */
export function paintRingPlace(pen: Pen, drum: Drum, angle: Degrees, verdict: Verdict): void {
  traceDisc(pen, besideRim(drum, angle, RING_OUT * pen.px), 8 * pen.px);
  fillPath(pen, pen.colours.plate);
  strokePath(pen, pen.colours.halo, 6);
  strokePath(pen, pen.colours.verdict[verdict], 3);
}
