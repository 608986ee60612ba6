import { remembered } from '../../geometry/remembered.ts';
import type { Ink } from '../ink/ink.ts';
import { RecordedInk } from '../ink/recordedInk.ts';
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

/** What the browser draws with, on a page or beside it. */
export type Canvas = CanvasRenderingContext2D | OffscreenCanvasRenderingContext2D;

/** A canvas in px of the screen. */
export interface StampedOn {
  readonly canvas: Canvas;
  /** Pixels of the device in a px. */
  readonly ratio: number;
}

type Paint = (canvas: Canvas) => void;
type Picture = HTMLCanvasElement | OffscreenCanvas;

/** Looks known: those of a large kit many times over. When there are more, those without a picture are forgotten; all, where that is not enough. */
const MOST = 400;
/** A picture costs what drawing without it costs so many times. */
const OFTEN = 10;
/** Pictures that may be made in one drawing: making all at once would be felt. */
const MADE_AT_ONCE = 2;

/**
 * Pictures of what is drawn in many frames: text with its halo costs many times what its picture costs.
 *
 * S1 What is drawn seldom is drawn as it is, since making pictures of numbers that change in every frame of a drag costs more than they save; what
 *    comes often has its picture made, of a few things in one drawing.
 * S2 All is moved to whole pixels of the device, so that the picture is what would have been drawn.
 */
export class Stamps {
  /** The picture, or how often it was drawn without one. */
  readonly #pictures = new Map<string, Picture | number>();
  /** The drawing under way, and how many pictures were made in it. */
  #drawing: StampedOn | null = null;
  #made = 0;
  readonly #newCanvas: () => Picture;

  constructor(newCanvas: () => Picture = () => document.createElement('canvas')) {
    this.#newCanvas = newCanvas;
  }

  /** @param paint Draws it where its box says. */
  draw(on: StampedOn, { key, box }: Stamp, paint: Paint): void {
    const { canvas, ratio } = on;
    if (on !== this.#drawing) this.#made = 0;
    this.#drawing = on;
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

  #pictureOf(key: string, box: Box, ratio: number, paint: Paint): Picture | null {
    const known = this.#pictures.get(key) ?? 0;
    if (typeof known !== 'number') return known;
    if (known === 0 && this.#pictures.size >= MOST) this.#forget();
    const isDue = known + 1 >= OFTEN && this.#made < MADE_AT_ONCE;
    const picture = isDue ? this.#picture(box, ratio, paint) : null;
    this.#pictures.set(key, picture ?? known + 1);
    return picture;
  }

  #forget(): void {
    for (const [key, picture] of this.#pictures) {
      if (typeof picture === 'number') this.#pictures.delete(key);
    }
    if (this.#pictures.size >= MOST) this.#pictures.clear();
  }

  #picture({ left, top, width, height }: Box, ratio: number, paint: Paint): Picture | null {
    this.#made += 1;
    const picture = this.#newCanvas();
    const margin = marginAt(ratio);
    picture.width = Math.ceil((width + 2 * margin) * ratio);
    picture.height = Math.ceil((height + 2 * margin) * ratio);
    const ink = picture.getContext('2d') as Canvas | null;
    if (!ink) return null;
    ink.scale(ratio, ratio);
    ink.translate(margin - left, margin - top);
    paint(ink);
    return picture;
  }
}

/** The pictures of what is drawn in these colours. */
const stampsIn = remembered((_: Palette) => new Stamps());

let palettes = 0;
/** A name for each set of colours: where recordings are carried out, all pictures are kept in one place. */
const nameOf = remembered((_: Palette) => {
  palettes += 1;
  return `colours ${palettes}`;
});

/** Draws a stamp, in px of the screen. */
type DrawStamp = (stamp: Stamp, paint: (ink: Ink) => void) => void;

/** What draws stamps in these colours on a canvas as it is scaled now; to be asked for once in a drawing. */
export function stampsOn(ink: Ink, colours: Palette): DrawStamp {
  if (ink instanceof RecordedInk) {
    return ({ key, box }, paint) => ink.stamp(`${nameOf(colours)} ${key}`, box, paint);
  }
  const canvas = ink as CanvasRenderingContext2D;
  const on = { canvas, ratio: canvas.getTransform().a };
  const stamps = stampsIn(colours);
  return (stamp, paint) => stamps.draw(on, stamp, paint);
}
