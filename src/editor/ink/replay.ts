import type { Canvas, StampedOn, Stamps } from '../labels/stamps.ts';
import { CALLS, type Call, COUNT_OF } from './calls.ts';
import type { Recording } from './recordedInk.ts';

/** On what a recording is carried out. */
export interface Replayed {
  readonly canvas: Canvas;
  /** Pixels of the device in a px of the screen. */
  readonly ratio: number;
  /** The texts that recordings tell by their numbers. */
  readonly texts: readonly string[];
  readonly stamps: Stamps;
}

type Numbers = [number, number, number, number, number, number, number];
type CarryOut = (canvas: Canvas, told: Readonly<Numbers>, text: (number: number) => string) => void;

const carriers: Readonly<Record<Exclude<Call, 'stamp'>, CarryOut>> = {
  save: (canvas) => canvas.save(),
  restore: (canvas) => canvas.restore(),
  translate: (canvas, [x, y]) => canvas.translate(x, y),
  scale: (canvas, [x, y]) => canvas.scale(x, y),
  transform: (canvas, [a, b, c, d, e, f]) => canvas.transform(a, b, c, d, e, f),
  beginPath: (canvas) => canvas.beginPath(),
  closePath: (canvas) => canvas.closePath(),
  moveTo: (canvas, [x, y]) => canvas.moveTo(x, y),
  lineTo: (canvas, [x, y]) => canvas.lineTo(x, y),
  arc: (canvas, [x, y, radius, from, to, back]) => canvas.arc(x, y, radius, from, to, back === 1),
  ellipse: (canvas, told) => canvas.ellipse(...told),
  roundRect: (canvas, [x, y, width, height, radius]) =>
    canvas.roundRect(x, y, width, height, radius),
  fill: (canvas) => canvas.fill(),
  stroke: (canvas) => canvas.stroke(),
  clip: (canvas, [rule], text) => canvas.clip(text(rule) as CanvasFillRule),
  fillRect: (canvas, [x, y, width, height]) => canvas.fillRect(x, y, width, height),
  strokeRect: (canvas, [x, y, width, height]) => canvas.strokeRect(x, y, width, height),
  clearRect: (canvas, [x, y, width, height]) => canvas.clearRect(x, y, width, height),
  fillText: (canvas, [said, x, y], text) => canvas.fillText(text(said), x, y),
  strokeText: (canvas, [said, x, y], text) => canvas.strokeText(text(said), x, y),
  setLineDash: (canvas, [lengths], text) => canvas.setLineDash(lengthsIn(text(lengths))),
  fillStyle: (canvas, [colour], text) => {
    canvas.fillStyle = text(colour);
  },
  strokeStyle: (canvas, [colour], text) => {
    canvas.strokeStyle = text(colour);
  },
  lineWidth: (canvas, [width]) => {
    canvas.lineWidth = width;
  },
  lineCap: (canvas, [cap], text) => {
    canvas.lineCap = text(cap) as CanvasLineCap;
  },
  lineJoin: (canvas, [join], text) => {
    canvas.lineJoin = text(join) as CanvasLineJoin;
  },
  globalAlpha: (canvas, [alpha]) => {
    canvas.globalAlpha = alpha;
  },
  globalCompositeOperation: (canvas, [operation], text) => {
    canvas.globalCompositeOperation = text(operation) as GlobalCompositeOperation;
  },
  font: (canvas, [font], text) => {
    canvas.font = text(font);
  },
  textAlign: (canvas, [align], text) => {
    canvas.textAlign = text(align) as CanvasTextAlign;
  },
  textBaseline: (canvas, [baseline], text) => {
    canvas.textBaseline = text(baseline) as CanvasTextBaseline;
  },
};

const lengthsIn = (text: string): number[] => (text === '' ? [] : text.split(' ').map(Number));

const carrierOf: readonly (CarryOut | null)[] = CALLS.map((call) =>
  call === 'stamp' ? null : carriers[call],
);

/** Carries out on a canvas what was recorded for it. */
export function replay(on: Replayed, { numbers, length }: Recording): void {
  // One object for the whole drawing: by it the stamps know which drawing is under way.
  carryOut(on, { canvas: on.canvas, ratio: on.ratio }, numbers.subarray(0, length));
}

function carryOut(on: Replayed, sheet: StampedOn, numbers: Float64Array): void {
  const text = (number: number): string => on.texts[number] ?? '';
  const told: Numbers = [0, 0, 0, 0, 0, 0, 0];
  for (let i = 0; i < numbers.length; ) {
    const code = numbers[i] ?? 0;
    for (let k = 0; k < told.length; k += 1) told[k] = numbers[i + 1 + k] ?? 0;
    i += 1 + (COUNT_OF[code] ?? 0);
    const carrier = carrierOf[code];
    if (carrier) {
      carrier(sheet.canvas, told, text);
      continue;
    }
    const [key, left, top, width, height, rest] = told;
    const inside = numbers.subarray(i, i + rest);
    i += rest;
    on.stamps.draw(sheet, { key: text(key), box: { left, top, width, height } }, (canvas) =>
      carryOut(on, { ...sheet, canvas }, inside),
    );
  }
}
