import type { Ink } from '../ink/ink.ts';
import type { Palette, Verdict } from '../palette.ts';

export interface MarkPlace {
  readonly x: number;
  readonly y: number;
  readonly size: number;
}

/**
 * The three verdicts as shapes that can be told apart without colour: clear is a ring with a tick, tight a triangle with an
 * exclamation mark, struck an eight-sided stop with a cross. Drawn in px about a point.
 */
export function paintVerdictMark(
  canvas: Ink,
  verdict: Verdict,
  { x, y, size }: MarkPlace,
  colours: Palette,
): void {
  const half = size / 2;
  canvas.save();
  canvas.translate(x, y);
  canvas.lineJoin = 'round';
  canvas.lineCap = 'round';
  canvas.fillStyle = colours.verdict[verdict];
  canvas.strokeStyle = colours.verdict[verdict];
  canvas.lineWidth = size * 0.11;
  canvas.beginPath();
  if (verdict === 'clear') canvas.arc(0, 0, half * 0.88, 0, 2 * Math.PI);
  else if (verdict === 'tight') triangle(canvas, half);
  else octagon(canvas, half);
  if (verdict !== 'clear') {
    canvas.fill();
    canvas.strokeStyle = colours.plate;
  }
  if (verdict !== 'struck') canvas.stroke();
  canvas.lineWidth = size * 0.13;
  canvas.beginPath();
  signs[verdict](canvas, half);
  canvas.stroke();
  canvas.restore();
}

function triangle(canvas: Ink, half: number): void {
  canvas.moveTo(0, -half);
  canvas.lineTo(half, half * 0.86);
  canvas.lineTo(-half, half * 0.86);
  canvas.closePath();
}

function octagon(canvas: Ink, half: number): void {
  for (let k = 0; k < 8; k += 1) {
    const angle = ((k + 0.5) * Math.PI) / 4;
    canvas.lineTo(half * Math.cos(angle), half * Math.sin(angle));
  }
  canvas.closePath();
}

const signs: Readonly<Record<Verdict, (canvas: Ink, half: number) => void>> = {
  clear(canvas, half) {
    canvas.moveTo(-half * 0.42, half * 0.04);
    canvas.lineTo(-half * 0.1, half * 0.36);
    canvas.lineTo(half * 0.42, -half * 0.32);
  },
  tight(canvas, half) {
    canvas.moveTo(0, -half * 0.34);
    canvas.lineTo(0, half * 0.22);
    canvas.moveTo(0, half * 0.56);
    canvas.lineTo(0, half * 0.57);
  },
  struck(canvas, half) {
    const arm = half * 0.36;
    canvas.moveTo(-arm, -arm);
    canvas.lineTo(arm, arm);
    canvas.moveTo(arm, -arm);
    canvas.lineTo(-arm, arm);
  },
};
