import type { Cylinder, Tube } from '../../geometry/cylinder.ts';
import { cylinderOutline } from '../../geometry/cylinderOutline.ts';
import { remembered } from '../../geometry/remembered.ts';
import { along } from '../../geometry/vector.ts';
import { isCymbal, type Piece } from '../../layout/pieces/piece.ts';
import type { PlacedMic, PlacedPiece } from '../../rig/placed.ts';
import type { Palette } from '../palette.ts';
import {
  apart,
  fillPath,
  type Pen,
  strokePath,
  strokeThick,
  traceLine,
  tracePolygon,
} from './pen.ts';
import { traceTiltedDisc } from './tiltedDisc.ts';

interface Look {
  readonly side: string;
  readonly end: string;
  readonly edge: string;
}

/** Shells are a little see-through, so that what stands behind them can be found. */
const OPACITY = 0.8;

/** A turned piece, from the back: its hardware, its hoops, its shells. */
export function paintSolidPiece(pen: Pen, { piece, shells, hoops, hardware }: PlacedPiece): void {
  const { canvas, colours } = pen;
  const look = lookOf(piece, colours);
  apart(pen, () => {
    canvas.lineCap = 'round';
    canvas.lineJoin = 'round';
    for (const { a, b, radius } of hardware) {
      traceLine(pen, a, b);
      strokeThick(pen, colours.halo, 2 * radius + 2 * pen.px, 3.5);
      strokeThick(pen, colours.hardware, 2 * radius, 1.75);
    }
    for (const hoop of hoops) {
      tracePolygon(pen, cylinderOutline(solidOf(hoop)));
      fillPath(pen, colours.hoop);
      strokePath(pen, colours.hoop, 1);
    }
    for (const shell of [...shells].sort((p, q) => p.centre.z - q.centre.z)) {
      paintCylinder(pen, shell, look);
    }
  });
}

function lookOf(piece: Piece, colours: Palette): Look {
  if (isCymbal(piece) || piece.kind === 'hiHat') {
    return { side: colours.brassFill, end: colours.brassFill, edge: colours.brass };
  }
  if (piece.kind === 'throne') {
    return { side: colours.hardwareFill, end: colours.hardwareFill, edge: colours.hardware };
  }
  return { side: colours.shell, end: colours.head, edge: colours.hoop };
}

/** The outline, and over it the end that faces the viewer. */
function paintCylinder(pen: Pen, shell: Cylinder, { side, end, edge }: Look): void {
  const { canvas } = pen;
  const facing = shell.axis.z >= 0 ? shell.halfHeight : -shell.halfHeight;
  const near = {
    centre: along(shell.centre, shell.axis, facing),
    normal: shell.axis,
    radius: shell.radius,
  };
  for (const [trace, fill] of [
    [() => tracePolygon(pen, cylinderOutline(shell)), side],
    [() => traceTiltedDisc(pen, near), end],
  ] as const) {
    trace();
    canvas.globalAlpha = OPACITY;
    fillPath(pen, fill);
    canvas.globalAlpha = 1;
    strokePath(pen, edge, 1.25);
  }
}

/** A hoop is drawn whole: the shell that is drawn over it leaves its edge. */
const solidOf = remembered(
  ({ centre, axis, outerRadius, halfHeight }: Tube): Cylinder => ({
    centre,
    axis,
    radius: outerRadius,
    halfHeight,
  }),
);

/** The feet of a turned mic's stand. */
export function paintMicBase(pen: Pen, { solids }: PlacedMic): void {
  const { canvas, colours } = pen;
  canvas.lineCap = 'round';
  for (const { part, capsule } of solids) {
    if (part !== 'base') continue;
    traceLine(pen, capsule.a, capsule.b);
    strokeThick(pen, colours.halo, 2 * capsule.radius + 2 * pen.px, 4);
    strokeThick(pen, colours.micStand, 2 * capsule.radius, 2);
  }
}
