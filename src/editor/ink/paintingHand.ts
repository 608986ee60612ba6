import { Stamps } from '../labels/stamps.ts';
import type { PaintedMessage, Painting, PaintMessage } from './painting.ts';
import { replay } from './replay.ts';

type Pen = OffscreenCanvasRenderingContext2D;

/** Paints what the page sends, on the canvases it handed over. */
export class PaintingHand {
  readonly #tell: (message: PaintedMessage, given: Transferable[]) => void;
  readonly #pens = new Map<number, Pen>();
  #texts: string[] = [];
  readonly #stamps = new Stamps(() => new OffscreenCanvas(1, 1));

  constructor(tell: (message: PaintedMessage, given: Transferable[]) => void) {
    this.#tell = tell;
  }

  /** @throws {Error} When a canvas can't be drawn on. */
  hear({ come, gone, texts, forgetsTexts, paintings }: PaintMessage): void {
    for (const { id, canvas } of come) this.#pens.set(id, this.#penOf(canvas));
    for (const id of gone) this.#pens.delete(id);
    this.#texts.push(...texts);
    for (const painting of paintings) this.#paint(painting);
    if (forgetsTexts) this.#texts = [];
    const painted = paintings.map(({ numbers }) => numbers);
    this.#tell(
      { painted },
      painted.map(({ buffer }) => buffer),
    );
  }

  #penOf(canvas: OffscreenCanvas): Pen {
    const pen = canvas.getContext('2d');
    if (!pen) throw new Error('the browser gave no canvas to draw on');
    canvas.addEventListener('contextrestored', () => this.#tell({ lost: true }, []));
    return pen;
  }

  #paint(painting: Painting): void {
    const pen = this.#pens.get(painting.id);
    // A canvas that left meanwhile.
    if (!pen) return;
    const { width, height, ratio } = painting;
    if (pen.canvas.width !== width) pen.canvas.width = width;
    if (pen.canvas.height !== height) pen.canvas.height = height;
    pen.setTransform(ratio, 0, 0, ratio, 0, 0);
    replay({ canvas: pen, ratio, texts: this.#texts, stamps: this.#stamps }, painting);
  }
}
