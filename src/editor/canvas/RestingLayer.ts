import { _registerNode } from 'konva/lib/Global.js';
import { Layer, type LayerConfig } from 'konva/lib/Layer.js';
import type { Layer as LayerComponent } from 'react-konva/es/ReactKonvaCore.js';

const NAME = 'RestingLayer';

/**
 * A layer for what is seldom drawn. A browser without a graphics processor copies every canvas that can be drawn on in each frame of the page, whether it was drawn
 * on or not; a canvas that was handed a picture is copied once. So this layer is drawn on a canvas that is on no page, and its picture is handed over to the one on
 * the page. Drawing it costs more than drawing another layer: the next picture needs room of its own.
 */
class RestingKonvaLayer extends Layer {
  readonly #hand: (() => void) | null;
  readonly #drawAgain = (): void => {
    this.batchDraw();
  };

  constructor(config?: LayerConfig) {
    super(config);
    this.#hand = splitCanvas(this, this.#drawAgain);
    // The graphics memory of a page that is not looked at may be taken away, and a picture can't be drawn again from anything else.
    if (this.#hand) document.addEventListener('visibilitychange', this.#drawAgain);
  }

  override drawScene(...args: Parameters<Layer['drawScene']>): this {
    super.drawScene(...args);
    if (args[0] === undefined || args[0] === this.canvas) this.#hand?.();
    return this;
  }

  override destroy(): this {
    document.removeEventListener('visibilitychange', this.#drawAgain);
    return super.destroy();
  }
}

/** Puts the drawing of a layer on a canvas of its own; what is returned hands its picture over. Null where the browser can't: then all stays as it is. */
function splitCanvas(layer: Layer, drawAgain: () => void): (() => void) | null {
  if (typeof OffscreenCanvas === 'undefined') return null;
  const shown = document.createElement('canvas');
  const screen = shown.getContext('bitmaprenderer');
  const drawn = new OffscreenCanvas(0, 0);
  const pen = drawn.getContext('2d');
  if (!screen || !pen) return null;
  drawn.addEventListener('contextrestored', drawAgain);
  shown.style.cssText = layer.canvas._canvas.style.cssText;
  // Konva sizes, draws on and puts on the page what it takes for one canvas. The one that is shown has the size of its picture.
  Object.defineProperties(shown, {
    width: {
      get: () => drawn.width,
      set(width: number) {
        drawn.width = width;
      },
    },
    height: {
      get: () => drawn.height,
      set(height: number) {
        drawn.height = height;
      },
    },
    getContext: { value: () => pen },
  });
  layer.canvas._canvas = shown;
  Object.assign(layer.canvas.context, { _context: pen });
  return () => {
    if (drawn.width > 0 && drawn.height > 0) {
      screen.transferFromImageBitmap(drawn.transferToImageBitmap());
    }
  };
}

// As Konva knows its nodes: by the name of their class.
RestingKonvaLayer.prototype.className = NAME;
_registerNode(RestingKonvaLayer);

/** {@link RestingKonvaLayer} as a component: what React calls a node of Konva is the name of its class. */
export const RestingLayer = NAME as unknown as typeof LayerComponent;
