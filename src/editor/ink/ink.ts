type Settings =
  | 'fillStyle'
  | 'strokeStyle'
  | 'lineWidth'
  | 'lineCap'
  | 'lineJoin'
  | 'globalAlpha'
  | 'globalCompositeOperation'
  | 'font'
  | 'textAlign'
  | 'textBaseline';

/**
 * What painters use of a canvas, each call as the browser's canvas defines it; no more, so that all of it can be recorded and carried out elsewhere. What is set
 * is never read.
 */
export interface Ink extends Pick<CanvasRenderingContext2D, Settings> {
  save(): void;
  restore(): void;
  translate(x: number, y: number): void;
  scale(x: number, y: number): void;
  transform(...matrix: [a: number, b: number, c: number, d: number, e: number, f: number]): void;
  beginPath(): void;
  closePath(): void;
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  arc(
    ...told: [
      x: number,
      y: number,
      radius: number,
      from: number,
      to: number,
      counterclockwise?: boolean,
    ]
  ): void;
  ellipse(
    ...told: [
      x: number,
      y: number,
      radiusX: number,
      radiusY: number,
      turn: number,
      from: number,
      to: number,
    ]
  ): void;
  roundRect(...told: [x: number, y: number, width: number, height: number, radius: number]): void;
  fill(): void;
  stroke(): void;
  clip(rule?: CanvasFillRule): void;
  fillRect(x: number, y: number, width: number, height: number): void;
  strokeRect(x: number, y: number, width: number, height: number): void;
  clearRect(x: number, y: number, width: number, height: number): void;
  fillText(text: string, x: number, y: number): void;
  strokeText(text: string, x: number, y: number): void;
  setLineDash(lengths: readonly number[]): void;
  measureText(text: string): { readonly width: number };
}
