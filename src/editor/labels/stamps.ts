import { remembered } from '../../geometry/remembered.ts';
import type { Palette } from '../palette.ts';
import type { Box } from './placeLabels.ts';

/** What is drawn the same way wherever it stands. */
export interface Stamp {
  /** Tells all that its picture depends on but where it stands. */
  readonly key: string;
  /** What it covers, px of the screen. */
  readonly box: Box;
}

/** Room round a box for the edges and halos that stand out of it: at least so many px, whole pixels of the device. */
const MARGIN = 4;
const marginAt = (ratio: number): number => Math.ceil(MARGIN * ratio) / ratio;

/** A canvas in px of the screen. */
export interface StampedOn {
  readonly canvas: CanvasRenderingContext2D;
  /** Pixels of the device in a px. */
  readonly ratio: number;
}

/** A canvas in px of the screen as it is scaled now. */
export const stampedOn = (canvas: CanvasRenderingContext2D): StampedOn => ({
  canvas,
  ratio: canvas.getTransform().a,
});

type Paint = (canvas: CanvasRenderingContext2D) => void;

/** Looks known: those of a large kit many times over. When there are more, those drawn once are forgotten; all, where that is not enough. */
const MOST = 400;

/**
 * Pictures of what is drawn in many frames: text with its halo costs many times what its picture costs.
 *
 * S1 What is drawn the first time is drawn as it is, since a number that changes in every frame of a drag would only fill the store;
 *    its picture is made when it comes again.
 * S2 All is moved to whole pixels of the device, so that the picture is what would have been drawn.
 */
export class Stamps {
  /** Null for what was drawn once. */
  readonly #pictures = new Map<string, HTMLCanvasElement | null>();
  readonly #newCanvas: () => HTMLCanvasElement;

  constructor(newCanvas = () => document.createElement('canvas')) {
    this.#newCanvas = newCanvas;
  }

  /** @param paint Draws it where its box says. */
  draw({ canvas, ratio }: StampedOn, { key, box }: Stamp, paint: Paint): void {
    const [left, top] = [Math.round(box.left * ratio) / ratio, Math.round(box.top * ratio) / ratio];
    const picture = this.#pictureOf(`${key} ${ratio}`, box, ratio, paint);
    if (picture) {
      const margin = marginAt(ratio);
      const [width, height] = [picture.width / ratio, picture.height / ratio];
      canvas.drawImage(picture, left - margin, top - margin, width, height);
      return;
    }
    canvas.save();
    canvas.translate(left - box.left, top - box.top);
    paint(canvas);
    canvas.restore();
  }

  #pictureOf(key: string, box: Box, ratio: number, paint: Paint): HTMLCanvasElement | null {
    const known = this.#pictures.get(key);
    if (known) return known;
    if (this.#pictures.size >= MOST) this.#forget();
    const picture = known === null ? this.#made(box, ratio, paint) : null;
    this.#pictures.set(key, picture);
    return picture;
  }

  #forget(): void {
    for (const [key, picture] of this.#pictures) if (picture === null) this.#pictures.delete(key);
    if (this.#pictures.size >= MOST) this.#pictures.clear();
  }

  #made({ left, top, width, height }: Box, ratio: number, paint: Paint): HTMLCanvasElement | null {
    const picture = this.#newCanvas();
    const margin = marginAt(ratio);
    picture.width = Math.ceil((width + 2 * margin) * ratio);
    picture.height = Math.ceil((height + 2 * margin) * ratio);
    const ink = picture.getContext('2d');
    if (!ink) return null;
    ink.scale(ratio, ratio);
    ink.translate(margin - left, margin - top);
    paint(ink);
    return picture;
  }
}

/** The pictures of what is drawn in these colours. */
export const stampsIn = remembered((_: Palette) => new Stamps());
