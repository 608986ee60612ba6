import type { Vec2 } from '../../geometry/vector.ts';
import type { PlacedMic } from '../../rig/placed.ts';
import { addLine, apart, type Pen, strokePath, traceLine } from './pen.ts';

/** Screen distance between the lines of the hatch, px. */
const SPACING = 9;

/** Free px round a mic that is kept out of the hatch. */
const ROUND_MIC = 3;

interface DrawnZone {
  readonly rings: readonly (readonly Vec2[])[];
  /** Whether it is the zone of before a change: a broken edge, and no hatch. */
  readonly isOld: boolean;
  /** Mics that stand there. */
  readonly mics: readonly Pick<PlacedMic, 'solids'>[];
}

/**
 * Forbidden ground: hatched inside rings and holes (even-odd), with a firm edge. What lies below keeps its own colour, and mics are cut out,
 * so it must be alone on its layer.
 */
export function paintZone(pen: Pen, { rings, isOld, mics }: DrawnZone): void {
  const all = rings.flat();
  if (all.length === 0) return;
  const { canvas, colours, px } = pen;
  const trace = (): void => {
    canvas.beginPath();
    for (const ring of rings) {
      addLine(pen, ring);
      canvas.closePath();
    }
  };
  apart(pen, () => {
    if (isOld) return;
    trace();
    canvas.clip('evenodd');
    canvas.globalAlpha = 0.45;
    hatch(pen, all, SPACING * px);
  });
  apart(pen, () => {
    trace();
    canvas.lineJoin = 'round';
    if (isOld) canvas.setLineDash([4 * px, 6 * px]);
    strokePath(pen, colours.zone, 1.5);
  });
  apart(pen, () => cutOut(pen, mics));
}

function cutOut(pen: Pen, mics: DrawnZone['mics']): void {
  const { canvas, px } = pen;
  canvas.globalCompositeOperation = 'destination-out';
  canvas.lineCap = 'round';
  for (const { part, capsule } of mics.flatMap(({ solids }) => solids)) {
    if (part === 'base') continue;
    traceLine(pen, capsule.a, capsule.b);
    strokePath(pen, pen.colours.halo, 2 * (capsule.radius / px + ROUND_MIC));
  }
}

function hatch(pen: Pen, spots: readonly Vec2[], step: number): void {
  const sums = spots.map((spot) => spot.x + spot.y);
  const differences = spots.map((spot) => spot.x - spot.y);
  const low = Math.min(...differences);
  const high = Math.max(...differences);
  const diagonal = step * Math.SQRT2;
  const last = Math.max(...sums);
  // Lines start at whole steps of the frame, so that the hatch stands still while the zone changes.
  for (let sum = Math.ceil(Math.min(...sums) / diagonal) * diagonal; sum <= last; sum += diagonal) {
    traceLine(
      pen,
      { x: (sum + low) / 2, y: (sum - low) / 2 },
      { x: (sum + high) / 2, y: (sum - high) / 2 },
    );
    strokePath(pen, pen.colours.zone, 1);
  }
}
