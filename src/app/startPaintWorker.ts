import type { StartPainting } from '../editor/canvas/paintedBeside.ts';
import type { PaintedMessage } from '../editor/ink/painting.ts';
import address from './paintWorker.ts?worker&url';
import { sayTrouble } from './trouble.ts';
import { trustedScript } from './trustedScript.ts';

/** Paints drawings in a worker; should it fail, that is said. */
export const startPaintWorker: StartPainting = (hear, fail) => {
  const worker = new Worker(trustedScript(address), { type: 'module', name: 'paint' });
  worker.addEventListener('message', ({ data }: MessageEvent<PaintedMessage>) => hear(data));
  worker.addEventListener('error', ({ message }) => {
    sayTrouble(
      'Drawings can’t be painted beside the page; drags may stutter',
      new Error(message || 'its file could not be read'),
    );
    worker.terminate();
    fail();
  });
  return (message, transfer) => worker.postMessage(message, { transfer });
};
