import type { Box } from '../labels/placeLabels.ts';
import { CODE } from './calls.ts';
import type { Ink } from './ink.ts';

/** What a canvas was told: codes of calls, each followed by its numbers. */
export interface Recording {
  readonly numbers: Float64Array<ArrayBuffer>;
  /** How many of them were told; the others are room left over. */
  readonly length: number;
}

/** What a recording needs from outside. */
export interface Recorder {
  /** The number of a text in a table that both sides know. */
  numberOf(text: string): number;
  /** Room for a recording; more is made where it is too small. */
  room(): Float64Array<ArrayBuffer>;
  /** Width of a text in a font, px. */
  measure(text: string, font: string): number;
}

/** Notes what it is told to draw instead of drawing it, to be carried out by {@link replay}. */
export class RecordedInk implements Ink {
  readonly #with: Recorder;
  #numbers = new Float64Array(0);
  #length = 0;
  #font = '';

  constructor(recorder: Recorder) {
    this.#with = recorder;
  }

  /** Forgets what it was told and notes anew. */
  begin(): void {
    if (this.#numbers.length === 0) this.#numbers = this.#with.room();
    this.#length = 0;
  }

  /** Hands over what it was told since it began. */
  end(): Recording {
    const recording = { numbers: this.#numbers, length: this.#length };
    this.#numbers = new Float64Array(0);
    this.#length = 0;
    return recording;
  }

  #note(code: number, ...told: readonly number[]): void {
    const numbers = this.#roomFor(1 + told.length);
    let at = this.#length;
    numbers[at] = code;
    for (const number of told) {
      at += 1;
      numbers[at] = number;
    }
    this.#length = at + 1;
  }

  /** Apart from the others: outlines are most of what is drawn. */
  #noteSpot(code: number, x: number, y: number): void {
    const numbers = this.#roomFor(3);
    const at = this.#length;
    numbers[at] = code;
    numbers[at + 1] = x;
    numbers[at + 2] = y;
    this.#length = at + 3;
  }

  #roomFor(count: number): Float64Array<ArrayBuffer> {
    if (this.#length + count > this.#numbers.length) this.#makeRoom();
    return this.#numbers;
  }

  #makeRoom(): void {
    const more = new Float64Array(Math.max(256, 2 * this.#numbers.length));
    more.set(this.#numbers);
    this.#numbers = more;
  }

  #noteText(code: number, text: unknown): void {
    if (typeof text !== 'string') throw new TypeError(`expected a text, found ${text}`);
    this.#note(code, this.#with.numberOf(text));
  }

  /** What is drawn the same way wherever it stands: a picture of it may be known where the recording is carried out. */
  stamp(key: string, { left, top, width, height }: Box, paint: (ink: Ink) => void): void {
    this.#note(CODE.stamp, this.#with.numberOf(key), left, top, width, height, 0);
    const begins = this.#length;
    paint(this);
    this.#numbers[begins - 1] = this.#length - begins;
  }

  save(): void {
    this.#note(CODE.save);
  }
  restore(): void {
    this.#note(CODE.restore);
  }
  translate(x: number, y: number): void {
    this.#note(CODE.translate, x, y);
  }
  scale(x: number, y: number): void {
    this.#note(CODE.scale, x, y);
  }
  transform(...told: Parameters<Ink['transform']>): void {
    this.#note(CODE.transform, ...told);
  }
  beginPath(): void {
    this.#note(CODE.beginPath);
  }
  closePath(): void {
    this.#note(CODE.closePath);
  }
  moveTo(x: number, y: number): void {
    this.#noteSpot(CODE.moveTo, x, y);
  }
  lineTo(x: number, y: number): void {
    this.#noteSpot(CODE.lineTo, x, y);
  }
  arc(...[x, y, radius, from, to, back]: Parameters<Ink['arc']>): void {
    this.#note(CODE.arc, x, y, radius, from, to, back ? 1 : 0);
  }
  ellipse(...told: Parameters<Ink['ellipse']>): void {
    this.#note(CODE.ellipse, ...told);
  }
  roundRect(...told: Parameters<Ink['roundRect']>): void {
    this.#note(CODE.roundRect, ...told);
  }
  fill(): void {
    this.#note(CODE.fill);
  }
  stroke(): void {
    this.#note(CODE.stroke);
  }
  clip(rule: CanvasFillRule = 'nonzero'): void {
    this.#noteText(CODE.clip, rule);
  }
  fillRect(x: number, y: number, width: number, height: number): void {
    this.#note(CODE.fillRect, x, y, width, height);
  }
  strokeRect(x: number, y: number, width: number, height: number): void {
    this.#note(CODE.strokeRect, x, y, width, height);
  }
  clearRect(x: number, y: number, width: number, height: number): void {
    this.#note(CODE.clearRect, x, y, width, height);
  }
  fillText(text: string, x: number, y: number): void {
    this.#note(CODE.fillText, this.#with.numberOf(text), x, y);
  }
  strokeText(text: string, x: number, y: number): void {
    this.#note(CODE.strokeText, this.#with.numberOf(text), x, y);
  }
  setLineDash(lengths: readonly number[]): void {
    this.#noteText(CODE.setLineDash, lengths.join(' '));
  }
  measureText(text: string): { readonly width: number } {
    return { width: this.#with.measure(text, this.#font) };
  }

  set fillStyle(colour: Ink['fillStyle']) {
    this.#noteText(CODE.fillStyle, colour);
  }
  set strokeStyle(colour: Ink['strokeStyle']) {
    this.#noteText(CODE.strokeStyle, colour);
  }
  set lineWidth(width: number) {
    this.#note(CODE.lineWidth, width);
  }
  set lineCap(cap: CanvasLineCap) {
    this.#noteText(CODE.lineCap, cap);
  }
  set lineJoin(join: CanvasLineJoin) {
    this.#noteText(CODE.lineJoin, join);
  }
  set globalAlpha(alpha: number) {
    this.#note(CODE.globalAlpha, alpha);
  }
  set globalCompositeOperation(operation: GlobalCompositeOperation) {
    this.#noteText(CODE.globalCompositeOperation, operation);
  }
  set font(font: string) {
    this.#font = font;
    this.#noteText(CODE.font, font);
  }
  set textAlign(align: CanvasTextAlign) {
    this.#noteText(CODE.textAlign, align);
  }
  set textBaseline(baseline: CanvasTextBaseline) {
    this.#noteText(CODE.textBaseline, baseline);
  }
}
