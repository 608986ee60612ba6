import type { ArmPosition, ArmRadii, Sweep } from '../../report/sweep.ts';
import {
  addLine,
  apart,
  fillPath,
  type Pen,
  strokePath,
  strokeThick,
  traceDisc,
  traceLine,
} from './pen.ts';

export interface DrawnSweep {
  readonly sweep: Sweep;
  /** Where in the move, 0 to 1, the mic is nearest to being struck. */
  readonly nearestAt: number;
}

/** The way of an arm in one move: the ground it sweeps, the stick fading away from the nearest moment. */
export function paintSweep(pen: Pen, { sweep, nearestAt }: DrawnSweep): void {
  const { canvas, colours } = pen;
  const { positions, radii } = sweep;
  apart(pen, () => {
    canvas.lineCap = 'round';
    canvas.lineJoin = 'round';
    canvas.globalAlpha = 0.13;
    paintForearms(pen, positions, radii);
    canvas.globalAlpha = 0.14;
    paintStickGround(pen, positions);
    for (const position of positions) {
      const apartness = Math.abs(position.at - nearestAt);
      canvas.globalAlpha = 0.08 + 0.42 * Math.exp(-apartness * 7);
      traceLine(pen, position.butt, position.tip);
      strokeThick(pen, colours.stick, radii.stick, 1);
    }
    canvas.globalAlpha = 0.8;
    paintTipWay(pen, positions);
  });
}

/** All forearms and hands as one path, so that where they overlap is no darker. */
function paintForearms(pen: Pen, positions: readonly ArmPosition[], radii: ArmRadii): void {
  const { canvas, colours } = pen;
  canvas.beginPath();
  for (const { elbow, grip } of positions) addLine(pen, [elbow, grip]);
  strokeThick(pen, colours.arm, 2 * radii.forearm, 4);
}

/** The ground between neighbouring positions of the stick. */
function paintStickGround(pen: Pen, positions: readonly ArmPosition[]): void {
  const { canvas, colours } = pen;
  canvas.beginPath();
  for (const [i, to] of positions.slice(1).entries()) {
    const from = positions[i] ?? to;
    addLine(pen, anticlockwise([from.butt, from.tip, to.tip, to.butt]));
    canvas.closePath();
  }
  fillPath(pen, colours.stick);
}

type Spot = ArmPosition['tip'];

/** The same corners in one sense of turning: overlapping pieces of one path then add up instead of cancelling out. */
function anticlockwise(corners: readonly Spot[]): readonly Spot[] {
  const area = corners.reduce((sum, p, i) => {
    const q = corners[(i + 1) % corners.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return area < 0 ? [...corners].reverse() : corners;
}

function paintTipWay(pen: Pen, positions: readonly ArmPosition[]): void {
  const tips = positions.map(({ tip }) => tip);
  const [before, last] = [tips.at(-3), tips.at(-1)];
  traceLine(pen, ...tips);
  apart(pen, () => {
    pen.canvas.setLineDash([5 * pen.px, 4 * pen.px]);
    strokePath(pen, pen.colours.stick, 1.25);
  });
  if (!before || !last) return;
  const way = Math.atan2(last.y - before.y, last.x - before.x);
  const barb = (turn: number): Spot => ({
    x: last.x - 9 * pen.px * Math.cos(way + turn),
    y: last.y - 9 * pen.px * Math.sin(way + turn),
    z: 0,
  });
  traceLine(pen, barb(0.45), last, barb(-0.45));
  strokePath(pen, pen.colours.stick, 1.75);
}

/** Stick, hand and forearm at one moment. */
export function paintArm(pen: Pen, arm: ArmPosition, radii: ArmRadii): void {
  const { canvas, colours } = pen;
  const stick = 2 * radii.stick;
  apart(pen, () => {
    canvas.lineCap = 'round';
    canvas.globalAlpha = 0.3;
    traceLine(pen, arm.elbow, arm.grip);
    strokeThick(pen, colours.arm, 2 * radii.forearm, 4);
    canvas.globalAlpha = 0.45;
    traceDisc(pen, arm.grip, radii.hand);
    fillPath(pen, colours.arm);
    canvas.globalAlpha = 1;
    traceLine(pen, arm.butt, arm.tip);
    strokeThick(pen, colours.halo, stick + 3 * pen.px, 5);
    strokeThick(pen, colours.stick, stick, 2.5);
  });
}
