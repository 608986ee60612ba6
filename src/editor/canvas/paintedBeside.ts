import { useSyncExternalStore } from 'react';
import { BesidePainter, type SendPaintings } from '../ink/besidePainter.ts';
import type { PaintedMessage } from '../ink/painting.ts';
import { measureText } from '../labels/measureText.ts';

/**
 * Starts what paints beside the page; what is returned sends to it.
 *
 * @param fail Called once nothing more is painted there.
 */
export type StartPainting = (
  hear: (message: PaintedMessage) => void,
  fail: () => void,
) => SendPaintings;

let painter: BesidePainter | null = null;
const drawAgain = new Set<() => void>();
const watchers = new Set<() => void>();

/** Has drawings painted beside the page from now on, where the browser can; should that fail, they are drawn on the page. */
export function paintBeside(start: StartPainting): void {
  const canHandOver = 'transferControlToOffscreen' in HTMLCanvasElement.prototype;
  if (!canHandOver || typeof OffscreenCanvas === 'undefined') return;
  const again = (): void => {
    for (const draw of drawAgain) draw();
  };
  const send = start((message) => started.hear(message), drawHere);
  const started = new BesidePainter(send, (run) => queueMicrotask(run), measureText, again);
  // The graphics memory of a page that is not looked at may be taken away.
  document.addEventListener('visibilitychange', again);
  painter = started;
}

function drawHere(): void {
  painter = null;
  for (const tell of watchers) tell();
}

/** What drawings are painted by beside the page; null where the page draws them. */
export const painterBeside = (): BesidePainter | null => painter;

/** Has a drawing made again when its picture was lost; what is returned ends that. */
export function whenLost(draw: () => void): () => void {
  drawAgain.add(draw);
  return () => drawAgain.delete(draw);
}

/** A key for a drawing: another one when canvases must be made anew, since one that was handed over can't be taken back. */
export const useCanvasKey = (): string =>
  useSyncExternalStore(watch, () => (painter ? 'beside' : 'here'));

function watch(tell: () => void): () => void {
  watchers.add(tell);
  return () => watchers.delete(tell);
}
