import { _registerNode } from 'konva/lib/Global.js';
import { Layer, type LayerConfig } from 'konva/lib/Layer.js';
import type { Layer as LayerComponent } from 'react-konva/es/ReactKonvaCore.js';
import type { BesidePainter } from '../ink/besidePainter.ts';
import type { RecordedInk } from '../ink/recordedInk.ts';
import { painterBeside, whenLost } from './paintedBeside.ts';

const NAME = 'PaintedLayer';

/**
 * A layer whose drawing is only noted by the page and painted beside it, where the browser can. A browser without a graphics processor paints on a page's canvases, and
 * copies each of them in every frame, on the thread that has to follow the finger.
 */
class PaintedKonvaLayer extends Layer {
  readonly #handed: HandedCanvas | null;

  constructor(config?: LayerConfig) {
    super(config);
    const painter = painterBeside();
    this.#handed = painter && new HandedCanvas(this, painter);
  }

  override drawScene(...args: Parameters<Layer['drawScene']>): this {
    const handed = args[0] === undefined || args[0] === this.canvas ? this.#handed : null;
    handed?.ink.begin();
    super.drawScene(...args);
    handed?.send();
    return this;
  }

  override destroy(): this {
    this.#handed?.leave();
    return super.destroy();
  }
}

/** The canvas of a layer, painted beside the page. */
class HandedCanvas {
  readonly ink: RecordedInk;
  readonly #layer: Layer;
  readonly #painter: BesidePainter;
  readonly #id: number;
  readonly #end: () => void;

  constructor(layer: Layer, painter: BesidePainter) {
    const shown = document.createElement('canvas');
    shown.style.cssText = layer.canvas._canvas.style.cssText;
    this.#layer = layer;
    this.#painter = painter;
    this.#id = painter.takeOver(shown.transferControlToOffscreen());
    this.ink = painter.newInk();
    this.#end = whenLost(() => layer.batchDraw());
    // Konva sizes what it takes for a canvas of its own, and draws on it: of one that was handed over nothing can be set, so its size is only noted.
    Object.defineProperties(shown, {
      width: { value: 0, writable: true },
      height: { value: 0, writable: true },
      getContext: { value: () => this.ink },
    });
    layer.canvas._canvas = shown;
    Object.assign(layer.canvas.context, { _context: this.ink });
  }

  send(): void {
    const { canvas } = this.#layer;
    const { width, height } = canvas._canvas;
    const ratio = canvas.getPixelRatio();
    this.#painter.paint({ id: this.#id, width, height, ratio, ...this.ink.end() });
  }

  leave(): void {
    this.#end();
    this.#painter.leave(this.#id);
  }
}

// As Konva knows its nodes: by the name of their class.
PaintedKonvaLayer.prototype.className = NAME;
_registerNode(PaintedKonvaLayer);

/** {@link PaintedKonvaLayer} as a component: what React calls a node of Konva is the name of its class. */
export const PaintedLayer = NAME as unknown as typeof LayerComponent;
