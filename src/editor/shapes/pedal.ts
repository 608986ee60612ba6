import type { Vec2 } from '../../geometry/vector.ts';
import type { Pedal } from '../../layout/pieces/pedal.ts';
import { cosDeg, sinDeg } from '../../units/angle.ts';
import { fillPath, type Pen, strokePath, traceLine, tracePolygon } from './pen.ts';

/** A foot pedal: its heel plate, the board that widens toward the toe, the hinge between them. */
export function paintPedal(pen: Pen, pedal: Pedal): void {
  const { colours } = pen;
  const ahead = { x: cosDeg(pedal.turn), y: sinDeg(pedal.turn) };
  const at = (forward: number, right: number): Vec2 => ({
    x: pedal.x + ahead.x * forward + ahead.y * right,
    y: pedal.y + ahead.y * forward - ahead.x * right,
  });
  const half = pedal.width / 2;
  const hinge = pedal.length * 0.28;
  tracePolygon(pen, [
    at(0, -half * 0.75),
    at(0, half * 0.75),
    at(hinge, half * 0.8),
    at(pedal.length, half),
    at(pedal.length, -half),
    at(hinge, -half * 0.8),
  ]);
  fillPath(pen, colours.hardwareFill);
  strokePath(pen, colours.hardware, 1.5);
  traceLine(pen, at(hinge, -half * 0.8), at(hinge, half * 0.8));
  strokePath(pen, colours.hardware, 1);
  for (const share of [0.45, 0.6, 0.75, 0.9]) {
    traceLine(pen, at(pedal.length * share, -half * 0.45), at(pedal.length * share, half * 0.45));
    strokePath(pen, colours.hardware, 0.75);
  }
}
