import type { Ink } from '../ink/ink.ts';
import type { Palette } from '../palette.ts';
import type { HandleKind } from '../tools/handles.ts';
import type { ScreenPoint } from '../view/view.ts';

interface DrawnHandle {
  readonly kind: HandleKind;
  readonly anchor: ScreenPoint;
  readonly at: ScreenPoint;
}

/** Radius as drawn, px; a finger meets it within 22 px. */
const RADIUS = 13;

/** A handle: a disc with a glyph of what it does, and a thin line to what it belongs to (screen px). */
export function paintHandle(
  canvas: Ink,
  { kind, anchor, at }: DrawnHandle,
  colours: Palette,
): void {
  canvas.save();
  canvas.strokeStyle = colours.selected;
  if (Math.hypot(at.x - anchor.x, at.y - anchor.y) > RADIUS) {
    canvas.lineWidth = 1.25;
    canvas.setLineDash([3, 3]);
    canvas.beginPath();
    canvas.moveTo(anchor.x, anchor.y);
    canvas.lineTo(at.x, at.y);
    canvas.stroke();
    canvas.setLineDash([]);
  }
  canvas.translate(at.x, at.y);
  if (kind === 'move') paintRing(canvas, colours);
  else paintDisc(canvas, colours);
  canvas.lineWidth = 1.75;
  canvas.lineCap = 'round';
  canvas.lineJoin = 'round';
  canvas.beginPath();
  glyphs[kind](canvas);
  canvas.stroke();
  canvas.restore();
}

function paintDisc(canvas: Ink, colours: Palette): void {
  disc(canvas, RADIUS + 1.5);
  canvas.fillStyle = colours.halo;
  canvas.fill();
  disc(canvas, RADIUS);
  canvas.fillStyle = colours.handleFill;
  canvas.fill();
  canvas.lineWidth = 2;
  canvas.stroke();
}

/** What is moved by its handle stays visible inside it. */
function paintRing(canvas: Ink, colours: Palette): void {
  disc(canvas, RADIUS);
  canvas.strokeStyle = colours.halo;
  canvas.lineWidth = 6;
  canvas.stroke();
  canvas.strokeStyle = colours.selected;
  canvas.lineWidth = 2.5;
  canvas.stroke();
}

function disc(canvas: Ink, radius: number): void {
  canvas.beginPath();
  canvas.arc(0, 0, radius, 0, 2 * Math.PI);
}

function line(canvas: Ink, ...spots: readonly (readonly [number, number])[]) {
  for (const [i, [x, y]] of spots.entries()) {
    if (i === 0) canvas.moveTo(x, y);
    else canvas.lineTo(x, y);
  }
}

const FOUR_WAYS = [
  [1, 0],
  [-1, 0],
  [0, 1],
  [0, -1],
] as const;

const glyphs: Readonly<Record<HandleKind, (canvas: Ink) => void>> = {
  /** Arrow heads four ways, outside the ring. */
  move(canvas) {
    for (const [x, y] of FOUR_WAYS) {
      line(
        canvas,
        [x * 17 + y * 4, y * 17 + x * 4],
        [x * 21, y * 21],
        [x * 17 - y * 4, y * 17 - x * 4],
      );
    }
  },
  /** Most of a turn with an arrow head. */
  turn(canvas) {
    canvas.arc(0, 0, 6, -0.4, 1.5 * Math.PI);
    line(canvas, [-3, -8.5], [0.5, -6], [-3, -3]);
  },
  /** A surface that leans from the level. */
  lean(canvas) {
    line(canvas, [-7, 5], [7, 5]);
    line(canvas, [-7, 5], [5, -5]);
    canvas.moveTo(4.5, 5);
    canvas.arc(-7, 5, 11.5, 0, -0.68, true);
  },
  /** Three legs. */
  feet(canvas) {
    for (const turn of [-90, 30, 150]) {
      const angle = (turn * Math.PI) / 180;
      line(canvas, [0, 0], [7.5 * Math.cos(angle), 7.5 * Math.sin(angle)]);
    }
    canvas.moveTo(2, 0);
    canvas.arc(0, 0, 2, 0, 2 * Math.PI);
  },
  /** A cross-hair. */
  aim(canvas) {
    canvas.arc(0, 0, 4.5, 0, 2 * Math.PI);
    for (const [x, y] of FOUR_WAYS) {
      line(canvas, [x * 4.5, y * 4.5], [x * 8, y * 8]);
    }
  },
  /** Up and down. */
  raise(canvas) {
    line(canvas, [0, -8], [0, 8]);
    line(canvas, [-3.5, -4.5], [0, -8], [3.5, -4.5]);
    line(canvas, [-3.5, 4.5], [0, 8], [3.5, 4.5]);
  },
  /** To and fro. */
  slide(canvas) {
    line(canvas, [0, -8], [0, 8]);
    line(canvas, [-3, -5], [0, -8], [3, -5]);
    line(canvas, [-3, 5], [0, 8], [3, 5]);
  },
};
